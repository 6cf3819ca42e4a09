import { isInputError } from "#base";
import { describe, expect, it } from "vitest";
import { onSceneQuestion } from "./on-scene.ts";

const BASE = {
  boat: { kind: "motor boat", length: 10 },
  spaces: [{ name: "engine room", sort: "engine-room", part: "aft" }],
};
const FALLING = [0.5, 0.56, 0.53, 0.49].map((level, i) => ({ at: 300 * i, level }));
const RISING = [0.3, 0.38, 0.46, 0.54].map((level, i) => ({ at: 300 * i, level }));
const PUMPING = [{ from: 300, flow: 0.25 / 60 }];

function ask(more: object) {
  return onSceneQuestion.answer({ ...BASE, readings: FALLING, pumping: PUMPING, now: 960, ...more }, {});
}

function kindsOf(more: object): readonly string[] {
  return ask(more).warnings.map(({ signal, kind }) => `${signal} ${kind}`);
}

describe("what the soundings say on scene", () => {
  it("is nothing before the first one, and how she lies is told all the same", () => {
    const answer = ask({ readings: [], pumping: [] });
    expect(answer.reading).toBeUndefined();
    expect(answer.lying).toMatchObject({ kind: "afloat", freeboard: expect.closeTo(answer.dryFreeboard, 3) });
  });

  it("is gaining where the level falls, losing where it rises with no pump", () => {
    expect(ask({}).reading!.verdict.kind).toBe("gaining");
    const rising = ask({ readings: RISING, pumping: [] });
    expect(rising.reading!.verdict.kind).toBe("losing");
    expect(rising.leave.because).toContain("The water rises, and no pump runs.");
    const weak = ask({ readings: RISING, pumping: [{ from: 0, flow: 0.0002 }] });
    expect(weak.leave.because).toContain("The water gains on the pumps.");
  });

  it("ranks no action below what is done now: more pumping never leaves more water", () => {
    const { advice, holding } = ask({}).reading!;
    expect(advice.map(({ action }) => action)).toContain("second-pump");
    for (const { holding: after } of advice) expect(after).toBeGreaterThanOrEqual(holding - 0.01);
  });

  it("takes a patch into account at once, and by soundings after it", () => {
    const none = ask({ readings: RISING, pumping: [] });
    const halved = ask({ readings: RISING, pumping: [], patches: [{ at: 930, open: 0.5 }] });
    const share = halved.reading!.inflow.p50 / none.reading!.inflow.p50;
    expect(share).toBeGreaterThan(0.4);
    expect(share).toBeLessThan(0.65);
    const held = ask({
      readings: [...RISING, { at: 1200, level: 0.54 }, { at: 1500, level: 0.541 }],
      pumping: [],
      patches: [{ at: 930, open: 0.5 }],
      now: 1500,
    });
    expect(held.reading!.inflow.p50).toBeLessThan(0.8 * halved.reading!.inflow.p50);
  });

  it("gives when the next sounding is due on the readings' own clock", () => {
    expect(ask({}).reading!.nextSounding).toBe(900 + 300);
    expect(ask({ readings: FALLING.slice(0, 2) }).reading!.nextSounding).toBe(300 + 120);
  });
});

