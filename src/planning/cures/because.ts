import { nth, sayCount } from "#base";
import { namable } from "../station/crews.ts";
import { mostMinutes, type Grid } from "../station/grid.ts";
import type { YearStation } from "../station/station.ts";
import type { PlanMerit } from "../worth/worth.ts";
import { sayWeeks } from "../station/say-weeks.ts";
import type { Cure } from "./cures.ts";

/** Kits named one by one at most. */
const MOST_NAMED = 8;

/**
 * Why strength or dates are not kept and what would cure it, in words.
 * @param proved - whether no plan falls short by less
 */
export function becauseWords(
  station: YearStation,
  grid: Grid,
  merit: PlanMerit,
  { proved, cures }: { readonly proved: boolean; readonly cures: readonly Cure[] },
): string {
  return [
    ...tooFewKits(station, grid),
    ...nobodyMay(station, grid),
    ...tooFewHours(station, grid),
    ...lapsedWords(station, merit),
    ...(merit.short > 0 ? [shortWords(merit, proved)] : []),
    ...(cures.length > 0 ? cures.map((cure) => cureWords(cure, merit)) : [nothingHelps(station)]),
  ].join(" ");
}

function tooFewKits({ places }: YearStation, { kits }: Grid): string[] {
  return places.flatMap(({ id, strength }, place) => {
    const here = kits.filter((kit) => kit.place === place).length;
    return here < strength ? [`${id} must hold ${strength} ready and has ${here}.`] : [];
  });
}

function nobodyMay({ kits }: YearStation, { minutes, kits: numbered }: Grid): string[] {
  if (minutes.flat().every((one) => one === 0)) return ["Nobody has hours in any of these weeks."];
  const everybody = minutes.map((_, person) => person);
  const without = kits.filter((_, index) => namable(nth(numbered, index).crew, everybody).length === 0);
  return without
    .slice(0, MOST_NAMED)
    .map(
      ({ id, needs = [] }) => `Nobody has all that ${id} needs, nor is seen by who may see it: ${needs.join(", ")}.`,
    );
}

function sayHours(minutes: number): string {
  return `${Number((minutes / 60).toFixed(1))} h`;
}

/** Kits that no week can open, though somebody may: one opening is done within a week. */
function tooFewHours({ kits }: YearStation, grid: Grid): string[] {
  const long = grid.kits.flatMap((kit, index) => {
    const most = mostMinutes(grid, kit);
    return most > 0 && most < kit.minutes ? [{ id: nth(kits, index).id, most, minutes: kit.minutes }] : [];
  });
  return long
    .slice(0, MOST_NAMED)
    .map(
      ({ id, most, minutes }) =>
        `Who may open ${id} have ${sayHours(most)} in their best week; it takes ${sayHours(minutes)}.`,
    );
}

function lapsedWords({ kits, start }: YearStation, { lateWeeks }: PlanMerit): string[] {
  const clocks = kits.flatMap((kit, index) =>
    kit.clocks.flatMap((clock, at) => {
      const weeks = lateWeeks.filter((one) => one.kit === index && one.clock === at).map((one) => one.week);
      return weeks.length === 0
        ? []
        : [`${clock.id.replace(/\.$/, "")} of ${kit.id} has lapsed in ${sayWeeks(start, weeks)}.`];
    }),
  );
  const more =
    clocks.length > MOST_NAMED
      ? [clocks.length === MOST_NAMED + 1 ? "One more has lapsed." : `${clocks.length - MOST_NAMED} more have lapsed.`]
      : [];
  return [...clocks.slice(0, MOST_NAMED), ...more];
}

function shortWords({ short }: PlanMerit, proved: boolean): string {
  const sum = `Ready kits lacking, summed over places and weeks: ${short}`;
  return proved ? `${sum}; no plan has fewer.` : `${sum}; a plan with fewer may exist.`;
}

function cureWords({ words, short, late }: Cure, merit: PlanMerit): string {
  if (short === 0 && late === 0) return `With ${words}, nothing falls short and nothing lapses.`;
  if (short < merit.short) return `With ${words}, ${short} instead of ${merit.short}.`;
  return `With ${words}, clocks have lapsed in ${sayCount(late, "week")}, all told, instead of ${merit.late}.`;
}

function nothingHelps({ parts = [] }: YearStation): string {
  const arriving = parts.some(({ arrivals = [] }) => arrivals.length > 0) ? ", parts two weeks earlier" : "";
  return `Tried one at a time and found no help: one more kit, more hours a week, who may do more${arriving}.`;
}
