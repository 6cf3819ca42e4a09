import { joinPerson, ROLES, type ActContext, type Draft } from "#station";
import type { SheetField } from "./fields.ts";
import type { RowIn } from "./row-in.ts";

export const PEOPLE_FIELDS: readonly SheetField[] = [
  { key: "name", label: "Name", also: ["full name", "person", "who", "crew member"], isNeeded: true },
  { key: "role", label: "Role", also: ["function", "duty"], isNeeded: true, mayBeFixed: true },
];

/** A person put on the list. Nobody may sign in by it: a way in is made for each on the page of people. */
export function readPerson(row: RowIn, doing: ActContext, newId: () => string): readonly Draft[] {
  const name = row.needed("name");
  const role = row.oneOf("role", ROLES, (one) => [one.charAt(0).toUpperCase() + one.slice(1)]);
  if (name === "" || role === undefined) return [];
  return row.take(joinPerson(doing, newId(), { name, role, sheet: row.sheet }), { "body.name": "name" });
}
