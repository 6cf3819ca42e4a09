import type { StationSnapshot } from "./snapshot.ts";

/**
 * `GET /api/log/snapshot`: what the station's lines come to, for a device that has none of them yet. `none`: not now,
 * since the server is still reading, or not at all, since the log is too long for it; the lines can be pulled as ever.
 */
export type SnapshotReply =
  | { readonly kind: "snapshot"; readonly lines: number; readonly snapshot: StationSnapshot }
  | { readonly kind: "none"; readonly because: "reading" | "too-long" };
