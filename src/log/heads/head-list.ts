import { parsedJson } from "#base";
import { ed25519 } from "@noble/curves/ed25519.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";
import { z } from "zod";
import { canonicalText } from "../canonical.ts";
import { logHeadShape, signedAtShape } from "./head-text.ts";
import { isSignature, publicKeyOf, type LogHead } from "./signed-head.ts";

/**
 * The heads of all places at one instant, signed together: a place that is removed with everything that belongs to it is
 * still named here, and so is a head that is removed.
 */
export interface SignedHeadList {
  /** RFC 3339 UTC instant of signing. */
  readonly at: string;
  /** Of every place that has lines, by place. */
  readonly heads: readonly LogHead[];
  /** Ed25519 public key, lower-case hex. */
  readonly key: string;
  /** Ed25519 signature, lower-case hex. */
  readonly signature: string;
}

const listShape = z.strictObject({ ...signedAtShape, heads: z.array(z.strictObject(logHeadShape)) });

/** What is signed: a first line that no other signed text has, then the list in canonical form. */
function textOf({ at, heads }: Pick<SignedHeadList, "at" | "heads">): Uint8Array {
  return utf8ToBytes(`drykeel head list 1\n${canonicalText({ at, heads })}`);
}

/**
 * Signs the heads of all places together.
 *
 * @param at - RFC 3339 UTC instant of signing
 * @param secret - Ed25519 seed, 32 bytes
 * @source IETF RFC 8032, Edwards-Curve Digital Signature Algorithm, section 5.1, 2017
 */
export function signHeadList(heads: readonly LogHead[], at: string, secret: Uint8Array): SignedHeadList {
  const bare = heads.map(({ place, number, hash, root }) => ({ place, number, hash, root }));
  const signature = bytesToHex(ed25519.sign(textOf({ at, heads: bare }), secret));
  return { at, heads: bare, key: publicKeyOf(secret), signature };
}

/** @returns the list in a text of JSON; undefined for what is none, or was not signed so by the key it names */
export function readHeadList(text: string): SignedHeadList | undefined {
  const { data } = listShape.safeParse(parsedJson(text));
  return data !== undefined && isSignature(data.signature, textOf(data), data.key) ? data : undefined;
}

/** Whether a list has a place that another has not, or stands further with one: it must not be put behind it. */
export function isAhead(list: SignedHeadList, other: SignedHeadList): boolean {
  const numbers = new Map(other.heads.map(({ place, number }) => [place, number]));
  return list.heads.some(({ place, number }) => number > (numbers.get(place) ?? 0));
}
