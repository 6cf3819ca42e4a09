import type { CasualtyPump, CasualtyState } from "./casualty-state.ts";

/** When a pump has to be refuelled. */
export interface RefuelDue {
  readonly pump: string;
  readonly name: string;
  /** [ms] since 1970-01-01 UTC; in the past where it is overdue. */
  readonly at: number;
}

/**
 * Running pumps whose time on one tank is known, the first to run dry first. A tank empties only while its pump runs.
 *
 * @param casualty - as its entries tell it
 * @param now - [ms] since 1970-01-01 UTC
 * @returns when each is due
 */
export function refuelsDue(casualty: CasualtyState, now: number): readonly RefuelDue[] {
  return casualty.pumps
    .flatMap((pump) => {
      const { runtime, running } = pump;
      if (!running || runtime === undefined) return [];
      return [{ pump: pump.pump, name: pump.name, at: now + 1000 * (runtime - ranSinceFilled(pump, now)) }];
    })
    .sort((one, other) => one.at - other.at);
}

/**
 * Running time since the tank was last full [s].
 *
 * @param pump - with its runs
 * @param now - [ms] since 1970-01-01 UTC
 * @returns [s]
 */
export function ranSinceFilled(pump: CasualtyPump, now: number): number {
  const filled = pump.filled === undefined ? Number.NEGATIVE_INFINITY : Date.parse(pump.filled);
  const spans = pump.runs.map(({ from, to }) => {
    const end = to === undefined ? now : Date.parse(to);
    return Math.max(0, end - Math.max(filled, Date.parse(from)));
  });
  return spans.reduce((sum, span) => sum + span, 0) / 1000;
}
