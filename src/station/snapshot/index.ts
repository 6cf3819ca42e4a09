export { SNAPSHOT_FORM, snapshotMark, snapshotOf, type StationSnapshot } from "./snapshot.ts";
export type { SnapshotReply } from "./wire.ts";
