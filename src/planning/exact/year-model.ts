import { nth } from "#base";
import { lengthens, type Grid, type GridKit, type Opening } from "../station/grid.ts";
import type { PlanMerit } from "../worth/worth.ts";
import { hoursRows, weekUnions } from "./hours-rows.ts";
import type { LinearModel, Terms } from "./linear-solver.ts";
import { ModelRows } from "./model-rows.ts";
import { wasteTerms } from "./waste-terms.ts";

/** The five things a plan is judged by, in their order. */
export type Aim = "short" | "late" | "openings" | "worst" | "wasted";

/** A plan known to be legal, from which the solver starts. */
export interface Known {
  readonly openings: readonly Opening[];
  readonly merit: PlanMerit;
}

/** A model of the year that seeks one aim while the aims before it stay where they are. */
export interface YearModel {
  readonly model: LinearModel;
  readonly start: readonly number[];
  /** The openings that column values mean. */
  readonly openings: (values: readonly number[]) => readonly Opening[];
}

const ORDER: readonly Aim[] = ["short", "late", "openings", "worst", "wasted"];

/** Columns of one kit. */
interface KitColumns {
  /** By week: opened. */
  readonly opened: readonly number[];
  /** By clock and week: renewed; the kit's openings themselves where every opening may as well renew it. */
  readonly renewed: readonly (readonly number[])[];
  /** By clock and week: lapsed; none where nothing may lapse. */
  readonly late: readonly (readonly (number | undefined)[])[];
}

/**
 * The year as a mixed-integer linear model.
 * @param aim - what is to be as small as possible; aims before it are kept at the known plan's
 * @returns undefined where there are too many kinds of crew to write hours as rows
 * @source DERIVED: set covering in time windows; hours by Hall's condition over unions of crews; docs/methods/planning.md
 */
export function yearModel(grid: Grid, known: Known, aim: Aim): YearModel | undefined {
  const unions = weekUnions(grid);
  if (!unions) return undefined;
  const rows = new ModelRows();
  const isSoft = known.merit.short + known.merit.late > 0;
  const kits = grid.kits.map((_, kit) =>
    kitColumns({ grid, known, rows, isSoft, isWasteSought: aim === "wasted" }, kit),
  );
  const short = strengthRows(grid, known, rows, kits);
  hoursRows(
    grid,
    rows,
    kits.map(({ opened }) => opened),
    unions,
  );
  partsRows(grid, rows, kits);
  const aims: Readonly<Record<Aim, () => Terms>> = {
    short: () => short,
    late: () =>
      kits.flatMap((kit) => kit.late.flat().flatMap((column) => (column === undefined ? [] : [[column, 1] as const]))),
    openings: () => kits.flatMap((kit) => kit.opened.map((column) => [column, 1] as const)),
    worst: () => levelRows(grid, known, rows, kits),
    wasted: () =>
      grid.kits.flatMap((kit, at) =>
        kit.clocks.flatMap((clock, index) => wasteTerms(rows, clock, nth(nth(kits, at).renewed, index))),
      ),
  };
  const sought = aims[aim]();
  for (const earlier of ORDER.slice(0, ORDER.indexOf(aim))) rows.atMost(known.merit[earlier], aims[earlier]());
  return { model: rows.model(sought), start: rows.start, openings: (values) => openingsOf(grid, kits, values) };
}

interface Making {
  readonly grid: Grid;
  readonly known: Known;
  readonly rows: ModelRows;
  readonly isSoft: boolean;
  readonly isWasteSought: boolean;
}

function kitColumns(making: Making, index: number): KitColumns {
  const { grid, known, rows } = making;
  const kit = nth(grid.kits, index);
  const own = known.openings.filter((one) => one.kit === index);
  const opened = weeksOf(grid).map((week) => {
    const isFixed = kit.fixed.includes(week);
    return rows.column(
      own.some((one) => one.week === week) ? 1 : 0,
      nth(kit.mayOpen, week) || isFixed ? 1 : 0,
      true,
      isFixed ? 1 : 0,
    );
  });
  spacingRows(kit, rows, opened);
  const renewed = kit.clocks.map((_, clock) => renewedColumns(making, index, clock, opened, own));
  if (making.isWasteSought) fixedRows(kit, rows, renewed);
  const late = kit.clocks.map((_, clock) => coverRows(making, index, clock, nth(renewed, clock)));
  return { opened, renewed, late };
}

/** While it is out it is not opened again, save where that is fixed. */
function spacingRows(kit: GridKit, rows: ModelRows, opened: readonly number[]): void {
  if (kit.weeksOut < 2) return;
  for (let week = 1; week < opened.length; week += 1) {
    const first = Math.max(0, week - kit.weeksOut + 1);
    const fixed = kit.fixed.filter((one) => first <= one && one <= week).length;
    rows.atMost(
      Math.max(1, fixed),
      opened.slice(first, week + 1).map((column) => [column, 1] as const),
    );
  }
}

/** A fixed opening renews something, where something takes no parts. */
function fixedRows(kit: GridKit, rows: ModelRows, renewed: readonly (readonly number[])[]): void {
  for (const week of kit.fixed) {
    const able = kit.clocks.flatMap((clock, at) => (clock.parts.length === 0 && lengthens(clock, week) ? [at] : []));
    if (able.length > 0)
      rows.atLeast(
        1,
        renewed.map((columns) => [nth(columns, week), 1] as const),
      );
  }
}

