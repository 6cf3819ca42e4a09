import { expect, it } from "vitest";
import { SAMPLE } from "../turnaround/sample.ts";
import { OutlookShelf } from "./outlook-shelf.ts";
import { sampleKit } from "./sample-kits.ts";

const patterns = new Map([["trial-pump@1", SAMPLE]]);
const view = { policy: {}, patterns };

it("reads a kit once while kit, policy and patterns are the same", () => {
  const shelf = new OutlookShelf();
  const kit = sampleKit("1");
  const first = shelf.outlookOf(kit, view);
  expect(shelf.outlookOf(kit, view)).toBe(first);
  expect(shelf.outlookOf({ ...kit }, view)).not.toBe(first);
});

it("reads it anew under another policy or other patterns", () => {
  const shelf = new OutlookShelf();
  const kit = sampleKit("1");
  const first = shelf.outlookOf(kit, view);
  expect(shelf.outlookOf(kit, { ...view, policy: { muster: { days: 7 } } })).not.toBe(first);
  expect(shelf.outlookOf(kit, { ...view, patterns: new Map(patterns) })).not.toBe(first);
});

it("says nothing of a kit whose pattern is not here", () => {
  expect(new OutlookShelf().outlookOf(sampleKit("1", { pattern: "other@1" }), view)).toBeUndefined();
});
