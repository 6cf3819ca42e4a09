import type { Grid, GridClock, Opening } from "../station/grid.ts";
import { WEEK } from "../station/station.ts";

/**
 * Each thing renewed in the week its last good day falls in, whatever hours, parts and strength say: what a station does
 * that does not plan. A clock that has lapsed before the start is renewed in week 0.
 */
export function lastDayPlan(grid: Grid): readonly Opening[] {
  return grid.kits.flatMap((kit, index) => {
    const weeks = kit.clocks.map((clock) => lastWeeks(clock, grid.weeks));
    const opened = [...new Set(weeks.flat())].toSorted((one, other) => one - other);
    return opened.map((week) => ({
      kit: index,
      week,
      renews: weeks.flatMap((own, clock) => (own.includes(week) ? [clock] : [])),
    }));
  });
}

function lastWeeks({ lastDay, renewedFor }: GridClock, weeks: number): number[] {
  const found: number[] = [];
  let week = Math.max(0, Math.floor(lastDay / WEEK));
  while (week < weeks) {
    found.push(week);
    week = Math.max(week + 1, Math.floor((week * WEEK + renewedFor) / WEEK));
  }
  return found;
}
