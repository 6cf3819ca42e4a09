/* Made by `npx tsx scripts/kind-registry.ts` from the files of kinds whose subject is "casualty". */
import type { FoldsOf } from "../kinds/folds-of.ts";
import * as casualtyChanged from "../casualty/casualty-changed.kind.ts";
import * as casualtyClosed from "../casualty/casualty-closed.kind.ts";
import * as casualtyJoined from "../casualty/casualty-joined.kind.ts";
import * as casualtyNoted from "../casualty/casualty-noted.kind.ts";
import * as casualtyOpened from "../casualty/casualty-opened.kind.ts";
import * as casualtyReviewed from "../casualty/casualty-reviewed.kind.ts";
import * as fuelCleared from "../casualty/fuel-cleared.kind.ts";
import * as fuelSmelt from "../casualty/fuel-smelt.kind.ts";
import * as holePatched from "../casualty/hole-patched.kind.ts";
import * as pumpRefuelled from "../casualty/pump-refuelled.kind.ts";
import * as pumpSeen from "../casualty/pump-seen.kind.ts";
import * as pumpSet from "../casualty/pump-set.kind.ts";
import * as pumpStartTold from "../casualty/pump-start-told.kind.ts";
import * as reviewNoted from "../casualty/review-noted.kind.ts";
import * as soundingTaken from "../casualty/sounding-taken.kind.ts";
import * as stabilitySeen from "../casualty/stability-seen.kind.ts";
import * as towSet from "../casualty/tow-set.kind.ts";

export interface CasualtyBodies {
  "casualty-changed": casualtyChanged.Body;
  "casualty-closed": casualtyClosed.Body;
  "casualty-joined": casualtyJoined.Body;
  "casualty-noted": casualtyNoted.Body;
  "casualty-opened": casualtyOpened.Body;
  "casualty-reviewed": casualtyReviewed.Body;
  "fuel-cleared": fuelCleared.Body;
  "fuel-smelt": fuelSmelt.Body;
  "hole-patched": holePatched.Body;
  "pump-refuelled": pumpRefuelled.Body;
  "pump-seen": pumpSeen.Body;
  "pump-set": pumpSet.Body;
  "pump-start-told": pumpStartTold.Body;
  "review-noted": reviewNoted.Body;
  "sounding-taken": soundingTaken.Body;
  "stability-seen": stabilitySeen.Body;
  "tow-set": towSet.Body;
}

export const casualtyFolds: FoldsOf<"casualty", CasualtyBodies> = {
  "casualty-changed": casualtyChanged.fold,
  "casualty-closed": casualtyClosed.fold,
  "casualty-joined": casualtyJoined.fold,
  "casualty-noted": casualtyNoted.fold,
  "casualty-opened": casualtyOpened.fold,
  "casualty-reviewed": casualtyReviewed.fold,
  "fuel-cleared": fuelCleared.fold,
  "fuel-smelt": fuelSmelt.fold,
  "hole-patched": holePatched.fold,
  "pump-refuelled": pumpRefuelled.fold,
  "pump-seen": pumpSeen.fold,
  "pump-set": pumpSet.fold,
  "pump-start-told": pumpStartTold.fold,
  "review-noted": reviewNoted.fold,
  "sounding-taken": soundingTaken.fold,
  "stability-seen": stabilitySeen.fold,
  "tow-set": towSet.fold,
};
