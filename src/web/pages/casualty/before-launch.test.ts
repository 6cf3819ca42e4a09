import type { KitsNeededAnswer } from "#questions";
import { ask } from "#questions";
import { describe, expect, it } from "vitest";
import { kitsQuestion, openingOf, tell } from "./before-launch.ts";

const CALL = { kind: "motor boat", length: 9, distance: 9260 } as const;

function answerTo(call: object): KitsNeededAnswer {
  return ask(
    "kits-needed",
    JSON.parse(JSON.stringify(kitsQuestion({ ...CALL, ...call }, undefined, undefined))),
  ) as KitsNeededAnswer;
}

describe("before launch", () => {
  it("asks nothing until kind, length and distance are told, and then answers with the rest unknown", () => {
    expect(kitsQuestion({ kind: "motor boat", length: 9 }, undefined, undefined)).toBeUndefined();
    expect(answerTo({}).byKits).toHaveLength(6);
  });

  it("opens a sheet with what was told and a space such a boat floods in", () => {
    expect(openingOf({ ...CALL, hole: 0.04 }, " Grey boat ")).toEqual({
      name: "Grey boat",
      boat: { kind: "motor boat", length: 9 },
      space: { id: "space-1", name: "Engine room", sort: "engine-room", part: "aft" },
      hole: { diameter: 0.04 },
    });
  });

  it("hands water told, and when, on to the sheet", () => {
    const at = Date.parse("2026-03-14T13:02:00Z");
    const told = tell(tell(CALL, { water: 0.5 }, at), { hole: 0.04 }, at + 60_000);
    expect(openingOf(told, "Grey boat").told).toEqual({ at: "2026-03-14T13:02:00.000Z", water: 0.5 });
    expect(openingOf(tell(told, { water: undefined }, at), "Grey boat")).not.toHaveProperty("told");
  });
});
