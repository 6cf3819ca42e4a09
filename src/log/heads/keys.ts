import { ed25519 } from "@noble/curves/ed25519.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";
import { canonicalText } from "../canonical.ts";
import { isSignature, publicKeyOf } from "./signed-head.ts";

/** A public key a station signs or signed with. The first stands for itself; each later one is vouched for. */
export interface StationKey {
  /** Ed25519 public key, lower-case hex. */
  readonly key: string;
  /** RFC 3339 UTC instant from which it is used. */
  readonly since: string;
  /** The key before it, which signed that this one follows. */
  readonly after?: string | undefined;
  readonly signature?: string | undefined;
}

function textOf({ key, since, after }: StationKey): Uint8Array {
  return utf8ToBytes(`drykeel key 1\n${canonicalText({ after, key, since })}`);
}

/** A station's first key, which nobody vouches for. */
export function firstKey(secret: Uint8Array, since: string): StationKey {
  return { key: publicKeyOf(secret), since };
}

/** A new key, signed for by the one before it. */
export function followingKey(secret: Uint8Array, since: string, before: Uint8Array): StationKey {
  const key = { key: publicKeyOf(secret), since, after: publicKeyOf(before) };
  return { ...key, signature: bytesToHex(ed25519.sign(textOf(key), before)) };
}

/**
 * The keys that somebody who trusts some may trust too: those vouched for, one after another. Older keys are not: what a
 * key that was given up signs today is worth nothing, unless it was trusted before.
 */
export function trustedKeys(trusted: Iterable<string>, keys: readonly StationKey[]): ReadonlySet<string> {
  const known = new Set(trusted);
  for (let size = -1; size !== known.size;) {
    size = known.size;
    for (const one of keys) if (isVouchedFor(one, known)) known.add(one.key);
  }
  return known;
}

function isVouchedFor(key: StationKey, known: ReadonlySet<string>): boolean {
  const { after, signature } = key;
  if (after === undefined || signature === undefined || !known.has(after)) return false;
  return isSignature(signature, textOf(key), after);
}

/** A key short enough to be read aloud and compared: its first 16 hex digits in fours. */
export function keyMark(key: string): string {
  return key.slice(0, 16).replace(/(.{4})(?=.)/g, "$1 ");
}
