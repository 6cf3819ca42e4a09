import { expect, it } from "vitest";
import { SAMPLE } from "./sample.ts";
import { BandShelf } from "./band-shelf.ts";
import { sampleKit } from "../pages/board/sample-kits.ts";

const patterns = new Map([["trial-pump@1", SAMPLE]]);
const view = { policy: {}, patterns };
const range = { from: "2026-11-25", to: "2027-11-24" };

it("works a kit's bands out once while kit, day, policy and patterns are the same", () => {
  const shelf = new BandShelf();
  const kit = sampleKit("1");
  const first = shelf.bandsOf(kit, view, range);
  expect(first[0]?.from).toBe(range.from);
  expect(shelf.bandsOf(kit, view, range)).toBe(first);
  expect(shelf.bandsOf({ ...kit }, view, range)).not.toBe(first);
});

it("works them out anew on another day, under another policy or other patterns", () => {
  const shelf = new BandShelf();
  const kit = sampleKit("1");
  const first = shelf.bandsOf(kit, view, range);
  expect(shelf.bandsOf(kit, { ...view, policy: { muster: { days: 7 } } }, range)).not.toBe(first);
  expect(shelf.bandsOf(kit, { ...view, patterns: new Map(patterns) }, range)).not.toBe(first);
  const next = shelf.bandsOf(kit, view, { from: "2026-11-26", to: "2027-11-25" });
  expect(next[0]?.from).toBe("2026-11-26");
});

it("says nothing of a kit whose pattern is not here", () => {
  expect(new BandShelf().bandsOf(sampleKit("1", { pattern: "other@1" }), view, range)).toEqual([]);
});
