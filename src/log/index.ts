export * from "./entry.ts";
export { ENTRY_LIMITS } from "./entry-limits.ts";
export { instantOf, parseInstant } from "./instant.ts";
export { compareEntries } from "./order.ts";
export { canonicalText } from "./canonical.ts";
export {
  chainHash,
  emptyChain,
  extendChain,
  followsOn,
  genesisHash,
  isGenesis,
  hashEntry,
  hashText,
  verifyChain,
  type ChainHead,
  type ChainVerdict,
  type PlaceHead,
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
export {
  checkBytes,
  hashBytes,
  newAmongRetaken,
  planIntake,
  planRetaking,
  type EntryForm,
  type Held,
  type Intake,
} from "./intake.ts";
export { endOfRun, readRun, type ChainRun } from "./run.ts";
export { isInbornName } from "./inborn-names.ts";
export { HashTree } from "./tree/hash-tree.ts";
export { isSignedByItsKey, publicKeyOf, signHead, type LogHead, type SignedHead } from "./heads/signed-head.ts";
export { firstKey, followingKey, keyMark, trustedKeys, type StationKey } from "./heads/keys.ts";
export { isAhead, readHeadList, signHeadList, type SignedHeadList } from "./heads/head-list.ts";
export { judgeHead, type HeadVerdict } from "./heads/judge-head.ts";
export { headCode, headLine, readHead, readHeads, signedHeadShape } from "./heads/head-text.ts";
export { doubtAbout, hexOf, leafOf, type ProvedLine } from "./heads/line-proof.ts";
export { PlaceAudit, type AuditFault, type KeptHead, type StoredLine } from "./audit.ts";
export { LATE_RECEIPT_MS, lateBy, sayLateness } from "./receipt/late-receipt.ts";
export { PlaceTrees } from "./place-trees.ts";
export { readRecordProof, recordProofText, type LinesProof } from "./heads/record-proof.ts";
