import { ed25519 } from "@noble/curves/ed25519.js";
import { bytesToHex, hexToBytes, utf8ToBytes } from "@noble/hashes/utils.js";
import { canonicalText } from "../canonical.ts";
import type { PlaceHead } from "../chain.ts";

/** Where a place's log stands, with what proofs lead to. */
export interface LogHead extends PlaceHead {
  /** Root of the place's Merkle tree over the chain hashes of all lines, lower-case hex. */
  readonly root: string;
}

/** A head as a station showed it to somebody, who can hold the station to it. */
export interface SignedHead extends LogHead {
  /** RFC 3339 UTC instant of signing. */
  readonly at: string;
  /** Ed25519 public key, lower-case hex. */
  readonly key: string;
  /** Ed25519 signature, lower-case hex. */
  readonly signature: string;
}

/** What is signed: a first line that no other signed text has, then the head in canonical form. */
function textOf({ place, number, hash, root, at }: LogHead & { readonly at: string }): Uint8Array {
  return utf8ToBytes(`drykeel head 1\n${canonicalText({ at, hash, number, place, root })}`);
}

/**
 * Signs a head.
 *
 * @param at - RFC 3339 UTC instant of signing
 * @param secret - Ed25519 seed, 32 bytes
 * @source IETF RFC 8032, Edwards-Curve Digital Signature Algorithm, section 5.1, 2017
 */
export function signHead(head: LogHead, at: string, secret: Uint8Array): SignedHead {
  const { place, number, hash, root } = head;
  const signature = bytesToHex(ed25519.sign(textOf({ ...head, at }), secret));
  return { place, number, hash, root, at, key: publicKeyOf(secret), signature };
}

/** Whether the key named in a head signed exactly this head. Whose key it is, is another question. */
export function isSignedByItsKey(head: SignedHead): boolean {
  return isSignature(head.signature, textOf(head), head.key);
}

/** Ed25519 public key of a secret, lower-case hex. */
export function publicKeyOf(secret: Uint8Array): string {
  return bytesToHex(ed25519.getPublicKey(secret));
}

/** Whether a signature in hex is good; false for whatever is no signature or key at all. */
export function isSignature(signature: string, text: Uint8Array, key: string): boolean {
  if (!/^[0-9a-f]{128}$/.test(signature) || !/^[0-9a-f]{64}$/.test(key)) return false;
  try {
    return ed25519.verify(hexToBytes(signature), text, hexToBytes(key));
  } catch {
    return false; // a point that is not on the curve: no key, so no signature
  }
}
