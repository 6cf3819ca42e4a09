import { goodAfter, lengthens, type Grid, type GridClock, type Opening } from "../station/grid.ts";
import { WEEK } from "../station/station.ts";

/**
 * The same openings, each clock renewed at those of them that throw least life away and leave it lapsed in the fewest
 * weeks. A clock that takes parts is renewed only where it was; a fixed opening renews something where anything can be.
 */
export function leastWaste(grid: Grid, openings: readonly Opening[]): readonly Opening[] {
  const kits = grid.kits.map((_, index) => openings.filter((one) => one.kit === index));
  return kits.flatMap((own, index) => renewLess(grid, index, own));
}

function renewLess(grid: Grid, index: number, own: readonly Opening[]): Opening[] {
  const { clocks, fixed } = grid.kits[index]!;
  const weeks = clocks.map((clock, at) =>
    renewalWeeks(
      grid,
      clock,
      own.filter((one) => mayRenew(clock, at, one)),
    ),
  );
  return own.flatMap((one) => {
    const renews = clocks.flatMap((_, at) => (weeks[at]!.includes(one.week) ? [at] : []));
    if (renews.length > 0) return [{ ...one, renews }];
    return fixed.includes(one.week) ? [{ ...one, renews: someClock(clocks, weeks, one.week) }] : [];
  });
}

function mayRenew(clock: GridClock, at: number, { week, renews }: Opening): boolean {
  return clock.parts.length > 0 ? renews.includes(at) : lengthens(clock, week);
}

/** What throws least away of the clocks that take no parts. */
function someClock(clocks: readonly GridClock[], weeks: readonly (readonly number[])[], week: number): number[] {
  const able = clocks.flatMap((clock, at) => (clock.parts.length === 0 && lengthens(clock, week) ? [at] : []));
  const extra = (at: number) =>
    wasteOf(
      clocks[at]!,
      [...weeks[at]!, week].toSorted((one, other) => one - other),
    );
  const more = (at: number) => extra(at) - wasteOf(clocks[at]!, weeks[at]!);
  return able.toSorted((one, other) => more(one) - more(other)).slice(0, 1);
}

/** Days thrown away by renewing in these weeks [d]. */
function wasteOf(clock: GridClock, weeks: readonly number[]): number {
  let [day, wasted] = [clock.lastDay, 0];
  for (const week of weeks) {
    wasted += Math.max(0, day - week * WEEK);
    day = week * WEEK + clock.renewedFor;
  }
  return wasted;
}

/** Cost of a chain of renewals ending with the one at this opening. */
interface Chain {
  readonly late: number;
  readonly wasted: number;
  readonly weeks: readonly number[];
}

/** Best chain of renewals by dynamic programming over the kit's openings. */
function renewalWeeks({ weeks }: Grid, clock: GridClock, own: readonly Opening[]): readonly number[] {
  const none: Chain = { late: 0, wasted: 0, weeks: [] };
  const chains: Chain[] = [];
  for (const { week } of own) {
    const before = [none, ...chains].map((chain) => extend(clock, chain, week));
    chains.push(before.reduce((best, one) => (isBetter(one, best) ? one : best)));
  }
  const ended = [none, ...chains].map((chain) => ({ ...chain, late: chain.late + lateBefore(clock, chain, weeks) }));
  return ended.reduce((best, one) => (isBetter(one, best) ? one : best)).weeks;
}

function extend(clock: GridClock, chain: Chain, week: number): Chain {
  const last = chain.weeks.at(-1);
  const day = last === undefined ? clock.lastDay : last * WEEK + clock.renewedFor;
  return {
    late: chain.late + lateBefore(clock, chain, week),
    wasted: chain.wasted + Math.max(0, day - week * WEEK),
    weeks: [...chain.weeks, week],
  };
}

/** Weeks lapsed after the chain and before this week. */
function lateBefore(clock: GridClock, { weeks }: Chain, week: number): number {
  const last = weeks.at(-1);
  const good = last === undefined ? clock.good : goodAfter(clock, last);
  return Math.max(0, week - 1 - Math.max(good, (last ?? 0) - 1));
}

function isBetter(one: Chain, other: Chain): boolean {
  return one.late !== other.late ? one.late < other.late : one.wasted < other.wasted;
}
