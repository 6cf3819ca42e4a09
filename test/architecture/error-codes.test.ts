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

  it("are all printed in docs/errors.md, and nothing else is", () => {
    expect(readFileSync(printed, "utf8")).toBe(renderCatalogue(catalogue));
  });
});

const WIRE = "src/station/wire/wire-words.ts";

function isRaised({ code, room, path }: CodePlace): boolean {
  return ROOM_LETTERS[code.slice(0, 2)] === room.split("/")[0] || path === WIRE;
}
