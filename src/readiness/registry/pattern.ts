/* Made by `npx tsx scripts/kind-registry.ts` from the files of kinds whose subject is "pattern". */
import type { FoldsOf } from "../kinds/folds-of.ts";
import * as linePictured from "../line-photos/line-pictured.kind.ts";
import * as reportAnswered from "../reports/report-answered.kind.ts";
import * as stepReported from "../reports/step-reported.kind.ts";

export interface PatternBodies {
  "line-pictured": linePictured.Body;
  "report-answered": reportAnswered.Body;
  "step-reported": stepReported.Body;
}

export const patternFolds: FoldsOf<"pattern", PatternBodies> = {
  "line-pictured": linePictured.fold,
  "report-answered": reportAnswered.fold,
  "step-reported": stepReported.fold,
};
