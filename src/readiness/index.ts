export * from "./kinds/kinds.ts";
export * from "./kinds/work-kinds.ts";
export * from "./state.ts";
export * from "./kinds/casualty-kinds.ts";
export type * from "./kinds/people-kinds.ts";
export type * from "./kinds/drill-kinds.ts";
export { MOST_FAULTS } from "./kinds/drill-schemas.ts";
export * from "./drill/index.ts";
export type * from "./kinds/stock-kinds.ts";
export type * from "./kinds/sheet-kinds.ts";
export * from "./stock/index.ts";
export * from "./people/index.ts";
export * from "./casualty/casualty-state.ts";
export { applyCasualtyEntry, applyToCasualty, draftCasualty, isCasualtyKind } from "./casualty/casualty-fold.ts";
export type { CasualtyDraft } from "./drafts/casualty-draft.ts";
export { ReportsDraft } from "./drafts/reports-draft.ts";
export type { StepReport } from "./state.ts";
export { CasualtyJoiner, mergeLines, sheetIds } from "./join/index.ts";
export { hullAlone } from "./casualty/casualty-hull.ts";
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
export { KitDraft, markOf, type PatternShelf } from "./draft.ts";
export { answerKey } from "./kit/turnaround-fold.ts";
export { sealNumbersOf } from "./kit/custody-fold.ts";
export { measuredBefore } from "./kit/measured-before.ts";
export { isSameSeal, plainSeal } from "./kit/seal-number.ts";
export {
  applyBoatEntry,
  applyDeviceEntry,
  applyPersonEntry,
  applyPlaceEntry,
  applyStationEntry,
  applyToReports,
  idOf,
  type StationPolicy,
  type BroughtBack,
  type StationState,
} from "./people-fold.ts";
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
export { afterMeeting, COMMON_PRACTICE, flushDue, metIn, sayMet, type FlushDue } from "./after-use/index.ts";
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
  lineKeys,
  turnaroundsNewestFirst,
  type Dates,
} from "./kit/life.ts";
export { dateWantedBy, nextTurnaround } from "./kit/date-wanted.ts";
export { isCountSaid, saysItsCount, saySeen, sealWitness } from "./kit/answer-words.ts";
export { recordOf } from "./kit/record.ts";
export { sealingRefusals, type Sealing } from "./kit/sealing.ts";
export {
  judgeAnswer,
  judgeInstant,
  judgeReading,
  readingGate,
  secondsSaid,
  secondsWanted,
  stepGate,
  type Against,
  type AnswerVerdict,
  type Gate,
  type InTurnaround,
  type Judged,
  type SecondSaid,
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
export { barsAt, sayWayOut, sayWorks, type AtWork, type Bar } from "./findings/barred.ts";
export { answersAt, type GivenAnswer } from "./findings/answers-at.ts";
export { proofSoFar, type CheckSoFar, type ProofSoFar } from "./findings/proof-so-far.ts";
export { wrongWithoutFinding, type LooseEnd } from "./findings/loose-ends.ts";
export { lookUp, nameOfItem, nameOfMode, type Lookup } from "./lookup.ts";
export { trendsOf, type Trend } from "./trends/trends.ts";
export { trendLimit, watchesOf } from "./trends/trend-watch.ts";
export { changeOf, sayChange, type TrendChange } from "./trends/trend-change.ts";
export { demandsOf, hiddenOf, inCommonOf, type Demand, type HiddenRecord, type InCommon } from "./demands/index.ts";
export { AHEAD_DAYS, sundayOf, workLinesOf } from "./work/work-lines.ts";
export type { PartNeed, WorkLine, WorkTask } from "./work/work-line.ts";
