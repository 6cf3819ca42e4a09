/* Made by `npx tsx scripts/kind-registry.ts` from the files of kinds whose subject is "person". */
import type { FoldsOf } from "../kinds/folds-of.ts";
import * as absenceSet from "../people/absence-set.kind.ts";
import * as hoursSet from "../people/hours-set.kind.ts";
import * as personChanged from "../people/person-changed.kind.ts";
import * as personJoined from "../people/person-joined.kind.ts";
import * as personLeft from "../people/person-left.kind.ts";
import * as practiceTold from "../people/practice-told.kind.ts";

export interface PersonBodies {
  "absence-set": absenceSet.Body;
  "hours-set": hoursSet.Body;
  "person-changed": personChanged.Body;
  "person-joined": personJoined.Body;
  "person-left": personLeft.Body;
  "practice-told": practiceTold.Body;
}

export const personFolds: FoldsOf<"person", PersonBodies> = {
  "absence-set": absenceSet.fold,
  "hours-set": hoursSet.fold,
  "person-changed": personChanged.fold,
  "person-joined": personJoined.fold,
  "person-left": personLeft.fold,
  "practice-told": practiceTold.fold,
};
