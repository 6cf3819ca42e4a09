import { formatDate, type PlainDate } from "#base";

interface Named {
  readonly id: string;
  readonly name: string;
}

/**
 * Why a plan falls short, for people: the planner knows kits, places, people and qualifications by their ids, and its first
 * week by its Monday.
 *
 * @param named - whoever and whatever the text may name
 * @param start - the Monday of this week
 */
export function sayBecause(text: string, named: readonly Named[], start: PlainDate): string {
  const names = new Map(named.map(({ id, name }) => [id, name]));
  const thisWeek = new RegExp(`the week of ${formatDate(start)}`, "g");
  return text
    .replaceAll(/[A-Za-z0-9][A-Za-z0-9._@-]*[A-Za-z0-9]/g, (word) => names.get(word) ?? word)
    .replaceAll(thisWeek, "this week");
}
