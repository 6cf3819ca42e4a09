import { daysBetween } from "#base";
import { WEEK, type StationClock, type StationKit, type StationPerson, type YearStation } from "./station.ts";

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
  /** Which {@link Grid.crews} may work on it. */
  readonly crew: number;
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
  const crews: number[][] = [];
  const kits = station.kits.map((kit) => gridKit(kit, station, crews));
  return {
    weeks: station.weeks,
    strength: station.places.map((place) => place.strength),
    kits,
    crews,
    minutes: station.people.map((person) => minutesOf(person, station)),
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

/** Last good week after a renewal in this week. */
export function goodAfter(clock: GridClock, week: number): number {
  return week + clock.span - 1;
}

function gridKit(kit: StationKit, station: YearStation, crews: number[][]): GridKit {
  const fixed = (station.fixed ?? []).filter((one) => one.kit === kit.id).map((one) => one.week);
  return {
    id: kit.id,
    place: station.places.findIndex((place) => place.id === kit.place),
    weeksOut: Math.ceil(kit.daysOut / WEEK),
    minutes: kit.minutes,
    crew: crewOf(kit, station, crews),
    clocks: kit.clocks.map((clock) => gridClock(clock, station)),
    fixed: [...new Set(fixed)].toSorted((one, other) => one - other),
  };
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

/** Everybody who has all the kit needs: nobody is named for what they may not do. */
function crewOf(kit: StationKit, { people }: YearStation, crews: number[][]): number {
  const may = (person: StationPerson) => (kit.needs ?? []).every((need) => (person.may ?? []).includes(need));
  const crew = people.flatMap((person, index) => (may(person) ? [index] : []));
  const known = crews.findIndex((one) => one.join() === crew.join());
  return known >= 0 ? known : crews.push(crew) - 1;
}

/** An opening is done on a Monday: who is away then does none; other days away take their share of the hours. */
function minutesOf(person: StationPerson, station: YearStation): number[] {
  const away = (person.absent ?? []).map(({ from, to }) => ({
    from: daysBetween(station.start, from),
    to: daysBetween(station.start, to),
  }));
  return weeksOf(station).map((week) => {
    const days = Array.from({ length: WEEK }, (_, day) => week * WEEK + day);
    const present = days.filter((day) => !away.some(({ from, to }) => from <= day && day <= to));
    return present[0] === days[0] ? (person.hoursPerWeek * 60 * present.length) / WEEK : 0;
  });
}

function weeksOf({ weeks }: YearStation): number[] {
  return Array.from({ length: weeks }, (_, week) => week);
}
