import type { UnitSystem } from "#base";
import { sayLength, type Words } from "#words";
import type { CasualtyBoat } from "#readiness";
import { sayTime } from "#web/parts/words/say-time.ts";

/** An instant on the reader's own clock: "14:35". */
export function sayClock(ms: number): string {
  return sayTime(ms);
}

/** A list as it is seen: "10° to port", "no list". */
export function sayList(list: number, words: Words["casualtyTold"]): string {
  const degrees = Math.round((Math.abs(list) * 180) / Math.PI);
  if (degrees === 0) return words.noList();
  return list > 0 ? words.listStarboard({ degrees }) : words.listPort({ degrees });
}

const KINDS = {
  "open boat": "openBoat",
  "motor boat": "motorBoat",
  "sailing yacht": "sailingYacht",
  "fishing boat": "fishingBoat",
} as const satisfies Readonly<Record<CasualtyBoat["kind"], keyof Words["casualtyTold"]>>;

/** "motor boat". */
export function sayBoatKind(kind: CasualtyBoat["kind"], words: Words["casualtyTold"]): string {
  return words[KINDS[kind]]();
}

/** "motor boat, 9 m", "motor boat, 29.5 ft". */
export function sayBoat({ kind, length }: CasualtyBoat, system: UnitSystem, words: Words["casualtyTold"]): string {
  return words.boat({ kind: sayBoatKind(kind, words), length: sayLength(length, system, "hull") });
}
