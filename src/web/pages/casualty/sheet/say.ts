import type { UnitSystem } from "#base";
import { sayLength } from "#words";
import type { CasualtyBoat } from "#readiness";
import { sayTime } from "#web/parts/words/say-time.ts";

/** An instant on the reader's own clock: "14:35". */
export function sayClock(ms: number): string {
  return sayTime(ms);
}

/** A list as it is seen: "10° to port", "no list". */
export function sayList(list: number): string {
  const degrees = Math.round((Math.abs(list) * 180) / Math.PI);
  return degrees === 0 ? "no list" : `${degrees}° to ${list > 0 ? "starboard" : "port"}`;
}

/** "motor boat, 9 m", "motor boat, 29.5 ft". */
export function sayBoat({ kind, length }: CasualtyBoat, system: UnitSystem): string {
  return `${kind}, ${sayLength(length, system, "hull")}`;
}
