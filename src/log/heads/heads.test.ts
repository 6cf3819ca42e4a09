import { describe, expect, test } from "vitest";
import { headOf, linesOf, seedOf, treeOf } from "../testing/signed.ts";
import { headCode, headLine, readHead, readHeads } from "./head-text.ts";
import { judgeHead } from "./judge-head.ts";
import { firstKey, followingKey, keyMark, trustedKeys } from "./keys.ts";
import { doubtAbout, hexOf, type ProvedLine } from "./line-proof.ts";
import { isSignedByItsKey, publicKeyOf, signHead } from "./signed-head.ts";

const lines = linesOf(9);
const tree = treeOf(lines);
const trusted = new Set([publicKeyOf(seedOf(1))]);
const seen = headOf(lines, 5);

describe("a signed head", () => {
  test("is bound to everything it says", () => {
    expect(isSignedByItsKey(seen)).toBe(true);
    for (const [field, value] of Object.entries({ place: "island", number: 6, at: "2027-01-03T00:00:00.000Z" })) {
      expect(isSignedByItsKey({ ...seen, [field]: value })).toBe(false);
    }
    const other = headOf(lines, 6, seedOf(2));
    for (const field of ["hash", "root", "key", "signature"] as const) {
      expect(isSignedByItsKey({ ...seen, [field]: other[field] })).toBe(false);
    }
    expect(isSignedByItsKey({ ...seen, key: "ff".repeat(32) })).toBe(false);
    expect(isSignedByItsKey({ ...seen, signature: "no" })).toBe(false);
  });
});

describe("judgeHead", () => {
  const shown = headOf(lines);
  const proof = hexOf(tree.consistency(5));

  test("lets a log go on that begins with what was seen", () => {
    expect(judgeHead(seen, shown, proof, trusted)).toEqual({ kind: "goes-on" });
    expect(judgeHead(undefined, shown, [], trusted)).toEqual({ kind: "goes-on" });
    expect(judgeHead(seen, seen, [], trusted)).toEqual({ kind: "goes-on" });
  });

  test("LOG-13 finds a log cut off, also by one line", () => {
    expect(judgeHead(seen, headOf(lines, 4), [], trusted)).toMatchObject({ kind: "cut-off" });
  });

  test("finds a history recomputed as a whole and signed with the station's own key, whatever proof comes with it", () => {
    const other = linesOf(9, (entry) => ({ ...entry, by: entry.id.endsWith("3") ? "somebody-else" : entry.by }));
    const forged = headOf(other);
    for (const offered of [proof, hexOf(treeOf(other).consistency(5)), [], ["zz"]]) {
      expect(judgeHead(seen, forged, offered, trusted)).toMatchObject({ kind: "another-history" });
    }
    expect(judgeHead(seen, headOf(other, 5), [], trusted)).toMatchObject({ kind: "another-history" });
    expect(judgeHead(seen, { ...shown, place: "island" }, proof, trusted)).toMatchObject({ kind: "not-signed" });
  });

  test("finds the same tree under another chain hash", () => {
    const { hash: _hash, ...rest } = seen;
    const twisted = signHead({ ...rest, hash: "0".repeat(64) }, seen.at, seedOf(1));
    expect(judgeHead(seen, twisted, [], trusted)).toMatchObject({ kind: "another-history" });
  });

  test("does not take what is signed by nobody known", () => {
    expect(judgeHead(seen, headOf(lines, 9, seedOf(2)), proof, trusted)).toMatchObject({ kind: "not-signed" });
    expect(judgeHead(undefined, { ...shown, number: 8 }, [], trusted)).toMatchObject({ kind: "not-signed" });
  });
});

