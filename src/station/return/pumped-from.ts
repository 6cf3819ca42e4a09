import type { KitState } from "#readiness";

const MINUTE = 60_000;

/**
 * From when on a kit that is away may have pumped last: from the minute of its hand-over on. What it pumped before is told
 * by the return before that, or by nobody, and then it is not known.
 *
 * @returns [ms] since 1970-01-01 UTC
 */
export function pumpedFrom({ custody }: Pick<KitState, "custody">): number {
  if (custody.kind !== "away") return -Infinity;
  return Math.floor(Date.parse(custody.at) / MINUTE) * MINUTE;
}
