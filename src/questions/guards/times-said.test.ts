import { isInputError } from "#base";
import { describe, expect, it } from "vitest";
import { ask } from "../ask.ts";
import { AREA, sheet } from "./test-given.ts";

/** What was given and what is allowed, of the first fault. */
function said(name: string, given: object): readonly string[] {
  try {
    ask(name, given);
  } catch (thrown) {
    if (!isInputError(thrown)) throw thrown;
    const { got, allowed } = thrown.faults[0]!;
    return [got, allowed].map((text) => text.replaceAll("\u00a0", " "));
  }
  return [];
}

const read = (...times: (string | number)[]) => times.map((at, i) => ({ at, level: `${50 + i} cm` }));
const sounding = (readings: object[], more: object = {}) =>
  said("sounding", { compartment: AREA, readings, pumping: [], ...more });

describe("a time that cannot be is said back as it was given", () => {
  it("as a time of day where times of day were given, after midnight counted on", () => {
    expect(sounding(read("14:20", "14:05"))).toEqual(["14:05", "later than the one before, 14:20"]);
    expect(sounding(read("24:10", "23:58:30"))).toEqual(["23:58:30", "later than the one before, 24:10"]);
    expect(sounding(read("14:05", "14:20"), { options: { now: "14:10" } })).toEqual(["14:20", "not after now, 14:10"]);
    const pumping = [{ from: "14:20", to: "14:10", flow: "250 L/min" }];
    expect(sounding(read("14:05", "14:30"), { pumping })).toEqual(["14:10", "not before it begins, 14:20"]);
  });

  it("as minutes from the start where they were counted, never as bare seconds", () => {
    expect(sounding(read("15 min", "14 min"))).toEqual(["14 min", "later than the one before, 15 min"]);
    expect(said("on-scene", sheet({ readings: read(0, 840), now: 600 }))).toEqual(["14 min", "not after now, 10 min"]);
  });

  it("as what lies between two readings that rise as no hole makes them", () => {
    const leap = [
      { at: "14:00", level: "10 cm" },
      { at: "14:01:10", level: "9 m" },
    ];
    expect(sounding(leap, { compartment: { area: "12 m²" } })[1]).toMatch(/ in 1 min 10 s$/);
  });
});
