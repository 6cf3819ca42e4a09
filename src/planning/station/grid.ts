import { daysBetween, nth } from "#base";
import { crewOf, namable, type Crew } from "./crews.ts";
import {
  WEEK,
  type FixedOpening,
  type StationClock,
  type StationKit,
  type StationPerson,
  type YearStation,
} from "./station.ts";

/** A clock in weeks; days count from the start, and week w is good where the last good day is its Sunday or later. */
export interface GridClock {
  readonly id: string;
  readonly lastDay: number;
  readonly renewedFor: number;
  readonly grounds: boolean;
  /** Last week that is good without a renewal; may be negative. */
  readonly good: number;
  /** Weeks that a renewal makes good, its own the first. */
  readonly span: number;
  readonly parts: readonly { readonly part: number; readonly count: number }[];
}

/** A kit with places, people and parts by number. */
export interface GridKit {
  readonly id: string;
  readonly place: number;
  /** Weeks in which an opening makes it not ready. */
  readonly weeksOut: number;
  readonly minutes: number;
  readonly crew: Crew;
  /** By week: which {@link Grid.crews} may work on it, as people are there. */
  readonly crews: readonly number[];
  /** People needed at once. */
  readonly hands: number;
  /** By week: whether it may be opened where that is not fixed. */
  readonly mayOpen: readonly boolean[];
  readonly clocks: readonly GridClock[];
  readonly fixed: readonly number[];
}

/** The station as numbers, as every planner here reads it. */
export interface Grid {
  readonly weeks: number;
  readonly strength: readonly number[];
  readonly kits: readonly GridKit[];
  /** Sets of people, by number, that some kit's work is open to. */
  readonly crews: readonly (readonly number[])[];
  /** By week: people who are not away on its Monday, with hours or without. */
  readonly there: readonly (readonly number[])[];
  /** By person and week [min]. */
  readonly minutes: readonly (readonly number[])[];
  /** By part and week: all that has been there by then. */
  readonly supply: readonly (readonly number[])[];
}

/** An opening by numbers; `renews` are places in the kit's clocks. */
export interface Opening {
  readonly kit: number;
  readonly week: number;
  readonly renews: readonly number[];
}

/**
 * The station as numbers.
 * @param station - known to be free of faults
 */
export function gridOf(station: YearStation): Grid {
  const minutes = station.people.map((person) => minutesOf(person, station));
  const there = weeksOf(station).map((week) => peopleThere(station, week));
  const crews: (readonly number[])[] = [];
  const kits = station.kits.map((kit) => gridKit(kit, station, { crews, there, minutes }));
  return {
    weeks: station.weeks,
    strength: station.places.map((place) => place.strength),
    kits,
    crews,
    there,
    minutes,
    supply: (station.parts ?? []).map(({ onHand, arrivals = [] }) =>
      weeksOf(station).map((week) =>
        arrivals.filter((one) => one.week <= week).reduce((sum, one) => sum + one.count, onHand),
      ),
    ),
  };
}

/** Whether a renewal in this week makes the clock end later than it did at first. */
export function lengthens(clock: GridClock, week: number): boolean {
  return week * WEEK + clock.renewedFor > clock.lastDay;
}

/** Most that those who may open a kit have in any week [min]. */
export function mostMinutes({ crews, minutes }: Grid, kit: GridKit): number {
  const weeks = kit.crews.map((crew, week) =>
    nth(crews, crew).reduce((sum, person) => sum + nth(nth(minutes, person), week), 0),
  );
  return Math.max(...weeks);
}

/** Last good week after a renewal in this week. */
export function goodAfter(clock: GridClock, week: number): number {
  return week + clock.span - 1;
}

interface Hands {
  /** Sets of people found so far. */
  readonly crews: (readonly number[])[];
  readonly there: Grid["there"];
  readonly minutes: Grid["minutes"];
}

function gridKit(kit: StationKit, station: YearStation, hands: Hands): GridKit {
  const own = (station.fixed ?? []).filter((one) => one.kit === kit.id);
  const crew = crewOf(kit, station.people);
  const crews = hands.there.map((there, week) => {
    const able = there.filter((person) => nth(nth(hands.minutes, person), week) > 0);
    return crewNumber(namable(crew, able), hands.crews);
  });
  const wanted = kit.hands ?? 1;
  return {
    id: kit.id,
    place: station.places.findIndex((place) => place.id === kit.place),
    weeksOut: Math.ceil(kit.daysOut / WEEK),
    minutes: kit.minutes,
    crew,
    crews,
    hands: wanted,
    mayOpen: openWeeks(hands.there, wanted).map(
      (isEnough, week) => isEnough && !isBarred(own, week) && nth(hands.crews, nth(crews, week)).length > 0,
    ),
    clocks: kit.clocks.map((clock) => gridClock(clock, station)),
    fixed: [...new Set(own.map(({ week }) => week))].toSorted((one, other) => one - other),
  };
}

/** Weeks with as many people as are needed at once; every week where none has so many. */
function openWeeks(there: Hands["there"], wanted: number): readonly boolean[] {
  const enough = there.map((people) => people.length >= wanted);
  return enough.includes(true) ? enough : enough.map(() => true);
}

/** Where an opening was moved away. */
function isBarred(own: readonly FixedOpening[], week: number): boolean {
  return own.some(({ instead }) => instead !== undefined && instead.from <= week && week <= instead.to);
}

function crewNumber(crew: readonly number[], crews: (readonly number[])[]): number {
  const known = crews.findIndex((one) => one.join() === crew.join());
  return known >= 0 ? known : crews.push(crew) - 1;
}

function gridClock(clock: StationClock, station: YearStation): GridClock {
  const lastDay = daysBetween(station.start, clock.lastGoodDay);
  return {
    id: clock.id,
    lastDay,
    renewedFor: clock.renewedFor,
    grounds: clock.effect === "grounds",
    good: Math.floor((lastDay - (WEEK - 1)) / WEEK),
    span: Math.floor((clock.renewedFor + 1) / WEEK),
    parts: (clock.parts ?? []).map(({ part, count }) => ({
      part: (station.parts ?? []).findIndex((one) => one.id === part),
      count,
    })),
  };
}

function peopleThere(station: YearStation, week: number): readonly number[] {
  return station.people.flatMap((person, at) => (isAway(person, station, week * WEEK) ? [] : [at]));
}

/** @param day - from the start */
function isAway({ absent = [] }: StationPerson, { start }: YearStation, day: number): boolean {
  return absent.some(({ from, to }) => daysBetween(start, from) <= day && day <= daysBetween(start, to));
}

/** An opening is done on a Monday: who is away then does none; other days away take their share of the hours. */
function minutesOf(person: StationPerson, station: YearStation): number[] {
  return weeksOf(station).map((week) => {
    const days = Array.from({ length: WEEK }, (_, day) => week * WEEK + day);
    const present = days.filter((day) => !isAway(person, station, day));
    return present[0] === days[0] ? (person.hoursPerWeek * 60 * present.length) / WEEK : 0;
  });
}

function weeksOf({ weeks }: YearStation): number[] {
  return Array.from({ length: weeks }, (_, week) => week);
}
