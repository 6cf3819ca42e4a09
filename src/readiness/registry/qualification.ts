/* Made by `npx tsx scripts/kind-registry.ts` from the files of kinds whose subject is "qualification". */
import type { FoldsOf } from "../kinds/folds-of.ts";
import * as qualificationRetired from "../people/qualification-retired.kind.ts";
import * as qualificationSet from "../people/qualification-set.kind.ts";

export interface QualificationBodies {
  "qualification-retired": qualificationRetired.Body;
  "qualification-set": qualificationSet.Body;
}

export const qualificationFolds: FoldsOf<"qualification", QualificationBodies> = {
  "qualification-retired": qualificationRetired.fold,
  "qualification-set": qualificationSet.fold,
};
