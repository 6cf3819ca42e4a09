import { describe, expect, it } from "vitest";
import { exampleOf } from "../ask.ts";
import { AREA, faultsOf, HOLD, HULL, kits, READINGS, sheet } from "./test-given.ts";

const BOX = { hull: HULL, compartments: [HOLD] };
const later = [{ from: "30 min", flow: "200 L/min" }];
const unsized = (more: object) => kits({ boat: "not known", ...more });
const told = (...levels: readonly (readonly [number, string])[]) => levels.map(([ago, water]) => ({ ago, water }));

describe("the same guards in every question, one row each", () => {
  it.each<readonly [what: string, name: string, given: object, faults: readonly string[]]>([
    [
      "pumping that begins after now",
      "sounding",
      { compartment: AREA, readings: READINGS, pumping: later, options: { now: "20 min" } },
      ["QU-143 pumping[0].from"],
    ],
    ["pumping that begins after now", "on-scene", sheet({ pumping: later }), ["QU-143 pumping[0].from"]],
    [
      "a pump seen after now",
      "on-scene",
      sheet({ pumping: [{ from: "11 min", flow: 0.003 }], pumpSeen: [{ at: "30 min", sign: "weak" }] }),
      ["QU-143 pumpSeen[0].at"],
    ],
    [
      "two levels at one time",
      "kits-needed",
      kits({ tellings: told([60, "30 cm"], [60, "90 cm"]) }),
      ["QU-140 tellings[1].ago"],
    ],
    ["one level told twice", "kits-needed", kits({ tellings: told([60, "30 cm"], [60, "30 cm"]) }), []],
    ["a level above deck", "kits-needed", kits({ tellings: told([0, "5 m"]) }), ["QU-142 tellings[0].water"]],
    ["a level above deck, kind not known", "kits-needed", unsized({ waterInside: "5 m" }), ["QU-142 waterInside"]],
    [
      "a level above deck",
      "righting",
      { ...(exampleOf("righting") as object), hull: HULL, compartments: [{ ...HOLD, level: "1.5 m" }] },
      ["QU-153 compartments[0].level"],
    ],
    [
      "a level above deck",
      "flood",
      { vessel: { ...BOX, compartments: [{ ...HOLD, level: "1.5 m" }] }, openings: [], pumps: [], duration: 60 },
      ["QU-153 vessel.compartments[0].level"],
    ],
    ["a draught above deck", "hydrostatics", { hull: HULL, draught: "1.6 m" }, ["QU-130 draught"]],
    [
      "a draught above deck",
      "righting",
      { ...(exampleOf("righting") as object), hull: HULL, draught: "2 m" },
      ["QU-130 draught"],
    ],
    ["a hole deeper than the hull, kind not known", "kits-needed", unsized({ holeDepth: "5 m" }), ["QU-158 holeDepth"]],
    [
      "a space longer than she is, kind not known",
      "kits-needed",
      unsized({ length: "6 m", spaceLength: "11 m" }),
      ["QU-141 spaceLength"],
    ],
    [
      "a rise no hole gives",
      "kits-needed",
      kits({ tellings: told([2, "0 m"], [0, "1.2 m"]) }),
      ["QU-159 tellings[1].water"],
    ],
    [
      "a rise no hole gives, newest first",
      "kits-needed",
      kits({ tellings: told([0, "1.2 m"], [2, "0 m"]) }),
      ["QU-159 tellings[0].water"],
    ],
    [
      "a rise no hole gives",
      "sounding",
      { vessel: BOX, readings: [READINGS[0]!, { at: "10 min 2 s", level: "1.1 m" }], pumping: [] },
      ["QU-159 readings[1].level"],
    ],
    ["a fall of a dry floor", "kits-needed", kits({ waterInside: 0, rising: "-5 cm/min" }), ["QU-159 rising"]],
    [
      "a lift of less than none",
      "delivery-table",
      { ...(exampleOf("delivery-table") as object), lifts: ["-300 m"] },
      ["QU-104 lifts[0]"],
    ],
  ])("%s: %s", (_, name, given, faults) => {
    expect(faultsOf(name, given)).toEqual(faults);
  });

  it("a leap of one sounding is no fault on scene: the word says that it does not fit", () => {
    expect(faultsOf("on-scene", sheet({ readings: [READINGS[0]!, { at: "10 min 2 s", level: "1.4 m" }] }))).toEqual([]);
  });
});
