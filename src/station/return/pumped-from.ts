import type { KitState } from "#readiness";

/** How long after a kit left its hand-over may be written down [h]; common practice: within a day or two of the call. */
const WRITTEN_LATE = 48;

/**
 * From when on a kit that is away may have pumped last. Its hand-over is often written down only after the call, so this
 * is some time before it, but never before the kit was last closed.
 *
 * @returns [ms] since 1970-01-01 UTC
 */
export function pumpedFrom({ custody, turnarounds }: Pick<KitState, "custody" | "turnarounds">): number {
  if (custody.kind !== "away") return -Infinity;
  const left = Date.parse(custody.at) - WRITTEN_LATE * 3_600_000;
  const closed = turnarounds.flatMap(({ closed: one }) => (one ? [Date.parse(one.at)] : []));
  const before = closed.filter((at) => at <= Date.parse(custody.at));
  return Math.max(left, ...before);
}
