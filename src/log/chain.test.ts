import { createHash } from "node:crypto";
import { describe, expect, test } from "vitest";
import { chainHash, emptyChain, extendChain, genesisHash, hashEntry, verifyChain } from "./chain.ts";
import { canonicalText } from "./canonical.ts";
import { makeEntry } from "./testing/entries.ts";

const received = "2027-01-01T00:01:00Z";
const kept = extendChain(
  emptyChain("harbour"),
  [1, 2, 3, 4].map((number) => makeEntry(number)),
  received,
);

function sha256(text: string): string {
  return createHash("sha256").update(text, "utf8").digest("hex");
}

describe("hashes", () => {
  const entry = makeEntry(1, { body: { note: "Dichtung spröde – ersetzt 🔧" } });

  test("LOG-1 are the SHA-256 that any other tool computes from the canonical text", () => {
    expect(genesisHash("harbour")).toBe(sha256("drykeel log 1\nharbour"));
    expect(hashEntry(entry)).toBe(sha256(canonicalText(entry)));
    const genesis = genesisHash("harbour");
    expect(chainHash(genesis, entry, received)).toBe(sha256(`${genesis}\n${received}\n${canonicalText(entry)}`));
  });

  test("LOG-2 do not depend on the order in which fields were written", () => {
    const turned = Object.fromEntries(Object.entries(entry).reverse()) as unknown as typeof entry;
    expect(hashEntry(turned)).toBe(hashEntry(entry));
  });
});

describe("verifyChain", () => {
  test("finds an untouched chain sound, whole or page by page", () => {
    const whole = verifyChain(kept);
    expect(whole).toEqual({ kind: "sound", count: 4, head: { seq: 4, hash: kept[3]?.hash } });
    const first = verifyChain(kept.slice(0, 2));
    expect(first.kind === "sound" && verifyChain(kept.slice(2), first.head)).toMatchObject({ kind: "sound", count: 2 });
  });

  test("finds nothing wrong with an empty place", () => {
    expect(verifyChain([], emptyChain("harbour"))).toEqual({ kind: "sound", count: 0, head: emptyChain("harbour") });
  });

  test("LOG-9 finds a changed entry at its number", () => {
    const changed = kept.map((one) => (one.seq === 3 ? { ...one, entry: { ...one.entry, by: "someone-else" } } : one));
    expect(verifyChain(changed)).toMatchObject({ kind: "broken", seq: 3, because: expect.stringContaining("changed") });
  });

  test("finds a changed time of receipt at its number", () => {
    const changed = kept.map((one) => (one.seq === 4 ? { ...one, received: "2027-01-01T00:00:59Z" } : one));
    expect(verifyChain(changed)).toMatchObject({ kind: "broken", seq: 4, because: expect.stringContaining("receipt") });
  });

  test("finds an entry that was changed together with its own hash at the next number", () => {
    const entry = { ...makeEntry(3), by: "someone-else" };
    const hash = chainHash(kept[1]?.hash ?? "", entry, received);
    const changed = kept.map((one) => (one.seq === 3 ? { ...one, entry, hash } : one));
    expect(verifyChain(changed)).toMatchObject({ kind: "broken", seq: 4 });
  });

  test("LOG-9 finds a removed, a moved and a foreign entry", () => {
    const [one, two, three, four] = kept as [(typeof kept)[0], (typeof kept)[0], (typeof kept)[0], (typeof kept)[0]];
    expect(verifyChain([one, three, four])).toMatchObject({
      kind: "broken",
      seq: 3,
      because: expect.stringContaining("2"),
    });
    expect(verifyChain([one, three, two, four])).toMatchObject({ kind: "broken", seq: 3 });
    expect(verifyChain([two, three, four])).toMatchObject({ kind: "broken", seq: 2 });
    const foreign = { ...two, entry: { ...two.entry, place: "island" } };
    expect(verifyChain([one, foreign])).toMatchObject({
      kind: "broken",
      seq: 2,
      because: expect.stringContaining("island"),
    });
  });
});
