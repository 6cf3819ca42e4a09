import type { PlaceChain } from "#log";
import { packValue, unpackValue, type PackedValue } from "./packing.ts";
import type { StationSnapshot } from "./snapshot.ts";

/** A snapshot as it goes over the wire: what it is of can be read before the rest is unpacked. */
export interface SentSnapshot {
  readonly form: number;
  /** "id@version" of the patterns it was folded with. */
  readonly patterns: readonly string[];
  readonly heads: readonly PlaceChain[];
  readonly packed: PackedValue;
}

/**
 * `GET /api/log/snapshot`: what the station's lines come to, for a device that has none of them yet. `none`: not now,
 * since the server is still reading, or not at all, since the log is too long for it; the lines can be pulled as ever.
 */
export type SnapshotReply =
  | { readonly kind: "snapshot"; readonly lines: number; readonly snapshot: SentSnapshot }
  | { readonly kind: "none"; readonly because: "reading" | "too-long" };

/** A snapshot made ready for the wire. */
export function sendSnapshot({ form, patterns, heads, ...rest }: StationSnapshot): SentSnapshot {
  return { form, patterns, heads, packed: packValue(rest) };
}

/**
 * A snapshot as it was sent.
 *
 * @param sent - of this version's form
 */
export function readSnapshot({ packed, ...of }: SentSnapshot): StationSnapshot {
  return { ...of, ...(unpackValue(packed) as Omit<StationSnapshot, "form" | "patterns" | "heads">) };
}
