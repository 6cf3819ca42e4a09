import { nth } from "#base";
import { WEEK } from "../station/station.ts";
import type { GridClock } from "../station/grid.ts";
import type { Terms } from "./linear-solver.ts";
import type { ModelRows } from "./model-rows.ts";

/**
 * Days of life that a clock's renewals throw away, as terms of a cost: what all of them give, less the days by which the
 * last of them carries the clock beyond its first last good day.
 * @source DERIVED: the sum of (last good day before - Monday) telescopes; where a renewal falls on the day after the last
 *   good one the sum has -1 for nothing wasted, which a column of its own makes good
 */
export function wasteTerms(rows: ModelRows, clock: GridClock, renewed: readonly number[]): Terms {
  const given = renewed.map((column) => [column, clock.renewedFor] as const);
  const lastWeek = renewed.findLastIndex((column) => nth(rows.start, column) > 0.5);
  const last = renewed.map((column, week) => {
    const isLast = rows.column(week === lastWeek ? 1 : 0, 1, false);
    rows.atMost(0, [
      [isLast, 1],
      [column, -1],
    ]);
    return [isLast, clock.lastDay - week * WEEK - clock.renewedFor] as const;
  });
  rows.atMost(
    1,
    last.map(([column]) => [column, 1] as const),
  );
  return [...given, ...last, ...nothingWasted(rows, clock, renewed)];
}

/** A column of 1 for each renewal on the very day after the last good one. */
function nothingWasted(rows: ModelRows, clock: GridClock, renewed: readonly number[]): Terms {
  const first = (clock.lastDay + 1) / WEEK;
  const column = renewed[first];
  const start = column === undefined ? [] : [exact(rows, [column], renewed.slice(0, first))];
  if ((clock.renewedFor + 1) % WEEK !== 0 || clock.span === 0) return start.map((one) => [one, 1] as const);
  const later = renewed.slice(clock.span).map((next, week) => {
    return exact(rows, [nth(renewed, week), next], renewed.slice(week + 1, week + clock.span));
  });
  return [...start, ...later].map((one) => [one, 1] as const);
}

/** 1 at least where all of these are renewals and none lies between. */
function exact(rows: ModelRows, ends: readonly number[], between: readonly number[]): number {
  const count = (columns: readonly number[]) => columns.reduce((sum, column) => sum + nth(rows.start, column), 0);
  const holds = count(ends) > ends.length - 0.5 && count(between) < 0.5;
  const column = rows.column(holds ? 1 : 0, 1, false);
  rows.atLeast(1 - ends.length, [
    [column, 1],
    ...ends.map((one) => [one, -1] as const),
    ...between.map((one) => [one, 1] as const),
  ]);
  return column;
}
