import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";
import { describe, expect, test } from "vitest";
import references from "#test/references/log.json" with { type: "json" };
import { canonicalText } from "./canonical.ts";

interface TextRow {
  readonly id: string;
  readonly source: string;
  readonly inputs: { readonly json: string };
  readonly expected: { readonly utf8: string; readonly sha256: string };
}

interface NumberRow {
  readonly inputs: readonly string[];
  readonly expected: readonly string[];
}

const textRows = references.filter((row) => !Array.isArray(row.inputs)) as unknown as readonly TextRow[];
const numberRows = references.filter((row) => Array.isArray(row.inputs)) as unknown as readonly NumberRow[];

describe("JSON canonical form", () => {
  test.each(textRows)("$source: $id", ({ inputs, expected }) => {
    const text = canonicalText(JSON.parse(inputs.json));
    expect(text).toBe(expected.utf8);
    expect(bytesToHex(sha256(utf8ToBytes(text)))).toBe(expected.sha256);
  });

  const pairs = numberRows.flatMap((row) => row.inputs.map((bits, at) => [bits, row.expected[at]] as const));

  test.each(pairs)("RFC 8785 appendix B: bits %s give %s", (bits, expected) => {
    const value = new DataView(Uint8Array.from(Buffer.from(bits, "hex")).buffer).getFloat64(0);
    if (expected === "refuse") expect(() => canonicalText(value)).toThrow(/LG-130/);
    else expect(canonicalText(value)).toBe(expected);
  });
});
