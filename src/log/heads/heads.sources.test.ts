import { ed25519 } from "@noble/curves/ed25519.js";
import { bytesToHex, hexToBytes } from "@noble/hashes/utils.js";
import { describe, expect, test } from "vitest";
import references from "#test/references/log-tree.json" with { type: "json" };
import { isSignature, publicKeyOf } from "./signed-head.ts";

interface Row {
  readonly id: string;
  readonly source: string;
  readonly inputs: { readonly seed: string; readonly message_hex: string };
  readonly expected: { readonly public: string; readonly signature: string };
}

const rows = references.filter(({ id }) => id.startsWith("log-ed25519")) as unknown as readonly Row[];

describe("signatures", () => {
  test.each(rows)("$source: $id", ({ inputs, expected }) => {
    const [seed, message] = [hexToBytes(inputs.seed), hexToBytes(inputs.message_hex)];
    expect(publicKeyOf(seed)).toBe(expected.public);
    expect(bytesToHex(ed25519.sign(message, seed))).toBe(expected.signature);
    expect(isSignature(expected.signature, message, expected.public)).toBe(true);
    expect(isSignature(expected.signature, Uint8Array.of(...message, 1), expected.public)).toBe(false);
  });
});
