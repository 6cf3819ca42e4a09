import type { Entry } from "#log";
import { isKindOf } from "../kinds/folds-of.ts";
import { personFolds } from "../registry/person.ts";
import { qualificationFolds } from "../registry/qualification.ts";
import type { Person } from "../state.ts";
import { idOf } from "../subject-id.ts";
import type { Qualification } from "./qualification.ts";

/** A person after one more entry. */
export function applyPersonEntry(before: Person | undefined, entry: Entry): Person {
  const id = idOf(entry.subject);
  const person = before ?? { id, name: id, role: "crew", left: false };
  return isKindOf(personFolds, entry.kind) ? personFolds[entry.kind](person, entry.body as never, entry) : person;
}

/** A qualification after one more entry; undefined until it is set for the first time. */
export function applyQualificationEntry(before: Qualification | undefined, entry: Entry): Qualification | undefined {
  if (!isKindOf(qualificationFolds, entry.kind)) return before;
  return qualificationFolds[entry.kind](before, entry.body as never, entry);
}
