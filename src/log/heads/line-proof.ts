import { bytesToHex, hexToBytes } from "@noble/hashes/utils.js";
import { followsOn } from "../chain.ts";
import type { KeptEntry } from "../entry.ts";
import { leafHash } from "../tree/tree-hash.ts";
import { isIncluded } from "../tree/tree-proof.ts";
import { isSignedByItsKey, type SignedHead } from "./signed-head.ts";

/** A line with what shows that it is in the log a head stands for, without the log. */
export interface ProvedLine extends KeptEntry {
  /** Chain hash of the line before it. */
  readonly previous: string;
  /** From the line's leaf up to the root, hex. */
  readonly path: readonly string[];
}

/** What a leaf of a place's tree is made of: the chain hash of the line, as bytes. */
export function leafOf(hash: string): Uint8Array {
  return hexToBytes(hash);
}

/**
 * Holds a line against a signed head: that it has the hash kept with it, and that this hash is in the head's tree under
 * the line's number.
 *
 * @returns undefined where it is proved; else why not
 */
export function doubtAbout(line: ProvedLine, head: SignedHead): string | undefined {
  const { entry, seq, hash, previous, path } = line;
  if (!isSignedByItsKey(head)) return "the head is not signed by the key it names";
  if (entry.place !== head.place) return `line ${seq} is of ${entry.place}, the head of ${head.place}`;
  if (![hash, previous, ...path].every(isHash)) return `line ${seq} has a hash that is none`;
  if (!followsOn({ seq: seq - 1, hash: previous }, line)) {
    return `line ${seq} does not give the hash kept with it: it or its time of receipt was changed`;
  }
  const tree = { size: head.number, root: hexToBytes(head.root) };
  if (isIncluded(seq - 1, leafHash(leafOf(hash)), path.map(hexToBytes), tree)) return undefined;
  return `line ${seq} is not in the log that the head stands for`;
}

function isHash(text: string): boolean {
  return /^[0-9a-f]{64}$/.test(text);
}

/** Hex of a proof. */
export function hexOf(hashes: readonly Uint8Array[]): string[] {
  return hashes.map((hash) => bytesToHex(hash));
}
