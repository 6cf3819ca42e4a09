export * from "./ports.ts";
export * from "./wire.ts";
export * from "./store-error.ts";
export { CALLING, isKeeper, mayCall, mayWrite, ROLES, WRITING, type Asker, type Permission } from "./permission.ts";
export { judgeEntry, type EntryFacts } from "./judge-entry.ts";
export { createStationFold, type StationFold, type StationReading } from "./station-fold.ts";
export type { Act, Doing, Draft } from "./draft.ts";
