import type { PlainDate } from "#base";
import type { Pattern } from "#kit";
import { neededFor, practiceOf, type KitState, type Person, type Qualification, type WorkKind } from "#readiness";
import { mayWrite } from "../judging/permission.ts";
import { practisingOf } from "../people/need-second.ts";
import type { StationReading } from "../station-reading.ts";

/** A station as work is read from it. */
export type WorkStation = Pick<StationReading, "kits" | "places" | "people" | "patterns" | "policy"> &
  Partial<Pick<StationReading, "casualties" | "qualifications" | "practised">> & {
    /** Kits taken off charge, where `kits` is without them. */
    readonly retired?: readonly KitState[];
  };

/** The kind of line by which each work is done: who may write it may do it. */
const KINDS = { opening: "turnaround-opened", muster: "mustered", return: "returned", settle: "settled" } as const;

/** Who is there and may do a piece of work. */
export interface Able {
  /** Who may do it alone and is not away on the day it is asked for. */
  readonly present: readonly Person[];
  /** Who is there and may do it with one of those there who sees it done. */
  readonly withSecond: readonly Person[];
  /** Everybody there who may lend a hand, such as to lift. */
  readonly hands: readonly Person[];
}

/** Who is there on a day and may do a piece of work: alone, or with a second person who is there too. */
export type AbleOn = (work: WorkKind, pattern: Pattern, day: PlainDate) => Able;

/** People on the list who are not away on a day. */
export function presentOn(people: readonly Person[], day: PlainDate): readonly Person[] {
  return people.filter(({ left, away = [] }) => !left && !away.some(({ from, to }) => from <= day && day <= to));
}

/**
 * Who may do what. An opening asks for every qualification that a line of each turnaround needs; other work for none.
 *
 * @param station - as its log tells it; without qualifications the role alone decides
 */
export function ablePeople(station: WorkStation): AbleOn {
  const { qualifications = [] } = station;
  const book = practiceOf(practisingOf(station));
  return (work, pattern, day) => {
    const there = presentOn(station.people, day);
    const hands = there.filter(({ role }) => mayWrite(role, KINDS[work]));
    const needed = work === "opening" ? neededFor(qualifications, pattern) : [];
    const holds = (person: Person, { id }: Qualification) => book.holders(id, day).includes(person);
    const isSeen = (person: Person, one: Qualification) =>
      holds(person, one) || book.seconds(one.id, person.id, day).some((second) => there.includes(second));
    const present = hands.filter((person) => needed.every((one) => holds(person, one)));
    const withSecond = hands.filter((one) => !present.includes(one) && needed.every((need) => isSeen(one, need)));
    return { present, withSecond, hands };
  };
}
