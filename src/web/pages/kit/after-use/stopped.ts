import type { KitState } from "#readiness";

/** Minutes before the return that are offered for its last pumping. */
const STOPPED_AGO = [15, 30, 60, 120, 240] as const;

/** When it last pumped: by the sheet of the casualty it is back from, so many minutes ago, or not known. */
export type Stopped = "sheet" | "unknown" | `${number}`;

/**
 * Minutes ago at which it may have pumped last: none before it was handed over.
 *
 * @param now - [ms]
 * @returns [min]
 */
export function stoppedAgo({ custody }: KitState, now: number): readonly number[] {
  const since = custody.kind === "away" ? Date.parse(custody.at) : -Infinity;
  return STOPPED_AGO.filter((ago) => now - ago * 60_000 >= since);
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
  return new Date(now - Number(stopped) * 60_000).toISOString();
}
