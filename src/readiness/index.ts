export * from "./kinds.ts";
export * from "./state.ts";
export * from "./casualty-kinds.ts";
export * from "./casualty-state.ts";
export { applyCasualtyEntry, isCasualtyKind } from "./casualty-fold.ts";
export { hullAlone } from "./casualty-hull.ts";
export {
  BOAT_LIMITS,
  highestLevel,
  LEVEL_LIMITS,
  wrongLevel,
  wrongMeasures,
  type WrongMeasure,
} from "./casualty-limits.ts";
export {
  isForCasualty,
  kitsOfCasualty,
  vesselName,
  type HandedTo,
  type HandOver,
  type KitOfCasualty,
} from "./casualty-kits.ts";
export { ranSinceFilled, refuelsDue, type RefuelDue } from "./casualty-pumping.ts";
export { entryKinds, isEntryKind, judgeBody, kindSchemas, validateBody } from "./kind-schemas.ts";
export { applyKitEntry, applyToDraft, draftKit, foldKit, isEnrolled, isKitKind } from "./kit-fold.ts";
export { KitDraft, markOf, type PatternShelf } from "./draft.ts";
export { answerKey } from "./turnaround-fold.ts";
export { sealNumbersOf } from "./custody-fold.ts";
export { isSameSeal, plainSeal } from "./seal-number.ts";
export {
  applyDeviceEntry,
  applyPatternEntry,
  applyPersonEntry,
  applyPlaceEntry,
  applyStationEntry,
  idOf,
  type StationPolicy,
  type StationState,
  type StepReport,
} from "./people-fold.ts";
export {
  lapsesIn,
  lapsesOf,
  outlookOf,
  standingOf,
  standingOn,
  type Outlook,
  type StandingOptions,
} from "./standing.ts";
export type { Condition } from "./condition.ts";
export { bandsIn, bandsOf, type DayRange } from "./bands.ts";
export { firstToEnd, isReady, shortfallsOf, strengthOf, type Shortfall, type Strength } from "./strength.ts";
export {
  datesOf,
  fuelItemOf,
  lastClosed,
  lastGoodDay,
  lastProofRun,
  lineKeys,
  turnaroundsNewestFirst,
  type Dates,
} from "./life.ts";
export { recordOf } from "./record.ts";
export { sealingRefusals, type Sealing } from "./sealing.ts";
export {
  findingsByAge,
  isGrounding,
  isRemedied,
  mayBeLivedWith,
  openFindings,
  provingChecks,
  type AgedFinding,
} from "./finding-list.ts";
export { wrongWithoutFinding, type LooseEnd } from "./loose-ends.ts";
export { lookUp, nameOfItem, nameOfMode, type Lookup } from "./lookup.ts";
export { trendsOf, type Trend } from "./trends.ts";
export { trendLimit, watchesOf } from "./trend-watch.ts";
export { changeOf, sayChange, type TrendChange } from "./trend-change.ts";
