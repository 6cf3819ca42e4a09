import { linePhotosOf, type Bodies } from "#readiness";
import { describe, expect, it } from "vitest";
import { strikeEntry } from "../acts/station-acts.ts";
import { Desk, refusalsOf, SMALL_PATTERN } from "../sample-station.ts";
import { pictureLine } from "./line-photo-acts.ts";

const [FIRST] = SMALL_PATTERN.stages.flatMap(({ steps }) => steps);
const STEP = FIRST!.id;
const SUBJECT = `pattern:${SMALL_PATTERN.id}`;

function photosFrom(first: number, count: number): Bodies["line-pictured"]["photos"] {
  return Array.from({ length: count }, (_, at) => ({
    hash: String(first + at).padStart(64, "0"),
    mime: "image/jpeg",
    bytes: 900,
    width: 16,
    height: 9,
  }));
}

const body = (first: number, count = 1): Bodies["line-pictured"] => ({
  step: STEP,
  shows: "right",
  photos: photosFrom(first, count),
});

describe("a keeper's own photos of a line", () => {
  it("RULE-29 are put to a line the pattern has, at most four of a side, by keepers, and struck as other lines are", () => {
    const desk = new Desk();
    const own = () => linePhotosOf(desk.fold.entriesOf(SUBJECT));
    desk.do(pictureLine(desk.as("ann"), SMALL_PATTERN, body(1, 3), own()));
    expect(own()).toMatchObject([{ step: STEP, shows: "right", by: "ann" }]);
    expect(refusalsOf(pictureLine(desk.as("ann"), SMALL_PATTERN, body(4, 2), own()))).toEqual(["SN-451"]);
    desk.do(pictureLine(desk.as("ann"), SMALL_PATTERN, { ...body(4, 2), shows: "wrong" }, own()));
    expect(refusalsOf(pictureLine(desk.as("ann"), SMALL_PATTERN, { ...body(9), step: "fly" }, own()))).toEqual([
      "SN-450",
    ]);
    const strange = { ...body(9), check: "fly" };
    expect(refusalsOf(pictureLine(desk.as("ann"), SMALL_PATTERN, strange, own()))).toEqual(["SN-450"]);
    expect(refusalsOf(pictureLine(desk.as("ben"), SMALL_PATTERN, body(9), own()))).toEqual(["SN-103"]);
    const [line] = desk.fold.entriesOf(SUBJECT);
    desk.do(strikeEntry(desk.as("ann"), line!, "Out of focus."));
    expect(own().map(({ shows }) => shows)).toEqual(["wrong"]);
  });
});
