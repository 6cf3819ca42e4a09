import type { PlainDate } from "#base";
import {
  isOn,
  practiceOf,
  toBringOn,
  type Holding,
  type JudgedDoing,
  type Person,
  type Practising,
  type Qualification,
} from "#readiness";
import { mayWrite } from "../judging/permission.ts";

/** How a person stands in one qualification. */
export interface TrainingLine {
  readonly qualification: Qualification;
  /** What they hold, or last held; absent where nothing they did counts. */
  readonly holding?: Holding;
  readonly isHeld: boolean;
  /** Who could bring them on, or see it done; empty where nobody may. */
  readonly by: readonly Person[];
}

/** What a person holds and did. */
export interface Training {
  readonly lines: readonly TrainingLine[];
  /** Newest first, of qualifications still on the list. */
  readonly doings: readonly JudgedDoing[];
}

/**
 * The training record of a person: every qualification of the station, and all they did that one is for.
 *
 * @param day - the day at which it is told
 */
export function trainingOf(station: Practising, person: string, day: PlainDate): Training {
  const set = station.qualifications.filter(({ retired }) => !retired);
  const book = practiceOf(station, set);
  const lines = set.map((qualification) => {
    const holding = book.holding(qualification.id, person);
    const by = book.seconds(qualification.id, person, day);
    return { qualification, ...(holding && { holding }), isHeld: isOn(holding, day), by };
  });
  const own = book.doings.filter((one) => one.person === person);
  return { lines, doings: own.toSorted((one, other) => (one.day < other.day ? 1 : one.day > other.day ? -1 : 0)) };
}

/** How the station stands in one qualification. */
export interface QualificationStanding {
  readonly qualification: Qualification;
  /** Who holds it, the first to lapse first. */
  readonly held: readonly { readonly person: Person; readonly holding: Holding }[];
  /** Hands who do not, and who could bring each on. */
  readonly others: ReturnType<typeof toBringOn>;
  /** Done by who did not hold it, seen by nobody who may: newest first. */
  readonly unseen: readonly JudgedDoing[];
}

/** Every qualification of a station, by name: who holds it until when, and who could be brought on by whom. */
export function qualificationsOf(station: Practising, day: PlainDate): readonly QualificationStanding[] {
  const set = station.qualifications.filter(({ retired }) => !retired);
  const book = practiceOf(station, set);
  const hands = station.people.filter(({ left, role }) => !left && mayWrite(role, "turnaround-opened"));
  return set.map((qualification) => {
    const held = book.holders(qualification.id, day).map((person) => ({
      person,
      holding: book.holding(qualification.id, person.id)!,
    }));
    return {
      qualification,
      held: held.toSorted((one, other) => (one.holding.until < other.holding.until ? -1 : 1)),
      others: toBringOn(book, qualification, hands, day),
      unseen: book.doings.filter((one) => one.qualification === qualification.id && !one.counts).toReversed(),
    };
  });
}
