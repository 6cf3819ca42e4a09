import { fetchWords } from "#words";
import { describe, expect, it } from "vitest";
import { measuredBoat, measureFaults, sayGuessed } from "./measures.ts";

const words = await fetchWords("en", "sheetBoat");
const BOAT = { kind: "motor boat", length: 10 } as const;

describe("measures typed on the sheet", () => {
  it("are held to the limits of the log, in words at the field", () => {
    expect(measureFaults(BOAT, { beam: 39 }, words).beam).toMatch(/^From 0\.83\d* m to 9 m, for a boat 10 m long\.$/);
    expect(measureFaults(BOAT, { beam: 3.2, depth: 1.5 }, words)).toEqual({});
  });

  it("take freeboard for draught, once the depth is known", () => {
    expect(measureFaults(BOAT, { freeboard: 0.8 }, words).freeboard).toContain("keel to deck edge");
    expect(measuredBoat({ ...BOAT, depth: 1.5 }, { freeboard: 0.8 }).draught).toBeCloseTo(0.7, 9);
    expect(measureFaults(BOAT, { depth: 1.5, freeboard: 1.49 }, words).freeboard).toContain("leaves a draught of");
    expect(measureFaults(BOAT, { depth: 1.5, freeboard: 0.8, draught: 0.7 }, words).draught).toContain("not both");
  });

  it("say what is still guessed", () => {
    expect(sayGuessed(BOAT, words)).toBe("Beam, depth and freeboard guessed from length and kind");
    expect(sayGuessed({ ...BOAT, beam: 3, depth: 1.5 }, words)).toBe("Freeboard guessed from length and kind");
    expect(sayGuessed({ ...BOAT, beam: 3, depth: 1.5, draught: 0.6 }, words)).toBeUndefined();
  });
});
