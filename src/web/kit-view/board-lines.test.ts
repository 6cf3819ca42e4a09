import { describe, expect, it } from "vitest";
import { allLines, byStanding, findLines, placeLines } from "./board-lines.ts";
import { BOAT, sampleKit, sampleStanding, SHED } from "../pages/board/sample-kits.ts";

const standings = new Map([
  ["1", sampleStanding("ready", "2026-12-20")],
  ["2", sampleStanding("grounded")],
  ["3", sampleStanding("ready-with-limits", "2026-12-01")],
  ["4", sampleStanding("away")],
  ["10", sampleStanding("ready", "2026-12-20")],
]);
const kits = ["10", "1", "2", "3", "4"].map((id) => sampleKit(id, { place: id === "4" ? "boat" : "shed" }));
const view = { kits, standings, places: [BOAT, SHED], place: SHED };
const names = (lines: ReturnType<typeof placeLines>[number] | undefined) =>
  lines && allLines(lines).map(({ kit }) => kit.name);

describe("the board's lines", () => {
  it("puts the person's own place first", () => {
    expect(placeLines(view).map(({ place }) => place.id)).toEqual(["shed", "boat"]);
  });

  it("puts what is not ready before what ends first, and figures in order of size", () => {
    expect(names(placeLines(view)[0])).toEqual(["Pump 2", "Pump 3", "Pump 1", "Pump 10"]);
  });

  it("names the kits by standing, the best first", () => {
    const told = byStanding(placeLines(view)[0]!);
    expect(told.map(({ standing, kits }) => ({ standing, names: kits.map(({ name }) => name) }))).toEqual([
      { standing: "ready", names: ["Pump 1", "Pump 10"] },
      { standing: "ready-with-limits", names: ["Pump 3"] },
      { standing: "grounded", names: ["Pump 2"] },
    ]);
  });

  it("counts strength as the place's own kits are ready, with limits or without", () => {
    const [shed, boat] = placeLines(view);
    expect(shed?.strength).toMatchObject({ must: 2, holds: 3, withLimits: 1, short: 0 });
    expect(boat?.strength).toMatchObject({ must: 1, holds: 0, short: 1 });
  });

  it("finds kits by name or serial, in any case, and keeps the strength", () => {
    const found = findLines(placeLines(view), " sn-1");
    expect(names(found[0])).toEqual(["Pump 1", "Pump 10"]);
    expect(found[0]?.strength.holds).toBe(3);
    expect(names(found[1])).toEqual([]);
  });
});