function renewedColumns(
  { grid, rows, isWasteSought }: Making,
  kit: number,
  clock: number,
  opened: readonly number[],
  own: readonly Opening[],
): readonly number[] {
  const { parts } = nth(nth(grid.kits, kit).clocks, clock);
  if (parts.length === 0 && !isWasteSought) return opened;
  return opened.map((open, week) => {
    const isRenewed = own.some((one) => one.week === week && one.renews.includes(clock));
    const mayBe = lengthens(nth(nth(grid.kits, kit).clocks, clock), week);
    const column = rows.column(isRenewed ? 1 : 0, mayBe ? 1 : 0, true);
    rows.atMost(0, [
      [column, 1],
      [open, -1],
    ]);
    return column;
  });
}

/** In every week after its first good ones a clock was renewed no longer ago than it lasts, or it has lapsed. */
function coverRows(
  { grid, known, rows, isSoft }: Making,
  kit: number,
  clock: number,
  renewed: readonly number[],
): readonly (number | undefined)[] {
  const own = nth(nth(grid.kits, kit).clocks, clock);
  return weeksOf(grid).map((week) => {
    if (week <= own.good) return undefined;
    const first = Math.max(0, week - own.span + 1);
    const able = weeksOf(grid)
      .slice(first, week + 1)
      .filter((one) => lengthens(own, one));
    const isLate = known.merit.lateWeeks.some((one) => one.kit === kit && one.clock === clock && one.week === week);
    const late = isSoft ? rows.column(isLate ? 1 : 0, 1, false) : undefined;
    const terms = able.map((one) => [nth(renewed, one), 1] as const);
    rows.atLeast(1, late === undefined ? terms : [...terms, [late, 1]]);
    return late;
  });
}

/** At every place and week, kits not ready are no more than can be spared, or it falls short. @returns kits short */
function strengthRows(grid: Grid, known: Known, rows: ModelRows, kits: readonly KitColumns[]): Terms {
  const isSoft = known.merit.short + known.merit.late > 0;
  return grid.strength.flatMap((strength, place) => {
    const here = grid.kits.flatMap((kit, index) => (kit.place === place ? [index] : []));
    if (strength === 0) return [];
    return weeksOf(grid).flatMap((week) => {
      const out = here.flatMap((index) => notReady(grid, rows, nth(kits, index), index, week, isSoft));
      const by = known.merit.shortWeeks.find((one) => one.place === place && one.week === week)?.by ?? 0;
      const short = isSoft ? [[rows.column(by, strength, false), -1] as const] : [];
      rows.atMost(here.length - strength, [...out, ...short]);
      return short.map(([column]) => [column, 1] as const);
    });
  });
}

/** Terms that are 1 where the kit is not ready in the week. */
function notReady(
  grid: Grid,
  rows: ModelRows,
  columns: KitColumns,
  index: number,
  week: number,
  isSoft: boolean,
): Terms {
  const kit = nth(grid.kits, index);
  const first = Math.max(0, week - kit.weeksOut + 1);
  const opened = kit.weeksOut > 0 ? columns.opened.slice(first, week + 1) : [];
  const lapsed = kit.clocks.flatMap((clock, at) => (clock.grounds ? (nth(columns.late, at)[week] ?? []) : []));
  const touching = kit.fixed.filter((one) => first <= one && one <= week).length;
  if (!isSoft && touching < 2) return opened.map((column) => [column, 1] as const);
  const causes = [
    ...(touching < 2 && opened.length > 0 ? [opened] : opened.map((one) => [one])),
    ...lapsed.map((one) => [one]),
  ];
  if (causes.length === 0) return [];
  const sums = causes.map((cause) => cause.reduce((sum, column) => sum + nth(rows.start, column), 0));
  const out = rows.column(Math.min(1, Math.max(...sums)), 1, false);
  for (const cause of causes) rows.atLeast(0, [[out, 1], ...cause.map((column) => [column, -1] as const)]);
  return [[out, 1]];
}

/** What has been used by a week was there by then. */
function partsRows(grid: Grid, rows: ModelRows, kits: readonly KitColumns[]): void {
  for (const [part, supply] of grid.supply.entries()) {
    const uses = grid.kits.flatMap((kit, at) =>
      kit.clocks.flatMap((clock, index) =>
        clock.parts.flatMap((need) =>
          need.part === part ? [{ count: need.count, columns: nth(nth(kits, at).renewed, index) }] : [],
        ),
      ),
    );
    for (const week of weeksOf(grid)) {
      if (week + 1 < grid.weeks && supply[week + 1] === supply[week]) continue;
      const terms = uses.flatMap(({ count, columns }) =>
        columns.slice(0, week + 1).map((column) => [column, count] as const),
      );
      if (terms.length > 0) rows.atMost(nth(supply, week), terms);
    }
  }
}

/** No week holds more work than the worst. @returns the worst [min] */
function levelRows(grid: Grid, known: Known, rows: ModelRows, kits: readonly KitColumns[]): Terms {
  const worst = rows.column(known.merit.worst, Number.POSITIVE_INFINITY, false);
  for (const week of weeksOf(grid)) {
    rows.atMost(0, [
      ...kits.map((kit, at) => [nth(kit.opened, week), nth(grid.kits, at).minutes] as const),
      [worst, -1],
    ]);
  }
  return [[worst, 1]];
}

/** Clocks without columns of their own are named at every opening; who reads this keeps those that waste least. */
function openingsOf(grid: Grid, kits: readonly KitColumns[], values: readonly number[]): readonly Opening[] {
  return kits.flatMap(({ opened, renewed }, kit) =>
    weeksOf(grid).flatMap((week) => {
      if (nth(values, nth(opened, week)) < 0.5) return [];
      const renews = renewed.flatMap((columns, clock) => (nth(values, nth(columns, week)) > 0.5 ? [clock] : []));
      return [{ kit, week, renews }];
    }),
  );
}

function weeksOf({ weeks }: Grid): number[] {
  return Array.from({ length: weeks }, (_, week) => week);
}
