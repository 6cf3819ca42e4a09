import { goodAfter, type Grid, type GridKit, type Opening } from "../station/grid.ts";
import { WEEK } from "../station/station.ts";

/** What a plan comes to. */
export interface Worth {
  /** Ready kits lacking, summed over places and weeks. */
  readonly short: number;
  /** Clocks lapsed, summed over weeks. */
  readonly late: number;
  readonly openings: number;
  /** Work of the worst week [min]. */
  readonly worst: number;
  /** Life thrown away by renewing before the last good day [d]. */
  readonly wasted: number;
}

/** A week in which a clock has lapsed. */
export interface LateWeek {
  readonly kit: number;
  readonly clock: number;
  readonly week: number;
}

/** A week in which a place holds too few ready kits. */
export interface ShortWeek {
  readonly place: number;
  readonly week: number;
  readonly by: number;
}

/** A plan read week by week. */
export interface PlanMerit extends Worth {
  readonly shortWeeks: readonly ShortWeek[];
  readonly lateWeeks: readonly LateWeek[];
  /** By week [min]. */
  readonly minutes: readonly number[];
}

/** Reads what a plan comes to; says nothing of whether hours and parts allow it. */
export function readPlan(grid: Grid, openings: readonly Opening[]): PlanMerit {
  const lives = grid.kits.map((kit, index) =>
    readKit(
      kit,
      openings.filter((one) => one.kit === index),
      grid.weeks,
    ),
  );
  const minutes = weeksOf(grid.weeks).map((week) => workOf(grid, openings, week));
  const shortWeeks = shortOf(
    grid,
    lives.map((life) => life.notReady),
  );
  const lateWeeks = lives.flatMap((life, kit) => life.late.map((one) => ({ kit, ...one })));
  return {
    short: shortWeeks.reduce((sum, { by }) => sum + by, 0),
    late: lateWeeks.length,
    openings: openings.length,
    worst: Math.max(...minutes),
    wasted: lives.reduce((sum, life) => sum + life.wasted, 0),
    shortWeeks,
    lateWeeks,
    minutes,
  };
}

/** One kit's weeks under its openings, in any order. */
export interface KitLife {
  readonly notReady: readonly boolean[];
  readonly late: readonly { readonly clock: number; readonly week: number }[];
  readonly wasted: number;
}

/** Reads one kit's weeks. */
export function readKit(kit: GridKit, openings: readonly Opening[], weeks: number): KitLife {
  const notReady = weeksOf(weeks).map((week) =>
    openings.some((one) => one.week <= week && week < one.week + kit.weeksOut),
  );
  const late: { clock: number; week: number }[] = [];
  let wasted = 0;
  for (const [clock, { good, lastDay, renewedFor, grounds }] of kit.clocks.entries()) {
    let [until, day] = [good, lastDay];
    for (let week = 0; week < weeks; week += 1) {
      if (openings.some((one) => one.week === week && one.renews.includes(clock))) {
        wasted += Math.max(0, day - week * WEEK);
        [until, day] = [goodAfter(kit.clocks[clock]!, week), week * WEEK + renewedFor];
      }
      if (until >= week) continue;
      late.push({ clock, week });
      if (grounds) notReady[week] = true;
    }
  }
  return { notReady, late, wasted };
}

/** Negative where the first plan is better: strength, clocks in date, openings, level hours, life, in this order. */
export function compareWorth(one: Worth, other: Worth): number {
  const keys = ["short", "late", "openings", "worst", "wasted"] as const;
  const first = keys.find((key) => Math.abs(one[key] - other[key]) > 1e-6);
  return first === undefined ? 0 : one[first] - other[first];
}

function workOf(grid: Grid, openings: readonly Opening[], week: number): number {
  return openings.reduce((sum, one) => (one.week === week ? sum + grid.kits[one.kit]!.minutes : sum), 0);
}

function shortOf(grid: Grid, notReady: readonly (readonly boolean[])[]): ShortWeek[] {
  return grid.strength.flatMap((strength, place) =>
    weeksOf(grid.weeks).flatMap((week) => {
      const ready = grid.kits.filter((kit, index) => kit.place === place && !notReady[index]![week]).length;
      return ready < strength ? [{ place, week, by: strength - ready }] : [];
    }),
  );
}

function weeksOf(weeks: number): number[] {
  return Array.from({ length: weeks }, (_, week) => week);
}
