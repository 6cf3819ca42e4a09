import { createHash } from "node:crypto";
import { describe, expect, test } from "vitest";
import { emptyChain, extendChain, hashEntry, verifyChain } from "./chain.ts";
import { checkBytes, hashBytes, planIntake, planRetaking } from "./intake.ts";
import { makeEntry } from "./testing/entries.ts";

const received = "2027-01-01T00:01:00Z";
const nothing = { heads: new Map(), hashes: new Map() };

describe("planIntake", () => {
  test("numbers and chains as extendChain does, each place by itself", () => {
    const entries = [makeEntry(1), makeEntry(2, { place: "island" }), makeEntry(3)];
    const plan = planIntake(entries, nothing, received);
    const harbour = extendChain(emptyChain("harbour"), [makeEntry(1), makeEntry(3)], received);
    const island = extendChain(emptyChain("island"), [makeEntry(2, { place: "island" })], received);
    expect(plan.accepted).toEqual([harbour[0], island[0], harbour[1]]);
    expect(plan.heads.get("harbour")).toEqual({ seq: 2, hash: harbour[1]?.hash });
    expect(plan.forms.map((form) => form.hash)).toEqual(entries.map(hashEntry));
  });

  test("goes on from what is held", () => {
    const held = extendChain(emptyChain("harbour"), [makeEntry(1)], received);
    const heads = new Map(held.map(({ seq, hash }) => ["harbour", { seq, hash }]));
    const hashes = new Map([[makeEntry(1).id, hashEntry(makeEntry(1))]]);
    const plan = planIntake(
      [makeEntry(1), makeEntry(2), makeEntry(1, { by: "person-2" })],
      { heads, hashes },
      received,
    );
    expect(plan.repeated).toEqual([makeEntry(1).id]);
    expect(plan.clashing).toEqual([makeEntry(1).id]);
    expect(verifyChain([...held, ...plan.accepted])).toMatchObject({ kind: "sound", count: 2 });
  });
});

describe("planRetaking", () => {
  const lines = extendChain(emptyChain("harbour"), [makeEntry(1), makeEntry(2), makeEntry(3)], received);

  test("puts a log back as it was: number, hash and time of receipt", () => {
    expect(planRetaking(lines, nothing).accepted).toEqual(lines);
  });

  test("after other lines numbers and chains anew, and keeps the time of receipt", () => {
    const other = extendChain(emptyChain("harbour"), [makeEntry(9)], "2027-02-01T00:00:00Z");
    const head = { seq: 1, hash: other[0]?.hash ?? "" };
    const { accepted } = planRetaking(lines, { heads: new Map([["harbour", head]]), hashes: new Map() });
    expect(accepted.map((one) => one.seq)).toEqual([2, 3, 4]);
    expect(accepted.every((one) => one.received === received)).toBe(true);
    expect(verifyChain([...other, ...accepted])).toMatchObject({ kind: "sound", count: 4 });
  });

  test("does not keep a hash that is not the line's", () => {
    const forged = lines.map((one) => ({ ...one, received: "2026-01-01T00:00:00Z" }));
    const { accepted } = planRetaking(forged, nothing);
    expect(accepted[0]?.hash).not.toBe(lines[0]?.hash);
    expect(verifyChain(accepted)).toMatchObject({ kind: "sound", count: 3 });
  });
});

describe("photos", () => {
  const bytes = Uint8Array.from({ length: 5000 }, (_, at) => at % 256);

  test("are named by the SHA-256 that any other tool computes", () => {
    expect(hashBytes(bytes)).toBe(createHash("sha256").update(bytes).digest("hex"));
    expect(() => checkBytes(hashBytes(bytes), bytes)).not.toThrow();
  });

  test("cut short are refused with how many bytes arrived", () => {
    expect(() => checkBytes(hashBytes(bytes), bytes.subarray(0, 4999))).toThrow(/LG-150 photo: got 4999 bytes/);
  });
});
