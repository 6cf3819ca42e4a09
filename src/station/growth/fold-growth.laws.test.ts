import { createHash } from "node:crypto";
import { describe, expect, test } from "vitest";
import { foldInPieces } from "../sample-station.ts";
import type { StationFold } from "../station-fold.ts";
import { randomLines } from "./random-lines.ts";

/** Fields that a later version adds to what there was. */
function withoutLater(field: string, value: unknown): unknown {
  return field === "meanwhile" ? undefined : value;
}

function hashOf(fold: StationFold): string {
  const {
    patterns: _,
    parts: _parts,
    qualifications: _set,
    practised: _done,
    visits: _visits,
    reports,
    ...reading
  } = fold.read();
  return createHash("sha256")
    .update(JSON.stringify({ ...reading, reports: [...reports] }, withoutLater))
    .digest("hex");
}

/** Of the readings that the fold gave before it was made to look up instead of search; they never change. */
const GOLDEN: readonly (readonly [seed: number, hash: string])[] = [
  [1, "5812f4aca7412a343445e43281e9c13c69c70cd397be7f65ea055334d093eea6"],
  [2, "950193a94ee1c66134a8d9f7e8cc33a6e470774cc13931c246c8579032d0e07c"],
  [3, "c1d3022f30f2c46dd28048c566158645acc6ef12eefc8c3cc3d9a686d5466b7d"],
  [5, "0c1ee5c2415feb2c4ae35c1d9e15b2c92ae98e67ea45a6c95891f1d2c5745a2b"],
  [8, "386b8d16cb585280a1721e1407f7881e163b2f797e23e1a1439b8a3dc55961a7"],
  [13, "a3af17642e8320aa6f437c8bf30d9dc15f43150951bf336136a0b1a481aa9a9c"],
];

describe("what is folded", () => {
  const subjects = ["kit:a", "kit:b", "casualty:c", "pattern:small"];

  test.each(GOLDEN)("seed %i reads byte for byte as it always did, at once and in pieces of any size", (seed, hash) => {
    const lines = randomLines({ seed, lines: 60 + seed * 20, subjects });
    for (const size of [lines.length, 37, 1]) {
      expect(hashOf(foldInPieces(lines, size)), `in pieces of ${size}`).toBe(hash);
    }
  });
});
