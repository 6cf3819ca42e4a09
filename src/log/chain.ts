import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";
import { canonicalText } from "./canonical.ts";
import type { Entry, KeptEntry } from "./entry.ts";

/** Where a chain stands: the last number and hash. Before the first entry: 0 and the place's genesis. */
export interface ChainHead {
  readonly seq: number;
  readonly hash: string;
}

/** Where a place's log stands, as it is told to others. */
export interface PlaceHead {
  readonly place: string;
  /** Of the last line; 0 before the first. */
  readonly number: number;
  /** Chain hash of the last line, lower-case hex. */
  readonly hash: string;
}

export type ChainVerdict =
  | { readonly kind: "sound"; readonly count: number; readonly head: ChainHead }
  | { readonly kind: "broken"; readonly seq: number; readonly because: string };

/**
 * The hash before the first entry of a place. Differs by place, so a chain cannot be passed off as another's.
 *
 * genesis = SHA-256("drykeel log 1" LF place)
 *
 * @returns lower-case hex SHA-256
 */
export function genesisHash(place: string): string {
  return hashText(`drykeel log 1\n${place}`);
}

/**
 * Hash of one entry alone: two entries with the same id and the same hash are the same entry.
 *
 * @returns lower-case hex SHA-256 of the canonical form
 * @source NIST FIPS 180-4, Secure Hash Standard, section 6.2, 2015; IETF RFC 8785, 2020
 */
export function hashEntry(entry: Entry): string {
  return hashText(canonicalText(entry));
}

/**
 * Hash of an entry in its place in the chain, with when it was received.
 *
 * hash = SHA-256(previous hash in hex LF received LF canonical form of the entry)
 *
 * @param previous - hash of the entry before it in its place, or `genesisHash(place)` for the first
 * @param received - RFC 3339 UTC instant at which the store took it, as written beside it
 * @returns lower-case hex SHA-256
 */
export function chainHash(previous: string, entry: Entry, received: string): string {
  return chainText(previous, canonicalText(entry), received);
}

/** {@link chainHash} of an entry whose canonical form is at hand. */
export function chainText(previous: string, text: string, received: string): string {
  return hashText(`${previous}\n${received}\n${text}`);
}

/**
 * How lines were chained before the time of receipt was hashed with them. Such lines stay as they are; no new one is
 * made. The two cannot be taken for each other: a canonical entry begins with a brace, an instant with a digit.
 *
 * hash = SHA-256(previous hash in hex LF canonical form of the entry)
 */
function chainTextBefore(previous: string, text: string): string {
  return hashText(`${previous}\n${text}`);
}

/** True where a line's number and hash are those that follow on a head, by the rule of today or the one before it. */
export function followsOn(head: ChainHead, kept: KeptEntry): boolean {
  return kept.seq === head.seq + 1 && hasItsHash(head.hash, kept);
}

/**
 * True where a line has the hash that follows on another, whatever its number.
 *
 * @param text - canonical form of its entry, where it is at hand
 */
export function hasItsHash(
  previous: string,
  { entry, hash, received }: KeptEntry,
  text = canonicalText(entry),
): boolean {
  return hash === chainText(previous, text, received) || hash === chainTextBefore(previous, text);
}

/** Numbers and chains entries that a store takes into one place, after what it already holds there. */
export function extendChain(head: ChainHead, entries: readonly Entry[], received: string): KeptEntry[] {
  let { seq, hash } = head;
  return entries.map((entry) => {
    seq += 1;
    hash = chainHash(hash, entry, received);
    return { entry, seq, hash, received };
  });
}

/** Where a place's chain stands before anything is in it. */
export function emptyChain(place: string): ChainHead {
  return { seq: 0, hash: genesisHash(place) };
}

/** True for where a place's chain stands before anything is in it, and for no other head. */
export function isGenesis(place: string, { seq, hash }: ChainHead): boolean {
  return seq === 0 && hash === genesisHash(place);
}

/**
 * Checks one place's chain: numbers without gaps, every hash as computed.
 *
 * A sound chain shows that no entry before the last was changed, removed, moved or slipped in since its hash was
 * written down elsewhere. It does not show that the last entries were not cut off, nor that anyone told the truth.
 *
 * @param kept - entries of one place in order of seq
 * @param from - where the first of them follows on; from the beginning when absent
 * @returns sound with the count and new head, or the first number at which it breaks, and why
 */
export function verifyChain(kept: Iterable<KeptEntry>, from?: ChainHead): ChainVerdict {
  let head = from;
  let place: string | undefined;
  let count = 0;
  for (const one of kept) {
    place ??= one.entry.place;
    head ??= emptyChain(place);
    const because = one.entry.place === place ? flawOf(one, head) : `it belongs to place ${one.entry.place}`;
    if (because !== undefined) return { kind: "broken", seq: one.seq, because };
    head = one;
    count += 1;
  }
  return { kind: "sound", count, head: { seq: head?.seq ?? 0, hash: head?.hash ?? "" } };
}

function flawOf(kept: KeptEntry, head: ChainHead): string | undefined {
  if (kept.seq !== head.seq + 1) return `number ${head.seq + 1} was expected, ${kept.seq} was found`;
  if (!hasItsHash(head.hash, kept)) {
    return `entry ${kept.entry.id} does not give the hash kept with it: it, its time of receipt or one before it was changed or removed`;
  }
  return undefined;
}

/** Lower-case hex SHA-256 of the UTF-8 bytes of a text. */
export function hashText(text: string): string {
  return bytesToHex(sha256(utf8ToBytes(text)));
}
