/* Made by `npx tsx scripts/kind-registry.ts` from the files of kinds whose subject is "visit". */
import type { FoldsOf } from "../kinds/folds-of.ts";
import * as lineReexamined from "../visit/line-reexamined.kind.ts";
import * as visitBegun from "../visit/visit-begun.kind.ts";
import * as visitEnded from "../visit/visit-ended.kind.ts";

export interface VisitBodies {
  "line-reexamined": lineReexamined.Body;
  "visit-begun": visitBegun.Body;
  "visit-ended": visitEnded.Body;
}

export const visitFolds: FoldsOf<"visit", VisitBodies> = {
  "line-reexamined": lineReexamined.fold,
  "visit-begun": visitBegun.fold,
  "visit-ended": visitEnded.fold,
};