describe("warnings on scene", () => {
  it("put fuel first, whatever else there is", () => {
    expect(kindsOf({ fuelSmelt: true, righting: "slowly" })[0]).toBe("DANGER fuel-smelt");
  });

  it("tell a list that does not come back from one that comes back slowly", () => {
    expect(kindsOf({ righting: "stays" })).toContain("DANGER stability-gone");
    expect(kindsOf({ righting: "slowly" })).toContain("WARNING stability-little");
    expect(ask({ righting: "stays" }).leave).toMatchObject({ kind: "now" });
    expect(ask({ righting: "comes-back" }).leave.kind).toBe("no-sign");
  });

  it("speak against pumping from one side only where she lists, pumps and is doubtful", () => {
    expect(kindsOf({ list: 0.1, righting: "slowly" })).toContain("DANGER one-side");
    expect(kindsOf({ list: 0.1, righting: "slowly", pumping: [] })).not.toContain("DANGER one-side");
    expect(kindsOf({ list: 0.01, righting: "slowly" })).not.toContain("DANGER one-side");
  });

  it("take the longer roll for less stability", () => {
    expect(kindsOf({ rollPeriod: 9 })).toContain("WARNING stability-little");
    expect(kindsOf({ rollPeriod: 3 })).not.toContain("WARNING stability-little");
  });

  it("see the deck edge come near as the water rises", () => {
    const whole = [{ name: "boat", sort: "open", part: "whole" }];
    const open = { boat: { kind: "open boat", length: 6 }, spaces: whole, pumping: [], now: 600 };
    const deep = ask({ ...open, readings: [0.2, 0.3, 0.4].map((level, i) => ({ at: 300 * i, level })) });
    expect(deep.warnings.map(({ kind }) => kind)).toContain("downflooding-near");
    const shallow = ask({ ...open, now: 0, readings: [{ at: 0, level: 0.05 }] });
    expect(shallow.warnings.map(({ kind }) => kind)).not.toContain("downflooding-near");
  });
});

describe("a single sounding", () => {
  const lone = { boat: { kind: "motor boat", length: 9 }, readings: [{ at: 0, level: 0.6 }], pumping: [], now: 60 };

  it("is neither gaining nor losing, and by itself urges nobody off", () => {
    const { reading, leave, warnings } = ask(lone);
    expect(reading!.verdict.kind).toBe("unknown");
    expect(reading!.says).toBe("One sounding: sound again.");
    expect(leave).toEqual({ kind: "no-sign", because: [], seen: false });
    expect(warnings.map(({ kind }) => kind)).not.toContain("loss-possible");
  });

  it("urges where how she lies does so by itself, or the hole that was told", () => {
    const deep = ask({ ...lone, spaces: [{ name: "boat", sort: "open", part: "whole" }] });
    expect(deep.leave.kind).not.toBe("no-sign");
    expect(deep.leave.because.join()).not.toContain("gains on the pumps");
    const holed = ask({ ...lone, hole: { diameter: 0.4 } });
    expect(holed.leave.because.join()).toContain("She may be lost");
  });

  it("is told as one where it is old", () => {
    expect(ask({ ...lone, now: 3000 }).reading!.lastKnown).toContain("one sounding, which shows neither rise nor fall");
  });
});

function faultsOf(more: object): readonly string[] {
  try {
    ask(more);
  } catch (thrown) {
    if (isInputError(thrown)) return thrown.faults.map(({ code, field }) => `${code} ${field}`);
    throw thrown;
  }
  return [];
}

describe("faults in what is given", () => {
  it.each([
    ["a deck edge a hand above the keel", { depth: 0.1 }, ["QU-141 boat.depth"]],
    ["no freeboard", { depth: 1.4, draught: 1.4 }, ["QU-141 boat.draught"]],
    ["a draught above the deck edge", { depth: 1.4, draught: 2 }, ["QU-141 boat.draught"]],
    ["a beam of more than any boat", { beam: 39 }, ["QU-104 boat.beam"]],
    ["a beam of nearly her length", { beam: 9.5 }, ["QU-141 boat.beam"]],
  ])("name %s", (_, boat, expected) => {
    expect(faultsOf({ boat: { ...BASE.boat, ...boat } })).toEqual(expected);
  });

  it("name a level above her coaming, at a time not come yet, twice at one time, all at once", () => {
    const readings = [0.5, 4.5, 0.5, 0.5].map((level, i) => ({ at: [0, 300, 300, 1000][i], level }));
    expect(faultsOf({ readings })).toEqual([
      "QU-142 readings[1].level",
      "QU-140 readings[2].at",
      "QU-143 readings[3].at",
    ]);
    const second = { name: "cabin", sort: "cabin", part: "forward", level: 4.5 };
    expect(faultsOf({ spaces: [...BASE.spaces, second] })).toEqual(["QU-142 spaces[1].level"]);
    expect(faultsOf({ patches: [{ at: 961, open: 0.5 }] })).toEqual(["QU-143 patches[0].at"]);
  });

  it("name soundings and patches out of order", () => {
    try {
      ask({ readings: [...FALLING, { at: 10, level: 0.3 }] });
    } catch (thrown) {
      expect(isInputError(thrown) && thrown.faults).toMatchObject([{ code: "QU-140", field: "readings[4].at" }]);
      return;
    }
    expect.unreachable("readings out of order were taken");
  });
});

