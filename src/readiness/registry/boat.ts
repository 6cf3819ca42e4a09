/* Made by `npx tsx scripts/kind-registry.ts` from the files of kinds whose subject is "boat". */
import type { FoldsOf } from "../kinds/folds-of.ts";
import * as boatRetired from "../station/boat-retired.kind.ts";
import * as boatSet from "../station/boat-set.kind.ts";

export interface BoatBodies {
  "boat-retired": boatRetired.Body;
  "boat-set": boatSet.Body;
}

export const boatFolds: FoldsOf<"boat", BoatBodies> = {
  "boat-retired": boatRetired.fold,
  "boat-set": boatSet.fold,
};
