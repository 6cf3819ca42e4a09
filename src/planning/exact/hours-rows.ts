import { nth } from "#base";
import type { Grid } from "../station/grid.ts";
import { crewUnions } from "./crew-unions.ts";
import type { ModelRows } from "./model-rows.ts";

/** By week: every union of the crews that may work on some kit in it. */
export type WeekUnions = readonly (readonly ReadonlySet<number>[])[];

/** @returns undefined where a week has too many */
export function weekUnions(grid: Grid): WeekUnions | undefined {
  const known = new Map<string, readonly ReadonlySet<number>[] | undefined>();
  const weeks = Array.from({ length: grid.weeks }, (_, week) => {
    const crews = [...new Set(grid.kits.map((kit) => nth(kit.crews, week)))].toSorted((one, other) => one - other);
    const key = crews.join();
    if (!known.has(key)) known.set(key, crewUnions(crews.map((crew) => nth(grid.crews, crew))));
    return known.get(key);
  });
  return weeks.every((unions) => unions !== undefined) ? weeks : undefined;
}

/**
 * Work open only to these people is no more than their hours.
 * @param opened - by kit and week: the column of its opening
 */
export function hoursRows(
  grid: Grid,
  rows: ModelRows,
  opened: readonly (readonly number[])[],
  unions: WeekUnions,
): void {
  for (const [week, own] of unions.entries()) for (const people of own) hoursRow(grid, rows, opened, { week, people });
}

interface Union {
  readonly week: number;
  readonly people: ReadonlySet<number>;
}

function hoursRow(grid: Grid, rows: ModelRows, opened: readonly (readonly number[])[], { week, people }: Union): void {
  const terms = grid.kits.flatMap((kit, at) => {
    const isBound = nth(grid.crews, nth(kit.crews, week)).every((one) => people.has(one));
    return isBound ? [[nth(nth(opened, at), week), kit.minutes] as const] : [];
  });
  const hours = [...people].reduce((sum, one) => sum + nth(nth(grid.minutes, one), week), 0);
  if (terms.reduce((sum, [, minutes]) => sum + minutes, 0) > hours) rows.atMost(hours, terms);
}
