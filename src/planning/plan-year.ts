import { InputError, nth } from "#base";
import { becauseWords } from "./cures/because.ts";
import { curesOf } from "./cures/cures.ts";
import { bestPlan, type BestPlan } from "./exact/best-plan.ts";
import type { LinearSolver } from "./exact/linear-solver.ts";
import { stationFaults } from "./station/faults.ts";
import { gridOf, type Grid, type Opening } from "./station/grid.ts";
import { nameOpening, type Named } from "./station/naming.ts";
import type { YearStation } from "./station/station.ts";
import { shareWork } from "./station/work-sharing.ts";
import { lastDayPlan } from "./worth/last-day.ts";
import { readPlan } from "./worth/worth.ts";

/** An opening as people name things. */
export interface PlannedOpening {
  readonly kit: string;
  /** From 0. */
  readonly week: number;
  /** Clocks renewed that Monday. */
  readonly renews: readonly string[];
  /** Who shares its work. */
  readonly by: readonly string[];
  /** Who is there too: to see done what somebody may not do alone, or to lift; absent where nobody is needed. */
  readonly beside?: readonly string[];
  /** Hands wanted at once that nobody there has; absent where there are enough. */
  readonly lacking?: number;
}

/** The year planned. */
export interface YearPlan {
  readonly openings: readonly PlannedOpening[];
  /** Weeks in which a place holds too few ready kits, and by how many. */
  readonly short: readonly { readonly place: string; readonly week: number; readonly by: number }[];
  /** Work by week [h]. */
  readonly hours: readonly number[];
  /** Life thrown away [d]. */
  readonly wasted: number;
  /** How far the first figure not proved least may be from the least, as a share of it; 0 where all are proved. */
  readonly gap: number;
  /** Each thing on its last day. */
  readonly naive: {
    readonly openings: number;
    /** [h] */
    readonly worstHours: number;
    readonly shortWeeks: number;
    /** [d] */
    readonly wasted: number;
  };
  readonly because?: string;
}

/** What planning may use. */
export interface PlanningMeans {
  /** Without one the quick plan is the answer, with its own bound. */
  readonly solver?: LinearSolver | undefined;
  /** For the solver in all [s], at least 0. */
  readonly seconds: number;
}

/** Share of the time that is kept for trying cures. */
const CURES_SHARE = 0.3;
/** Cures tried at most, among which that time is shared. */
const MOST_CURES = 16;

/**
 * Plans which kit is opened in which week and what is renewed then: places keep their strength, clocks their dates; then
 * fewest openings, then level hours, then least life thrown away. Hours, qualifications, parts and fixed openings hold in
 * every plan.
 *
 * @param station - 4 to 104 weeks from a Monday
 * @param means - a solver, if there is one, and its time [s]
 * @returns a plan that is always legal; `short` and `because` where strength or dates cannot be kept
 * @range gap 0 to 1
 * @source DERIVED: docs/methods/planning.md
 * @throws InputError PL-101 to PL-110 with everything that does not fit together
 */
export function planYear(station: YearStation, means: PlanningMeans): YearPlan {
  const faults = stationFaults(station);
  if (faults.length > 0) throw new InputError(faults);
  const grid = gridOf(station);
  const plan = bestPlan(grid, means.solver, means.seconds * (1 - CURES_SHARE));
  const { merit } = plan;
  const because = merit.short + merit.late > 0 ? explain(station, grid, plan, means) : undefined;
  return {
    openings: namedOpenings(station, grid, plan.openings),
    short: merit.shortWeeks.map(({ place, ...rest }) => ({ place: nth(station.places, place).id, ...rest })),
    hours: merit.minutes.map((minutes) => minutes / 60),
    wasted: merit.wasted,
    gap: gapOf(plan),
    naive: naiveFigures(grid),
    ...(because === undefined ? {} : { because }),
  };
}

function explain(station: YearStation, grid: Grid, plan: BestPlan, { solver, seconds }: PlanningMeans): string {
  const { merit, bound } = plan;
  const places = [...new Set(merit.shortWeeks.map((one) => one.place))];
  const trying = { solver, seconds: (seconds * CURES_SHARE) / MOST_CURES };
  const cures = curesOf(station, places, merit, trying);
  return becauseWords(station, grid, merit, { proved: merit.short <= bound.short, cures });
}

/** In order of weeks, then of kits as given. */
function namedOpenings({ kits, people }: YearStation, grid: Grid, openings: readonly Opening[]): PlannedOpening[] {
  const order = openings.toSorted((one, other) => one.week - other.week || one.kit - other.kit);
  const done = people.map(() => 0);
  const whole = grid.minutes.map((minutes) => minutes.reduce((sum, one) => sum + one, 0));
  return hoursOf(grid).flatMap((week) => {
    const own = order.filter((one) => one.week === week);
    const load = done.map((minutes, person) => minutes / (nth(whole, person) || 1));
    const work = own.map((one) => nth(grid.kits, one.kit));
    const shares = shareWork(grid, week, work, load);
    const names = work.map((kit, at) => nameOpening(grid, week, kit, { shares: shares?.[at] ?? new Map(), load }));
    for (const [person, minutes] of (shares ?? []).flatMap((one) => [...one]))
      done[person] = nth(done, person) + minutes;
    return own.map((one, index) => ({
      kit: nth(kits, one.kit).id,
      week,
      renews: one.renews.map((clock) => nth(nth(kits, one.kit).clocks, clock).id),
      ...sayNamed(nth(names, index), people),
    }));
  });
}

function sayNamed({ by, beside, lacking }: Named, people: YearStation["people"]) {
  const ids = (numbers: readonly number[]) => numbers.map((person) => nth(people, person).id);
  return {
    by: ids(by),
    ...(beside.length > 0 && { beside: ids(beside) }),
    ...(lacking > 0 && { lacking }),
  };
}

function hoursOf({ weeks }: Grid): number[] {
  return Array.from({ length: weeks }, (_, week) => week);
}

/** Strength, dates and openings are proved; level and waste are made as small as time allows. */
function gapOf({ merit, bound }: BestPlan): number {
  const aims = ["short", "late", "openings"] as const;
  const open = aims.find((aim) => merit[aim] > bound[aim]);
  return open === undefined ? 0 : (merit[open] - bound[open]) / merit[open];
}

function naiveFigures(grid: Grid): YearPlan["naive"] {
  const merit = readPlan(grid, lastDayPlan(grid));
  return {
    openings: merit.openings,
    worstHours: merit.worst / 60,
    shortWeeks: merit.shortWeeks.length,
    wasted: merit.wasted,
  };
}
