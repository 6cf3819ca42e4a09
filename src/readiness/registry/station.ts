/* Made by `npx tsx scripts/kind-registry.ts` from the files of kinds whose subject is "station". */
import type { FoldsOf } from "../kinds/folds-of.ts";
import * as linesBroughtBack from "../station/lines-brought-back.kind.ts";
import * as linesHandedIn from "../station/lines-handed-in.kind.ts";
import * as linesImported from "../station/lines-imported.kind.ts";
import * as openingIntervalSet from "../station/opening-interval-set.kind.ts";
import * as policySet from "../station/policy-set.kind.ts";
import * as stationNamed from "../station/station-named.kind.ts";

export interface StationBodies {
  "lines-brought-back": linesBroughtBack.Body;
  "lines-handed-in": linesHandedIn.Body;
  "lines-imported": linesImported.Body;
  "opening-interval-set": openingIntervalSet.Body;
  "policy-set": policySet.Body;
  "station-named": stationNamed.Body;
}

export const stationFolds: FoldsOf<"station", StationBodies> = {
  "lines-brought-back": linesBroughtBack.fold,
  "lines-handed-in": linesHandedIn.fold,
  "lines-imported": linesImported.fold,
  "opening-interval-set": openingIntervalSet.fold,
  "policy-set": policySet.fold,
  "station-named": stationNamed.fold,
};
