import { describe, expect, it } from "vitest";
import { linesOf } from "./lines.ts";
import { loadPattern } from "./file/load-pattern.ts";
import {
  allSteps,
  briefingOf,
  checkNamed,
  checksFinding,
  itemNamed,
  modeNamed,
  modesAtStep,
  modesOf,
  newestOf,
  newestOfEach,
  parsePatternKey,
  partsOf,
  patternKey,
  placeNamed,
  stageNamed,
  stageOfStep,
  stepNamed,
  stepOfCheck,
  titleOfMode,
} from "./look-ups.ts";
import { SOUND_TEXT } from "./test-sound-pattern.ts";

const pattern = loadPattern(SOUND_TEXT, "sound.yaml");

function version(id: string, number: number) {
  return { ...pattern, id, version: number };
}

describe("versions of a pattern", () => {
  const shelf = [version("small", 2), version("large", 10), version("small", 1), version("large", 9)];

  it("its id alone means the newest, whatever the order they came in", () => {
    expect(newestOf(shelf, "large")?.version).toBe(10);
    expect(newestOf(shelf.toReversed(), "small")?.version).toBe(2);
    expect(newestOf(shelf, "none")).toBeUndefined();
  });

  it("a new kit is offered the newest of each", () => {
    expect(newestOfEach(shelf).map(patternKey)).toEqual(["small@2", "large@10"]);
  });
});

describe("looking things up", () => {
  it("finds by id, and says undefined where there is none", () => {
    expect(itemNamed(pattern, "cells")?.quantity).toBe(2);
    expect(modeNamed(pattern, "pump-slow")?.limit).toBe("Small leaks only.");
    expect(checkNamed(pattern, "cells-date")?.kind).toBe("date");
    expect(stepNamed(pattern, "run")?.needs).toEqual({ people: 2, minutes: 6, tools: ["tank"] });
    expect(placeNamed(pattern, "inside")).toBe("Inside");
    for (const find of [itemNamed, modeNamed, checkNamed, stepNamed, placeNamed]) {
      expect(find(pattern, "no-such")).toBeUndefined();
    }
  });

  it("knows stages and their steps", () => {
    expect(stageNamed(pattern, "spare-start")).toBeUndefined();
    expect(stageOfStep(pattern, "prime")?.id).toBe("prime");
    expect(allSteps(pattern)).toHaveLength(10);
  });

  it("follows a mode to the checks that prove it gone, and a check to its step", () => {
    expect(checksFinding(pattern, "seal-broken").map((check) => check.id)).toEqual(["seal-count", "seal-match"]);
    expect(stepOfCheck(pattern, "pump-time")?.id).toBe("prime");
    expect(stepOfCheck(pattern, "no-such")).toBeUndefined();
  });

  it("offers at a step the modes its checks find, each once", () => {
    const look = stepNamed(pattern, "look");
    expect(look && modesAtStep(pattern, look).map((mode) => mode.id)).toEqual(["seal-broken"]);
    const examine = stepNamed(pattern, "measure");
    expect(examine && modesAtStep(pattern, examine, "cells-date").map((mode) => mode.id)).toEqual(["cells-old"]);
  });

  it("knows the parts and modes of an item", () => {
    expect(partsOf(pattern, "pump").map((item) => item.id)).toEqual(["gasket"]);
    expect(modesOf(pattern, "pump").map((mode) => mode.id)).toEqual(["pump-dead", "pump-slow"]);
  });
});

describe("a pattern's key", () => {
  it("is id@version, there and back", () => {
    expect(patternKey(pattern)).toBe("sound@3");
    expect(parsePatternKey(patternKey(pattern))).toEqual({ id: "sound", version: 3 });
  });

  it.each(["sound", "sound@", "sound@0", "sound@1.5", "Sound@1", "sound@1@2", "@1"])("is not %s", (key) => {
    expect(() => parsePatternKey(key)).toThrow(/KI-111/);
  });
});

describe("the title of a mode", () => {
  it.each([
    ["Torch", "Torch does not light", "Torch does not light"],
    ["Suction hose", "Cut", "Suction hose: Cut"],
  ])("names %s once: %s", (item, mode, title) => {
    expect(titleOfMode(item, mode)).toBe(title);
  });
});

describe("the lines of the card", () => {
  const lines = linesOf(pattern);

  it("number each step, and letter its checks", () => {
    expect(lines.slice(0, 6).map((line) => line.label)).toEqual(["1", "1a", "1b", "2", "3", "3a"]);
  });

  it("answer a step by its checks, or by itself where it has none", () => {
    const answered = lines.slice(0, 4).map((line) => [line.label, line.answered]);
    expect(answered).toEqual([
      ["1", false],
      ["1a", true],
      ["1b", true],
      ["2", true],
    ]);
  });

  it("letter on past z", () => {
    const [look, ...others] = pattern.stages[0]!.steps;
    const many = { ...look!, checks: Array.from({ length: 28 }, () => "seal-count") };
    const long = { ...pattern, stages: [{ ...pattern.stages[0]!, steps: [many, ...others] }] };
    expect(linesOf(long).map((line) => line.label)).toEqual(expect.arrayContaining(["1z", "1aa", "1ab"]));
  });
});

describe("what is said of a kit before it is started", () => {
  const container = { ...pattern.container, mass: 58, lifters: 4 };

  it("begins with how many lift it, by its own container", () => {
    const said = briefingOf({ briefing: ["Fuel burns."], container });
    expect(said).toEqual([expect.stringMatching(/^4 people lift it: 58(\.0)?\skg\.$/), "Fuel burns."]);
    expect(briefingOf({ briefing: [], container: { ...container, lifters: 1 } })).toEqual([
      expect.stringMatching(/^1 person lifts it: /),
    ]);
  });

  it("is the pattern's own words where a machine lifts it, and nothing where the pattern says nothing", () => {
    const machines = [{ id: "davit", name: "Davit", safeWorkingLoad: 200 }];
    expect(briefingOf({ briefing: ["Only the davit."], container: { ...container, machines } })).toEqual([
      "Only the davit.",
    ]);
    expect(briefingOf({ container })).toBeUndefined();
  });
});
