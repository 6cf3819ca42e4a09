export * from "./entry.ts";
export { ENTRY_LIMITS } from "./entry-limits.ts";
export { instantOf, parseInstant } from "./instant.ts";
export { compareEntries } from "./order.ts";
export { canonicalText } from "./canonical.ts";
export {
  chainHash,
  emptyChain,
  extendChain,
  genesisHash,
  hashEntry,
  verifyChain,
  type ChainHead,
  type ChainVerdict,
} from "./chain.ts";
export { CLOCK_AHEAD_MS, CLOCK_BEHIND_MS, judgeClock, type ClockVerdict, type Earlier } from "./clock.ts";
export { validateEntry } from "./validate.ts";
export type { History } from "./ancestry.ts";
export { createFold, type Fold, type FoldRule } from "./fold.ts";
export { isStrike, targetOf } from "./strikes.ts";
export {
  createExportReader,
  exportHeader,
  exportLine,
  exportLines,
  parseExport,
  type ExportHeader,
  type ExportItem,
  type ExportReader,
  type PlaceChain,
} from "./exchange.ts";
export { checkBytes, hashBytes, planIntake, type EntryForm, type Held, type Intake } from "./intake.ts";
export { isInbornName } from "./inborn-names.ts";
