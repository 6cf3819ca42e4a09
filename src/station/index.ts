export * from "./ports.ts";
export { movedFrom, type Moved } from "./judging/moved.ts";
export * from "./wire/wire.ts";
export * from "./wire/wire-links.ts";
export * from "./wire/wire-mail.ts";
export * from "./wire/wire-second.ts";
export * from "./wire/wire-patterns.ts";
export * from "./store-error.ts";
export {
  CALLING,
  isKeeper,
  mayCall,
  mayWrite,
  ROLES,
  WRITING,
  type Asker,
  type Permission,
} from "./judging/permission.ts";
export { PIN_LENGTH, PIN_RULE, pinWeakness, type PinWeakness } from "./judging/pin-rule.ts";
export { judgeEntry, type EntryFacts } from "./judging/judge-entry.ts";
export { boardOf, standingAt, type Board, type BoardKit, type BoardPlace } from "./board.ts";
export { createStationFold, type StationFold } from "./station-fold.ts";
export type { StationReading } from "./station-reading.ts";
export * from "./snapshot/index.ts";
export type { Act, ActContext, Draft } from "./acts/draft.ts";
export * from "./acts/kit-acts.ts";
export { handedAt, pumpedFrom } from "./return/pumped-from.ts";
export { flushKit, settleLent, takeBack } from "./return/return-acts.ts";
export * from "./acts/turnaround-acts.ts";
export * from "./acts/finding-acts.ts";
export { isItemItself } from "./acts/replaced-item.ts";
export * from "./acts/station-acts.ts";
export * from "./acts/casualty-acts.ts";
export * from "./hand-over/method.ts";
export * from "./hand-over/signature.ts";
export * from "./labels/index.ts";
export * from "./stock/shelf-acts.ts";
export * from "./stock/stock-acts.ts";
export * from "./people/index.ts";
export * from "./drills/index.ts";
export * from "./visits/index.ts";
export * from "./calendar/index.ts";
export * from "./mail/index.ts";
export * from "./pattern-files/index.ts";
export * from "./work/index.ts";
export * from "./joined/join-acts.ts";
export * from "./timeline/index.ts";
export {
  showCard,
  type CardLine,
  type CardSection,
  type CardWarning,
  type ShownCard,
  type Worded,
} from "./stranger-card.ts";
export { PART_SIGNS } from "./card-icons.ts";
export { CARD_WORDS } from "./card-words/index.ts";
export { hashSecret, issueTicket, makeCode, readCode, takeTicket, type Purpose } from "./tickets.ts";
export * from "./clock/index.ts";
export * from "./exchange/index.ts";
export { effectsOfTaking, isBuilding } from "./acts/finding-effect.ts";
export { isTakenOut } from "./signed-heads.ts";
export { verifyLog, type PlaceVerdict } from "./verify-log.ts";
export {
  endedBy,
  findingsByMode,
  minutesSinceRun,
  nextPumps,
  nextTry,
  troubleAfterRun,
  type FaultAdvice,
  type Likely,
  type Where,
} from "./fault-finding/index.ts";
export * from "./start-chance/index.ts";
export { pictureLine } from "./line-photos/line-photo-acts.ts";
export * from "./lives/index.ts";
export * from "./opening-interval/index.ts";
export * from "./report-card/index.ts";
export * from "./trend-signals/index.ts";
export * from "./review/index.ts";
export * from "./record/index.ts";