function askYacht(more: object) {
  return ask({ boat: { kind: "sailing yacht", length: 8, ...more }, readings: [], pumping: [] });
}

function assumedOfYacht(more: object): string {
  const { assumptions } = askYacht(more);
  return assumptions.map(({ what }) => what.replaceAll("\u00a0", " ")).join(" ");
}

describe("a yacht whose draught is told to the foot of her keel", () => {
  it.each([
    [{ draught: 2.1 }, 0.76],
    [{ draught: 2.1, length: 7.9, depth: 3 }, 0.9],
    [{ draught: 1.6, depth: 1.3 }, 0.78],
  ])("floats with the freeboard of a yacht: %j, %s m", (told, freeboard) => {
    const answer = askYacht(told);
    expect(answer.dryFreeboard).toBeCloseTo(freeboard, 2);
    expect(answer.lying).toMatchObject({ kind: "afloat", freeboard: expect.closeTo(freeboard, 2) });
  });

  it("is said to be taken so, and only then", () => {
    const said = assumedOfYacht({ draught: 2.1 });
    expect(said).toContain(
      "A draught of 2.1 m taken to the foot of her keel: the hull's own guessed from length, 0.52 m.",
    );
    expect(assumedOfYacht({ draught: 2.1, depth: 3 })).toContain("foot of her keel, her depth too");
    expect(assumedOfYacht({ draught: 0.6 })).not.toContain("foot of her keel");
  });
});

function kindsAt(level: number, boat: object = {}): readonly string[] {
  return kindsOf({ readings: [{ at: 0, level }], pumping: [], boat: { ...BASE.boat, ...boat } });
}

function actionsOf(more: object): readonly string[] {
  return ask(more).reading!.advice.map(({ action }) => action);
}

describe("what is not said on scene", () => {
  it("to open up an engine that is wide open, or to lower a pump that stands low", () => {
    expect(actionsOf({})).toEqual(expect.arrayContaining(["more-throttle", "shorter-lift"]));
    expect(actionsOf({ canOpenUp: false, canLower: false }).toSorted()).toEqual(["patch-half", "second-pump"]);
  });

  it("to pump while fuel is smelt", () => {
    expect(actionsOf({ fuelSmelt: true })).toEqual(["patch-half"]);
  });

  it("a sounding above her deck edge without a word; a guessed deck edge may be a third out", () => {
    expect(kindsAt(3)).toContain("WARNING above-deck");
    expect(kindsAt(1.2, { depth: 1.1, draught: 0.5 })).toContain("WARNING above-deck");
    expect(kindsAt(1.2)).not.toContain("WARNING above-deck");
  });

  it("to leave her for a sounding that may be a slip of the unit", () => {
    const readings = [0.4, 0.4, 0.41, 4].map((level, i) => ({ at: 300 * i, level }));
    const { leave, warnings } = ask({ readings, pumping: [], now: 910 });
    expect(leave).toMatchObject({ kind: "be-ready", because: [expect.stringContaining("look at the figure")] });
    const kinds = warnings.map(({ kind }) => kind);
    expect(kinds).toContain("above-deck");
    expect(kinds).not.toContain("loss-possible");
    expect(kinds).not.toContain("downflooding-near");
  });

  it("anything by a sounding of the day before", () => {
    const readings = [0.4, 0.47, 0.54].map((level, i) => ({ at: 300 * i, level }));
    const before = { at: -20 * 3600, level: 0.1 };
    const [with1, without] = [[before, ...readings], readings].map(
      (some) => ask({ readings: some, pumping: [], now: 700 }).reading!,
    );
    expect(with1!.chances).toEqual(without!.chances);
    expect(with1!.misfit).toBe(false);
  });

  it("a time of loss where nothing fits", () => {
    const readings = [0.4, 0.42, 0.44, 0.46, 0.62, 0.78].map((level, i) => ({ at: 300 * i, level }));
    const { reading, leave, warnings } = ask({ readings, pumping: [], now: 1510 });
    expect(reading!.misfit).toBe(true);
    expect(warnings.find(({ kind }) => kind === "loss-possible")!.says).toMatch(
      /^She may be lost; when cannot be said/,
    );
    expect(leave.because).toContain("The water rises, and the soundings do not fit.");
    expect(leave.because.join()).not.toContain("within");
  });

  it("that few soundings were taken where the hole was changed after many", () => {
    const { warnings } = ask({ patches: [{ at: 800, open: 0.5 }] });
    expect(warnings.find(({ kind }) => kind === "few-readings")!.says).toContain("since the hole was changed");
  });
});

