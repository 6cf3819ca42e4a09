import type { PlainDate } from "#base";
import type { Person } from "../state.ts";
import type { PracticeBook } from "./practice.ts";
import type { Qualification } from "./qualification.ts";

/** A person who does not hold a qualification, and who could be the second person while they do it. */
export interface ToBringOn {
  readonly person: Person;
  /** Those who hold it come first; empty where nobody may. */
  readonly by: readonly Person[];
}

/** Who could be brought on in a qualification by whom on a day. */
export function toBringOn(
  book: PracticeBook,
  { id }: Qualification,
  people: readonly Person[],
  day: PlainDate,
): readonly ToBringOn[] {
  const holders = new Set(book.holders(id, day).map((one) => one.id));
  return people
    .filter((person) => !holders.has(person.id))
    .map((person) => ({ person, by: book.seconds(id, person.id, day).toSorted(byHolding(holders)) }));
}

function byHolding(holders: ReadonlySet<string>) {
  return (one: Person, other: Person): number =>
    Number(holders.has(other.id)) - Number(holders.has(one.id)) || one.name.localeCompare(other.name, "en");
}
