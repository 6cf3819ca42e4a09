/* Made by `npx tsx scripts/kind-registry.ts` from the files of kinds whose subject is "place". */
import type { FoldsOf } from "../kinds/folds-of.ts";
import * as placeClosed from "../station/place-closed.kind.ts";
import * as placeSet from "../station/place-set.kind.ts";
import * as shelvesSet from "../station/shelves-set.kind.ts";

export interface PlaceBodies {
  "place-closed": placeClosed.Body;
  "place-set": placeSet.Body;
  "shelves-set": shelvesSet.Body;
}

export const placeFolds: FoldsOf<"place", PlaceBodies> = {
  "place-closed": placeClosed.fold,
  "place-set": placeSet.fold,
  "shelves-set": shelvesSet.fold,
};
