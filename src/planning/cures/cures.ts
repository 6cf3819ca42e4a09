import { nth } from "#base";
import { bestPlan } from "../exact/best-plan.ts";
import type { LinearSolver } from "../exact/linear-solver.ts";
import { gridOf, mostMinutes } from "../station/grid.ts";
import type { StationPart, YearStation } from "../station/station.ts";
import type { Worth } from "../worth/worth.ts";

/** Hours a week that are tried for one person more, at least. */
const MORE_HOURS = 2;
/** Weeks by which parts are tried earlier. */
const EARLIER = 2;
/** Of each kind, how many are tried. */
const MOST_OF_A_KIND = 4;

/** Something that would help, and what the plan would come to. */
export interface Cure {
  readonly words: string;
  readonly short: number;
  readonly late: number;
}

/** How long and by what a cure is tried. */
export interface Trying {
  readonly solver: LinearSolver | undefined;
  /** For each [s]. */
  readonly seconds: number;
}

/**
 * What would help where strength or dates are not kept: one kit more, two hours a week more, parts two weeks earlier; each
 * is tried by planning again.
 *
 * @param places - numbers of the places that fall short
 * @param worth - of the plan as it is
 * @returns what helps, most first
 */
export function curesOf(
  station: YearStation,
  places: readonly number[],
  worth: Worth,
  trying: Trying,
): readonly Cure[] {
  const tried = [...moreKits(station, places), ...moreHours(station), ...moreHeld(station), ...earlierParts(station)];
  const cures = tried.map(({ words, station: changed }) => {
    const { short, late } = bestPlan(gridOf(changed), trying.solver, trying.seconds).merit;
    return { words, short, late };
  });
  const helpful = cures.filter(
    (one) => one.short < worth.short || (one.short === worth.short && one.late < worth.late),
  );
  return helpful.toSorted((one, other) => one.short - other.short || one.late - other.late);
}

interface Change {
  readonly words: string;
  readonly station: YearStation;
}

function moreKits(station: YearStation, places: readonly number[]): Change[] {
  return places.slice(0, MOST_OF_A_KIND).map((place) => {
    const { id } = nth(station.places, place);
    const kit = { id: `one more at ${id}`, place: id, daysOut: 0, minutes: 1, clocks: [] };
    return { words: `one more kit at ${id}`, station: { ...station, kits: [...station.kits, kit] } };
  });
}

/** Two hours, or as many as the longest opening lacks in the best week of those who may do it. */
function moreHours(station: YearStation): Change[] {
  const grid = gridOf(station);
  const lacking = grid.kits.map((kit) => kit.minutes - mostMinutes(grid, kit));
  const hours = Math.max(MORE_HOURS, Math.ceil(Math.max(...lacking) / 60));
  return station.people.slice(0, MOST_OF_A_KIND).map(({ id }) => ({
    words: `${hours === MORE_HOURS ? "two" : hours} more hours a week of ${id}`,
    station: {
      ...station,
      people: station.people.map((one) => (one.id === id ? { ...one, hoursPerWeek: one.hoursPerWeek + hours } : one)),
    },
  }));
}

/** One qualification held by one person more. */
function moreHeld(station: YearStation): Change[] {
  const needed = [...new Set(station.kits.flatMap(({ needs = [] }) => needs))];
  const lacks = station.people
    .filter(({ hoursPerWeek }) => hoursPerWeek > 0)
    .flatMap(({ id, may = [] }) => needed.filter((one) => !may.includes(one)).map((need) => ({ id, need })));
  return lacks.slice(0, MOST_OF_A_KIND).map(({ id, need }) => ({
    words: `${need} held by ${id} too`,
    station: {
      ...station,
      people: station.people.map((one) => (one.id === id ? { ...one, may: [...(one.may ?? []), need] } : one)),
    },
  }));
}

function earlierParts(station: YearStation): Change[] {
  const parts = station.parts ?? [];
  const late = parts.filter((part) => (part.arrivals ?? []).some((one) => one.week > 0 && one.count > 0));
  return late.slice(0, MOST_OF_A_KIND).map(({ id }) => ({
    words: `${id} two weeks earlier`,
    station: { ...station, parts: parts.map((one) => (one.id === id ? earlier(one) : one)) },
  }));
}

function earlier(part: StationPart): StationPart {
  const arrivals = (part.arrivals ?? []).map(({ week, count }) => ({ week: Math.max(0, week - EARLIER), count }));
  return { ...part, arrivals };
}
