import type { KitState } from "#readiness";
import { handedAt, pumpedFrom } from "#station";

const MINUTE = 60_000;
const DAY = 24 * 60;

/** Minutes before the return that are offered for its last pumping: now, an hour, a few hours, a day ago. */
const STOPPED_AGO = [0, 60, 240, DAY] as const;

/** When it last pumped: by the sheet of the casualty it is back from, so many minutes ago, at a time typed, or not known. */
export type Stopped = "sheet" | "unknown" | `${number}` | `at ${string}`;

/**
 * Minutes ago that are offered for its last pumping: from the writing of its hand-over on. An earlier time is typed.
 *
 * @param now - [ms]
 * @returns [min]
 */
export function stoppedAgo(kit: KitState, now: number): readonly number[] {
  return STOPPED_AGO.filter((ago) => now - ago * MINUTE >= handedAt(kit));
}

/**
 * A time as people type it, "16:40", "16.40" or "1640", on the device's own clock: the last time that it was so late.
 *
 * @param now - [ms]
 * @returns undefined where it is no time, or one at which the kit cannot have pumped for them
 */
export function stoppedTyped(text: string, kit: KitState, now: number): Stopped | undefined {
  const [, hours, minutes] = /^([01]?\d|2[0-3])[:. ]?([0-5]\d)$/.exec(text.trim()) ?? [];
  if (hours === undefined || minutes === undefined) return undefined;
  const today = new Date(now).setHours(Number(hours), Number(minutes), 0, 0);
  const at = today > now ? new Date(today).setDate(new Date(today).getDate() - 1) : today;
  return at >= pumpedFrom(kit) ? `at ${new Date(at).toISOString()}` : undefined;
}

/** True of a time before its hand-over was written down: right where that was written late, and said beside it. */
export function isBeforeHandOver(stopped: Stopped, kit: KitState): boolean {
  return stopped.startsWith("at ") && Date.parse(stopped.slice(3)) < handedAt(kit);
}

/** When it last stopped on the casualty it was handed over to, by her sheet. */
export function stoppedOnSheet({ custody, runs }: KitState): string | undefined {
  if (custody.kind !== "away") return undefined;
  const since = Date.parse(custody.at);
  const run = runs.findLast(({ stopped }) => stopped !== undefined && Date.parse(stopped) >= since);
  return run?.stopped;
}

/**
 * What the return says of its last pumping.
 *
 * @param now - [ms]
 * @returns RFC 3339, or undefined where nobody knows
 */
export function stoppedAt(stopped: Stopped | undefined, kit: KitState, now: number): string | undefined {
  if (stopped === undefined || stopped === "unknown") return undefined;
  if (stopped === "sheet") return stoppedOnSheet(kit);
  if (stopped.startsWith("at ")) return stopped.slice(3);
  return new Date(now - Number(stopped) * MINUTE).toISOString();
}
