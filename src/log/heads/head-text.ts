import { InputError, printGiven } from "#base";
import { bytesToHex, hexToBytes } from "@noble/hashes/utils.js";
import { z } from "zod";
import { canonicalText } from "../canonical.ts";
import { parseInstant } from "../instant.ts";
import { isSignedByItsKey, type SignedHead } from "./signed-head.ts";

const hex = (bytes: number) => z.string().regex(new RegExp(`^[0-9a-f]{${bytes * 2}}$`));

/** The fields of a head. */
export const logHeadShape = {
  place: z.string().min(1).max(64),
  number: z
    .number()
    .int()
    .min(1)
    .max(2 ** 31 - 1),
  hash: hex(32),
  root: hex(32),
};

/** The fields that say who signed, and when. */
export const signedAtShape = {
  at: z
    .string()
    .max(40)
    .refine((text) => parseInstant(text) !== undefined),
  key: hex(32),
  signature: hex(64),
};

/** A signed head as a file or a station gives it. */
export const signedHeadShape = z.strictObject({ ...logHeadShape, ...signedAtShape });

const MARK = "drykeel-head/1/";
const REMEDY = "Take the file or the code anew from where it was written; a witness that was changed proves nothing.";

/** A signed head as one line of JSON. */
export function headLine(head: SignedHead): string {
  return canonicalText(head);
}

/**
 * A signed head as a code for paper: one text without blanks, short enough for a QR code. White space in it does not
 * count when it is read.
 *
 * drykeel-head/1/PLACE/NUMBER/AT/HASH/ROOT/KEY/SIGNATURE, the last four in base64url
 */
export function headCode({ place, number, at, hash, root, key, signature }: SignedHead): string {
  return `${MARK}${place}/${number}/${at}/${[hash, root, key, signature].map(toBase64Url).join("/")}`;
}

/**
 * Reads the signed heads in a witness: lines of JSON, codes as printed on paper, or both. Lines that begin with # are
 * for people.
 *
 * @returns heads in the order written, at least one, each signed by the key it names
 * @throws InputError LG-170 where there is none, LG-171 for one that is cut short or changed
 */
export function readHeads(text: string): SignedHead[] {
  const lines = text.split(/\r?\n/).filter((line) => line.trim() !== "" && !line.trimStart().startsWith("#"));
  const json = lines.filter((line) => line.trimStart().startsWith("{"));
  const codes = lines
    .filter((line) => !json.includes(line))
    .join("")
    .replaceAll(/\s/g, "");
  const heads = [...json.map(readLine), ...readCodes(codes)];
  if (heads.length > 0) return heads;
  const allowed = `heads written by drykeel witness, or codes that begin with ${MARK}`;
  throw new InputError([{ code: "LG-170", field: "witness", got: printGiven(text), allowed, remedy: REMEDY }]);
}

function readLine(line: string): SignedHead {
  try {
    return readHead(JSON.parse(line), line);
  } catch (cause) {
    throw cause instanceof SyntaxError ? unreadable(line) : cause;
  }
}

function readCodes(text: string): SignedHead[] {
  if (text === "") return [];
  const [before, ...codes] = text.split(MARK);
  if (before !== "") throw unreadable(before);
  return codes.map((code) => {
    const [place, number, at, hash, root, key, signature, ...rest] = code.split("/");
    if (rest.length > 0) throw unreadable(MARK + code);
    const [hashHex, rootHex, keyHex, signatureHex] = [hash, root, key, signature].map(fromBase64Url);
    const head = {
      place,
      number: Number(number),
      at,
      hash: hashHex,
      root: rootHex,
      key: keyHex,
      signature: signatureHex,
    };
    return readHead(head, MARK + code);
  });
}

/**
 * Reads one signed head.
 *
 * @param shown - how it was written, for the message
 * @throws InputError LG-171 where it is cut short or changed
 */
export function readHead(given: unknown, shown: unknown = given): SignedHead {
  const read = signedHeadShape.safeParse(given);
  if (!read.success || !isSignedByItsKey(read.data)) throw unreadable(shown);
  return read.data;
}

function unreadable(got: unknown): InputError {
  const allowed = "a whole head, signed by the key it names";
  return new InputError([{ code: "LG-171", field: "witness", got: printGiven(got), allowed, remedy: REMEDY }]);
}

function toBase64Url(hexText: string): string {
  const text = btoa(String.fromCharCode(...hexToBytes(hexText)));
  return text.replaceAll("+", "-").replaceAll("/", "_").replaceAll("=", "");
}

function fromBase64Url(text: string | undefined): string {
  try {
    const bytes = atob((text ?? "").replaceAll("-", "+").replaceAll("_", "/"));
    return bytesToHex(Uint8Array.from(bytes, (char) => char.charCodeAt(0)));
  } catch {
    return "";
  }
}
