import type { Entry } from "#log";
import { describe, expect, it } from "vitest";
import { judgeBody } from "../kinds/kind-schemas.ts";
import { linePhotosOf, photosAt } from "./line-photos.ts";

const photo = { hash: "ab".repeat(32), mime: "image/jpeg", bytes: 900, width: 16, height: 9 } as const;

function pictured(id: string, body: Readonly<Record<string, unknown>>): Entry {
  const made = { place: "station", by: "mara", device: "tablet", at: "2026-06-01T09:00:00Z", after: [] };
  return { id, subject: "pattern:brinnet-450", kind: "line-pictured", ...made, body: { photos: [photo], ...body } };
}

const LINES = [
  pictured("1", { step: "dry-plugs", shows: "wrong" }),
  pictured("2", { step: "dry-plugs", check: "drain-plugs-count", shows: "right", note: "Washers on." }),
  pictured("3", { step: "cut-seal", shows: "right" }),
];

describe("a keeper's own photos", () => {
  it("READY-35 stand at their line and check, what is right first, with who took them", () => {
    const own = linePhotosOf(LINES);
    const asked = { step: "dry-plugs", check: "drain-plugs-count" };
    expect(photosAt(own, asked).map(({ shows, entry }) => `${shows} ${entry}`)).toEqual(["right 2", "wrong 1"]);
    expect(photosAt(own, asked)[0]).toMatchObject({ by: "mara", note: "Washers on." });
    expect(photosAt(own, { step: "dry-plugs" }).map(({ entry }) => entry)).toEqual(["1"]);
    expect(photosAt(own, { step: "vent" })).toEqual([]);
  });

  it("are no other lines about the pattern", () => {
    expect(linePhotosOf([{ ...LINES[0]!, kind: "step-reported" }])).toEqual([]);
  });

  it.each([
    ["no photo", { step: "a", shows: "right", photos: [] }],
    ["five photos", { step: "a", shows: "right", photos: Array.from({ length: 5 }, () => photo) }],
    ["neither right nor wrong", { step: "a", shows: "fine", photos: [photo] }],
    ["no line", { shows: "right", photos: [photo] }],
  ])("are refused with %s", (_, body) => {
    expect(judgeBody({ kind: "line-pictured", body })).not.toEqual([]);
    expect(judgeBody({ kind: "line-pictured", body: { step: "a", shows: "right", photos: [photo] } })).toEqual([]);
  });
});
