import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { errorCatalogue, renderCatalogue, ROOM_LETTERS, type CodePlace } from "../../scripts/error-catalogue.ts";
import { PURE } from "./rooms.ts";

const catalogue = errorCatalogue();
const printed = join(import.meta.dirname, "..", "..", "docs", "errors.md");

describe("error codes", () => {
  it("are raised in the room whose letters they carry, or named on the wire", () => {
    const raised = new Set(catalogue.filter(isRaised).map(({ code }) => code));
    expect(catalogue.filter(({ code }) => !raised.has(code))).toEqual([]);
  });

  it("are raised by no pure room in the name of another", () => {
    const strays = catalogue.filter((place) => PURE.includes(place.room) && !isRaised(place));
    expect(strays).toEqual([]);
  });

  it("mean one thing each: one stands in one file, or its one meaning is written here", () => {
    const codes = catalogue.filter(({ path }) => path !== WIRE).map(({ code }) => code);
    const shared = [...new Set(codes.filter((code, at) => codes.indexOf(code) !== at))];
    expect(shared.toSorted()).toEqual(Object.keys(ONE_MEANING).toSorted());
  });

  it("are all printed in docs/errors.md, and nothing else is", () => {
    expect(readFileSync(printed, "utf8")).toBe(renderCatalogue(catalogue));
  });
});

/** Codes that more than one file raises, or that one passes on for another, with what each means everywhere. */
const ONE_MEANING: Readonly<Record<string, string>> = {
  "BA-102": "not a unit of what is measured",
  "BA-106": "a number that cannot be",
  "BA-119": "a date whose day and month could be either way round",
  "KI-105": "not a unit of its dimension",
  "KI-107": "a name that the file does not have",
  "QU-101": "something that is needed was left out, or given twice",
  "QU-104": "outside what is allowed, by size or length",
  "QU-141": "a space that reaches out of the boat",
  "QU-142": "a level above the deck edge and its coaming",
  "QU-212": "prior and fleet given together",
  "QU-251": "a name given twice",
  "QU-253": "not one chance for each",
  "SN-131": "a finding raised already",
  "SN-191": "a part that is not on the station's list",
  "SN-211": "work given to others by who may not",
  "SN-212": "other people's days, by who may not",
  "ST-143": "the station shows another history than this device holds",
  "ST-144": "the station's log does not add up",
  "ST-215": "a sheet with more columns, or a longer cell, than is read",
  "ST-222": "a cell that is none of what may stand there",
  "ST-225": "what two rows of a sheet say of one thing",
};

const WIRE = "src/station/wire/wire-words.ts";

function isRaised({ code, room, path }: CodePlace): boolean {
  return ROOM_LETTERS[code.slice(0, 2)] === room.split("/")[0] || path === WIRE;
}
