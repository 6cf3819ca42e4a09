import { ask } from "../ask.ts";
import type { CasualtyBoat, CasualtyState } from "#readiness";
import { describe, expect, it } from "vitest";
import { believableOf } from "./believable.ts";
import { sheetQuestion } from "./sheet-question.ts";

const T0 = Date.UTC(2027, 2, 14, 10);
const mark = (minute: number) => ({
  entry: `e${minute}`,
  at: new Date(T0 + minute * 60_000).toISOString(),
  by: "ann",
  device: "d",
});
const sounded = (minute: number, level: number) => ({ ...mark(minute), space: "s1", level, text: "" });

function sheet(boat: Partial<CasualtyBoat>, levels: readonly number[]): CasualtyState {
  return {
    id: "c1",
    name: "Grey boat",
    boat: { kind: "motor boat", length: 9, ...boat },
    spaces: [{ id: "s1", name: "Cabin", sort: "cabin", part: "middle" }],
    opened: mark(0),
    soundings: levels.map((level, i) => sounded(1 + i, level)),
    pumps: [],
    patches: [],
    stability: {},
    notes: [],
  };
}

function answerTo(casualty: CasualtyState): unknown {
  return ask("on-scene", JSON.parse(JSON.stringify(sheetQuestion(casualty, T0 + 600_000))));
}

describe("what can be of a sheet", () => {
  it("is all of it where nothing is wrong", () => {
    const told = sheet({ depth: 1.4 }, [0.3, 0.4]);
    expect(believableOf(told)).toEqual({ casualty: told, measures: [], soundings: [] });
  });

  it("ASK-6 is without a sounding above the deck edge another device told of meanwhile, and is computed", () => {
    const told = sheet({ depth: 1.4 }, [0.3, 2.2, 0.4]);
    expect(() => answerTo(told)).toThrow("QU-142");
    const { casualty, soundings } = believableOf(told);
    expect(soundings.map(({ sounding }) => sounding.entry)).toEqual(["e2"]);
    expect(soundings[0]!.wrong.remedy).toContain("depth");
    expect(answerTo(casualty)).toHaveProperty("reading.soundings", 2);
  });

  it("is without a measure that leaves her no freeboard, and is computed", () => {
    const told = sheet({ depth: 1.4, draught: 1.4 }, [0.3, 0.4]);
    expect(() => answerTo(told)).toThrow("QU-141");
    const { casualty, measures } = believableOf(told);
    expect(measures.map(({ field }) => field)).toEqual(["draught"]);
    expect(casualty.boat).toEqual({ kind: "motor boat", length: 9, depth: 1.4 });
    expect(answerTo(casualty)).toHaveProperty("reading.soundings", 2);
  });

  it("keeps a measure that is wrong only beside another that is", () => {
    const { casualty, measures } = believableOf(sheet({ beam: 0.5, depth: 1.4 }, [0.3]));
    expect(measures.map(({ field }) => field)).toEqual(["beam"]);
    expect(casualty.boat.depth).toBe(1.4);
  });

  it("keeps her length, right or wrong: nothing is guessed without it", () => {
    const { casualty, measures } = believableOf(sheet({ length: 60 }, [0.3]));
    expect(measures).toEqual([]);
    expect(casualty.boat.length).toBe(60);
  });
});
