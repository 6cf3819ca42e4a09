import { addSpan, type PlainDate } from "#base";
import { KEEPING_ROLES } from "../kinds/writers.ts";
import type { Person } from "../state.ts";
import { doingsOf, type Doing, type Worked } from "./doings.ts";
import type { Qualification } from "./qualification.ts";

/** Why a thing done counts: it was done before anybody asked, by who held it, seen by who may see it, or told by a keeper. */
export type Counts = "before" | "held" | "seen" | "told";

/** Something done, and whether it counts. */
export type JudgedDoing = Doing & { readonly qualification: string; readonly counts?: Counts };

/** The last thing a person did that counts, and the last day on which they hold the qualification by it. */
export interface Holding {
  readonly qualification: string;
  readonly person: string;
  readonly last: JudgedDoing;
  readonly until: PlainDate;
}

/** What people did and hold, qualification by qualification, up to an instant: for lines that are not at hand. */
export interface Practised {
  readonly qualification: string;
  /** RFC 3339: when the newest of what was done was done. */
  readonly upTo: string;
  readonly last: readonly JudgedDoing[];
}

/** What people did and hold. */
export interface PracticeBook {
  /** What a person holds, or last held; undefined where nothing they did counts. */
  holding(qualification: string, person: string): Holding | undefined;
  /** Everybody who holds a qualification on a day and is of the station. */
  holders(qualification: string, day: PlainDate): readonly Person[];
  /** Everybody but this person who may see it done on a day. */
  seconds(qualification: string, person: string, day: PlainDate): readonly Person[];
  /** Everything done, the oldest first. */
  readonly doings: readonly JudgedDoing[];
  readonly practised: readonly Practised[];
}

/** A station as its practice is read. */
export interface Practising extends Worked {
  readonly qualifications: readonly Qualification[];
  readonly practised?: readonly Practised[];
}

/**
 * Who did what, what counts, and what each holds until when. A pure function of what the log says, whatever the order in
 * which its lines came: things done are gone through in the order of their instants.
 *
 * @param station - as its log tells it
 * @param only - of these qualifications alone
 */
export function practiceOf(station: Practising, only: readonly Qualification[] = station.qualifications): PracticeBook {
  const swept = only.map((one) => sweep(station, one));
  const last = new Map(swept.map((one) => [one.qualification.id, one]));
  const here = station.people.filter(({ left }) => !left);
  const holding: PracticeBook["holding"] = (id, person) => last.get(id)?.holding(person);
  const holds = (id: string, person: string, day: PlainDate) => isOn(holding(id, person), day);
  return {
    holding,
    holders: (id, day) => here.filter((person) => holds(id, person.id, day)),
    seconds: (id, doer, day) => {
      const keepersToo = last.get(id)?.qualification.seenBy === "keepers";
      return here.filter(
        ({ id: person, role }) =>
          person !== doer && (holds(id, person, day) || (keepersToo && KEEPING_ROLES.includes(role))),
      );
    },
    doings: swept.flatMap(({ doings }) => doings),
    practised: swept.flatMap(({ practised }) => practised ?? []),
  };
}

/** True where a qualification is held on a day. */
export function isOn(holding: Holding | undefined, day: PlainDate): boolean {
  return holding !== undefined && day <= holding.until;
}

function sweep(station: Practising, qualification: Qualification) {
  const before = station.practised?.find((one) => one.qualification === qualification.id);
  const last = new Map(before?.last.map((one) => [one.person, one]));
  const known = before === undefined ? -Infinity : Date.parse(before.upTo);
  const fresh = doingsOf(station, qualification).filter(({ at }) => Date.parse(at) > known);
  const roles = new Map(station.people.map(({ id, role }) => [id, role]));
  const doings = fresh.map((doing): JudgedDoing => {
    const counts = countsAs(doing, qualification, { last, roles });
    const judged = { ...doing, qualification: qualification.id, ...(counts && { counts }) };
    const newest = last.get(doing.person);
    if (counts && (newest === undefined || newest.day <= doing.day)) last.set(doing.person, judged);
    return judged;
  });
  const holding = (person: string) => holdingOf(last.get(person), qualification);
  const upTo = latest([...fresh.map(({ at }) => at), ...(before ? [before.upTo] : [])]);
  const practised = upTo === undefined ? undefined : { qualification: qualification.id, upTo, last: inOrder(last) };
  return { qualification, doings: [...(before?.last ?? []), ...doings], holding, practised };
}

function latest(instants: readonly string[]): string | undefined {
  return instants.reduce<string | undefined>(
    (last, at) => (last === undefined || Date.parse(at) > Date.parse(last) ? at : last),
    undefined,
  );
}

function inOrder(last: ReadonlyMap<string, JudgedDoing>): readonly JudgedDoing[] {
  return [...last.values()].toSorted((one, other) => (one.person < other.person ? -1 : 1));
}

function holdingOf(last: JudgedDoing | undefined, { id, every }: Qualification): Holding | undefined {
  return last && { qualification: id, person: last.person, last, until: addSpan(last.day, every) };
}

interface Known {
  readonly last: ReadonlyMap<string, JudgedDoing>;
  readonly roles: ReadonlyMap<string, Person["role"]>;
}

function countsAs(doing: Doing, qualification: Qualification, { last, roles }: Known): Counts | undefined {
  if (doing.in.kind === "told") return "told";
  if (Date.parse(doing.at) < Date.parse(qualification.since.at)) return "before";
  const held = (person: string) => isOn(holdingOf(last.get(person), qualification), doing.day);
  if (held(doing.person)) return "held";
  const { second } = doing;
  if (second === undefined || second === doing.person) return undefined;
  const role = qualification.seenBy === "keepers" ? roles.get(second) : undefined;
  return held(second) || (role !== undefined && KEEPING_ROLES.includes(role)) ? "seen" : undefined;
}
