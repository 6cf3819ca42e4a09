export type * from "./kinds/kinds.ts";
export type { Answer, DateRead, Fitted, FromSheet, PhotoRef, Value } from "./kinds/schema-parts.ts";
export type { CountedAs, DeliveryMeasured, FoundAtReturn, Remedy, StepAnswer } from "./kinds/kit-parts.ts";
export type {
  CasualtyBoat,
  CasualtyHole,
  CasualtyOutcome,
  CasualtySituation,
  CasualtySpace,
  CasualtyTold,
  DeckEdge,
  KeptForecast,
  PumpSetting,
  PumpSign,
  ReviewAbout,
  Righting,
  SameOnBoth,
  StabilitySeen,
  WrittenLate,
} from "./kinds/casualty-parts.ts";
export type { BoatSetting, Tie } from "./kinds/people-parts.ts";
export type { Drawn, ItemRobbed, LotCount, PartSetting, Shelf } from "./kinds/stock-parts.ts";
export type { VisitedKit } from "./kinds/visit-parts.ts";
export type { PlannedWork, WorkKind } from "./kinds/work-parts.ts";
export type { PlantedFault } from "./kinds/drill-parts.ts";
export { MOST_DRAWN, MOST_FAULTS, MOST_VISITED } from "./kinds/most.ts";
export { ADMINISTRATORS, KEEPING_ROLES, ROLES, WATCHERS, type Role } from "./kinds/writers.ts";
export { subjectOfKind } from "./kinds/kind-subjects.ts";
export { WRITING } from "./kinds/kind-writers.ts";
export * from "./state.ts";
export * from "./drill/index.ts";
export * from "./visit/index.ts";
export * from "./stock/index.ts";
export * from "./people/index.ts";
export * from "./casualty/casualty-state.ts";
export { applyCasualtyEntry, applyToCasualty, draftCasualty, isCasualtyKind } from "./casualty/casualty-fold.ts";
export type { CasualtyDraft } from "./drafts/casualty-draft.ts";
export { namesApart } from "./casualty/pump-names.ts";
export { linePhotosOf, photosAt, type LinePhotos, type PhotosAsked } from "./line-photos/line-photos.ts";
export { ReportsDraft } from "./drafts/reports-draft.ts";
export type { StepReport } from "./state.ts";
export { CasualtyJoiner, mergeLines, sheetIds } from "./join/index.ts";
export { hullAlone, type CasualtyBoatKind } from "./casualty/casualty-hull.ts";
export {
  BOAT_LIMITS,
  COAMING,
  highestLevel,
  LEVEL_LIMITS,
  wrongLevel,
  wrongMeasures,
  type WrongMeasure,
} from "./casualty/casualty-limits.ts";
export {
  isForCasualty,
  isSheetOf,
  kitsOfCasualty,
  vesselName,
  type HandedTo,
  type HandOver,
  type KitOfCasualty,
} from "./casualty/casualty-kits.ts";
export { casualtyRuns, withCasualtyRuns, type KitRun } from "./casualty-runs/index.ts";
export { ranSinceFilled, refuelsDue, type RefuelDue } from "./casualty/casualty-pumping.ts";
export { entryKinds, isEntryKind, judgeBody, kindSchemas, validateBody } from "./kinds/kind-schemas.ts";
export { applyKitEntry, applyToDraft, draftKit, foldKit, isEnrolled, isKitKind } from "./kit/kit-fold.ts";
export { KitDraft, markOf, type PatternsByVersion } from "./draft.ts";
export { answerKey } from "./turnaround/answer-key.ts";
export { isBehindSeal, sealNumbersOf } from "./kit/seal-fold.ts";
export { measuredBefore } from "./kit/measured-before.ts";
export { isSameSeal, plainSeal } from "./kit/seal-number.ts";
export { applyBoatEntry, applyDeviceEntry, applyPlaceEntry, applyToStation } from "./station/station-folds.ts";
export { StationDraft } from "./station/station-draft.ts";
export type { BroughtBack, StationPolicy, StationState } from "./station/station-state.ts";
export { applyPersonEntry, applyQualificationEntry } from "./people/people-fold.ts";
export { applyToReports } from "./reports/reports-fold.ts";
export { idOf } from "./subject-id.ts";
export {
  lapsesIn,
  lapsesOf,
  outlookOf,
  standingOf,
  standingOn,
  type Outlook,
  type StandingOptions,
} from "./standing/standing.ts";
export type { Condition } from "./standing/condition.ts";
export { sayBand, sayLapse, standingInWords, type LapseInWords, type StandingInWords } from "./standing/in-words.ts";
export {
  afterMeeting,
  COMMON_PRACTICE,
  flushDue,
  metIn,
  sayLent,
  sayLentOut,
  sayMet,
  type FlushDue,
} from "./after-use/index.ts";
export type { Lent } from "./kinds/kit-parts.ts";
export { bandsIn, bandsOf, type DayRange } from "./standing/bands.ts";
export { firstToEnd, isReady, shortfallsOf, strengthOf, type Shortfall, type Strength } from "./standing/strength.ts";
export {
  datesOf,
  datesRead,
  datesUnknown,
  fuelItemOf,
  isToldAlone,
  lastClosed,
  lastGoodDay,
  lastProofRun,
  lastSealed,
  lineKeys,
  turnaroundsNewestFirst,
  type Dates,
} from "./kit/life.ts";
export { dateWantedBy, nextTurnaround } from "./kit/date-wanted.ts";
export { isCountSaid, isSomeOf, sayGivenSeen, saysItsCount, saySeen, sealWitness } from "./kit/answer-words.ts";
export { recordOf } from "./kit/record.ts";
export { sayRefusal, type Refusal } from "./kit/refusal.ts";
export { sealingRefusals, type Sealing } from "./kit/sealing.ts";
export {
  clockAt,
  endedBy,
  type AtClock,
  isOfMeasured,
  isShare,
  isToMeasure,
  judgeAnswer,
  judgeInstant,
  judgeReading,
  readQuarters,
  readingGate,
  runUnderWay,
  confirmedBy,
  secondsSaid,
  secondsWanted,
  toConfirm,
  seenGate,
  stepGate,
  type Against,
  type AnswerVerdict,
  type Gate,
  type InTurnaround,
  type Judged,
  type SecondSaid,
  type ToConfirm,
  type SecondWanted,
} from "./judging/index.ts";
export {
  findingsByAge,
  isGrounding,
  isRemedied,
  mayBeLivedWith,
  openFindings,
  proofWanted,
  provingChecks,
  type AgedFinding,
} from "./findings/finding-list.ts";
export { hangingOf, type Hanging } from "./kit/hanging.ts";
export { recordedFor } from "./kit/recorded.ts";
export { sayBarred, sayWayOut } from "./findings/bar-words.ts";
export { barsAt, type AtWork, type Bar } from "./findings/barred.ts";
export { answersAt, type GivenAnswer } from "./findings/answers-at.ts";
export { isLastToProve, proofSoFar, type CheckSoFar, type ProofSoFar } from "./findings/proof-so-far.ts";
export { wrongWithoutFinding, type LooseEnd } from "./findings/loose-ends.ts";
export { Lookups, lookUp, nameOfItem, nameOfMode, type Lookup } from "./lookup.ts";
export { checksTelling, measuredTrends, trendsOf, type Trend } from "./trends/trends.ts";
export { sayWatch, trendLimit, watchesOf, type Watch } from "./trends/trend-watch.ts";
export { changeOf, sayChange, type TrendChange } from "./trends/trend-change.ts";
export {
  demandsOf,
  failureOf,
  hiddenOf,
  inCommonOf,
  plantedStoppingOf,
  type Demand,
  type HiddenRecord,
  type InCommon,
  lastProved,
} from "./demands/index.ts";
export { AHEAD_DAYS, partsOfOpening, sundayOf, workLinesOf } from "./work/work-lines.ts";
export { nextOpening, type NextOpening } from "./work/next-opening.ts";
export { sayWhy, type PartNeed, type WorkLine, type WorkTask } from "./work/work-line.ts";
