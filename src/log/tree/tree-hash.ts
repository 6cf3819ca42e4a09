import { sha256 } from "@noble/hashes/sha2.js";
import { concatBytes } from "@noble/hashes/utils.js";

/** Bytes of a SHA-256. */
export const HASH_BYTES = 32;

const LEAF = Uint8Array.of(0);
const NODE = Uint8Array.of(1);

/**
 * Hash of one leaf of a tree.
 *
 * MTH({d[0]}) = HASH(0x00 || d[0])
 *
 * @source IETF RFC 9162, Certificate Transparency Version 2.0, section 2.1.1, 2021
 */
export function leafHash(data: Uint8Array): Uint8Array {
  return sha256(concatBytes(LEAF, data));
}

/**
 * Hash of what stands above two parts of a tree.
 *
 * MTH(D_n) = HASH(0x01 || MTH(D[0:k]) || MTH(D[k:n]))
 *
 * @source IETF RFC 9162, Certificate Transparency Version 2.0, section 2.1.1, 2021
 */
export function nodeHash(left: Uint8Array, right: Uint8Array): Uint8Array {
  return sha256(concatBytes(NODE, left, right));
}

/**
 * Hash of a tree without leaves.
 *
 * MTH({}) = HASH()
 *
 * @source IETF RFC 9162, Certificate Transparency Version 2.0, section 2.1.1, 2021
 */
export function emptyRoot(): Uint8Array {
  return sha256(new Uint8Array());
}

/** The largest power of two below a number of leaves above one: where the tree divides. */
export function splitOf(leaves: number): number {
  return 2 ** (31 - Math.clz32(leaves - 1));
}

/** Whether two pieces of bytes are the same. */
export function sameBytes(one: Uint8Array, other: Uint8Array): boolean {
  return one.length === other.length && one.every((byte, at) => byte === other[at]);
}
