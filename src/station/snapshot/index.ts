export { SNAPSHOT_FORM, snapshotMark, snapshotOf, type StationSnapshot } from "./snapshot.ts";
export { readSnapshot, sendSnapshot, type SentSnapshot, type SnapshotReply } from "./wire.ts";