describe("an old sounding", () => {
  it("says how she is for half an hour, and after it how she was", () => {
    const fresh = ask({ now: 900 + 1800 }).reading!;
    expect(fresh).toMatchObject({ stale: false, age: 1800, says: expect.stringMatching(/^Gaining: \d+ in 100\.$/) });
    expect(fresh).not.toHaveProperty("lastKnown");
    const old = ask({ now: 900 + 47 * 60 });
    expect(old.reading).toMatchObject({
      stale: true,
      age: 2820,
      says: "Not known: last sounding 47\u00a0min ago. Sound now.",
      lastKnown: expect.stringMatching(
        /^When last sounded, 47\u00a0min ago, with 49\u00a0cm in her: Gaining: \d+ in 100\.$/,
      ),
    });
    expect(old.warnings.map(({ signal, kind }) => `${signal} ${kind}`)).toContain("WARNING stale");
  });

  it("is told of as it was then, whatever was done to the hole since", () => {
    const patched = { now: 5000, patches: [{ at: 4000, open: 0.1 }] };
    expect(ask(patched).reading!.lastKnown).toBe(ask({ now: 5000 }).reading!.lastKnown);
  });
});

const CABIN = { name: "cabin", sort: "cabin", part: "middle" };

describe("two spaces", () => {
  it("are warned of where one falls unpumped while the other rises by as much", () => {
    const readings = [0.6, 0.5, 0.45].map((level, i) => ({ at: 600 * i, level }));
    const cabin = [0.2, 0.3, 0.35].map((level, i) => ({ at: 600 * i, level }));
    const more = { readings, pumping: [], now: 1200, spaces: [...BASE.spaces, { ...CABIN, readings: cabin }] };
    expect(kindsOf(more)).toContain("WARNING between-spaces");
    expect(kindsOf({ ...more, pumping: [{ from: 0, flow: 0.004 }] })).not.toContain("WARNING between-spaces");
  });

  it("are said to be followed each for itself", () => {
    const { assumptions } = ask({ spaces: [...BASE.spaces, CABIN] });
    expect(assumptions.map(({ what }) => what).join()).toContain("Each space for itself");
    expect(
      ask({})
        .assumptions.map(({ what }) => what)
        .join(),
    ).not.toContain("Each space for itself");
  });

  it("have soundings judged alike, by their own field", () => {
    const readings = [
      { at: 0, level: 4.5 },
      { at: 2000, level: 0.4 },
    ];
    expect(faultsOf({ spaces: [...BASE.spaces, { ...CABIN, readings }] })).toEqual([
      "QU-142 spaces[1].readings[0].level",
      "QU-143 spaces[1].readings[1].at",
    ]);
  });
});