describe("keys", () => {
  const first = firstKey(seedOf(1), "2027-01-01T00:00:00.000Z");
  const second = followingKey(seedOf(2), "2027-02-01T00:00:00.000Z", seedOf(1));
  const third = followingKey(seedOf(3), "2027-03-01T00:00:00.000Z", seedOf(2));

  test("are trusted where those before them vouch for them, one after another and in any order", () => {
    expect(trustedKeys([first.key], [third, second, first])).toEqual(new Set([first.key, second.key, third.key]));
  });

  test("are not trusted backwards, nor where the voucher is changed or is no known key", () => {
    expect(trustedKeys([third.key], [first, second, third])).toEqual(new Set([third.key]));
    const forged = { ...second, key: publicKeyOf(seedOf(9)) };
    expect(trustedKeys([first.key], [forged, { ...second, since: "2026-01-01T00:00:00.000Z" }]).size).toBe(1);
    const strange = followingKey(seedOf(2), "2027-02-01T00:00:00.000Z", seedOf(8));
    expect(trustedKeys([first.key], [strange, { ...strange, after: first.key }]).size).toBe(1);
  });

  test("have a mark to compare aloud", () => {
    expect(keyMark("8a88e3dd7409f195fd52db2d3cba5d72")).toBe("8a88 e3dd 7409 f195");
  });
});

describe("a head in writing", () => {
  const later = headOf(lines, 7);

  test("is read back from lines, from codes and from both", () => {
    expect(readHeads(`# kept by the harbour master\n${headLine(seen)}\n${headCode(later)}\n`)).toEqual([seen, later]);
  });

  test("is read from a code broken over lines, as paper breaks it", () => {
    const broken = headCode(seen).replaceAll(/(.{40})/g, "$1\n  ");
    expect(readHeads(`${broken}\n${headCode(later)}`)).toEqual([seen, later]);
    expect(headCode(seen).length).toBeLessThan(300);
  });

  test.each([
    ["nothing", "", "LG-170"],
    ["remarks only", "# nothing\n", "LG-170"],
    ["another text", "a letter", "LG-171"],
    ["a code cut short", headCode(seen).slice(0, -3), "LG-171"],
    ["a line cut short", headLine(seen).slice(0, -3), "LG-171"],
    ["a code with one letter changed", headCode(seen).replace("/5/", "/6/"), "LG-171"],
    ["a code with more behind it", `${headCode(seen)}/more`, "LG-171"],
    ["a line with another field", headLine(seen).replace("{", '{"more":1,'), "LG-171"],
    ["a good one and half of one", `${headLine(seen)}\n${headLine(later).slice(0, 90)}`, "LG-171"],
  ])("%s is refused", (_, text, code) => {
    expect(() => readHeads(text)).toThrow(new RegExp(code));
  });

  test("one that nobody signed is refused", () => {
    expect(() => readHead({ ...seen, number: 4 })).toThrow(/LG-171/);
  });
});

describe("doubtAbout", () => {
  const head = headOf(lines);
  const proved = (number: number): ProvedLine => ({
    ...lines[number - 1]!,
    previous: lines[number - 2]!.hash,
    path: hexOf(tree.inclusion(number - 1)),
  });

  test("has none about lines of the log", () => {
    for (let number = 2; number <= 9; number++) expect(doubtAbout(proved(number), head)).toBeUndefined();
  });

  test("tells a changed entry, time of receipt, number, place, path or head", () => {
    const line = proved(4);
    const other = { ...line.entry, by: "somebody-else" };
    expect(doubtAbout({ ...line, entry: other }, head)).toMatch(/was changed/);
    expect(doubtAbout({ ...line, received: "2027-01-01T00:02:00Z" }, head)).toMatch(/was changed/);
    expect(doubtAbout({ ...line, seq: 5 }, head)).toMatch(/not in the log/);
    expect(doubtAbout({ ...line, path: line.path.slice(1) }, head)).toMatch(/not in the log/);
    expect(doubtAbout({ ...line, path: ["x", ...line.path.slice(1)] }, head)).toMatch(/hash that is none/);
    expect(doubtAbout(line, headOf(lines, 3))).toMatch(/not in the log/);
    expect(doubtAbout(line, { ...head, number: 8 })).toMatch(/not signed/);
    const forged = linesOf(9, (entry) => (entry.id === line.entry.id ? other : entry));
    expect(doubtAbout({ ...forged[3]!, previous: forged[2]!.hash, path: line.path }, head)).toMatch(/not in the log/);
  });
});
