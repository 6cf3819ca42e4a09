import { describe, expect, it } from "vitest";
import { onSceneQuestion } from "./on-scene.ts";

const DEGREE = Math.PI / 180;
const FISHING = {
  boat: { kind: "fishing boat", length: 12 },
  spaces: [{ name: "engine room", sort: "engine-room", part: "aft" }],
};
const GAINING = [0.6, 0.55, 0.5, 0.45].map((level, i) => ({ at: 180 * i, level }));
const PUMPING = [{ from: 0, flow: "470 L/min" }];

function ask(more: object) {
  return onSceneQuestion.answer({ ...FISHING, readings: GAINING, pumping: PUMPING, now: 550, ...more }, {});
}

describe("what people see", () => {
  it.each([
    ["a list of 20 degrees", { list: 20 * DEGREE }, "A list of 20° was seen."],
    ["a list of 40 degrees", { list: -40 * DEGREE }, "A list of 40° was seen."],
    ["a list of 60 degrees", { list: 60 * DEGREE }, "A list of 60° was seen."],
    ["a list that stays", { righting: "stays" }, "The list no longer comes back."],
    ["a roll of 20 s", { rollPeriod: 20 }, "She rolls very slowly: next to no stability is left."],
    ["the deck edge awash", { deckEdge: "awash" }, "The deck edge is awash."],
    ["the deck edge under", { deckEdge: "under" }, "The deck edge is under."],
    ["water over a sill", { overSill: true }, "Water comes in over a sill."],
    ["her skipper's word", { leaving: true }, "Her own skipper says leave."],
  ])("stands at once, whatever the figures: %s", (_, seen, because) => {
    for (const more of [seen, { ...seen, readings: [], pumping: [] }, { ...seen, now: 20_000 }]) {
      const { leave } = ask(more);
      expect(leave).toMatchObject({ kind: "now", seen: true });
      expect(leave.because).toContain(because);
    }
  });

  it("brings her lowest deck edge down by geometry", () => {
    const [upright, listing] = [0, 20 * DEGREE].map(
      (list) => ask({ list }).lying as { freeboard: number; heel: number },
    );
    expect(listing!.heel).toBeCloseTo(20 * DEGREE, 6);
    expect(listing!.freeboard).toBeLessThan(upright!.freeboard - 0.4);
    const down = ask({ trimSeen: 8 * DEGREE }).lying as { freeboard: number };
    expect(down.freeboard).toBeLessThan(upright!.freeboard - 0.4);
  });

  it("conditions the guessed centre of gravity: upright, back at once and a roll of 3 s is not laid over", () => {
    const yacht = { kind: "sailing yacht", length: 12 };
    const spaces = [{ name: "cabin", sort: "cabin", part: "middle" }];
    const readings = [0.8, 0.75, 0.7, 0.64].map((level, i) => ({ at: 180 * i, level }));
    const seen = { list: 0, righting: "comes-back", rollPeriod: 3 };
    const { leave, lying, warnings } = ask({ boat: yacht, spaces, readings, ...seen });
    expect(leave).toMatchObject({ kind: "no-sign" });
    expect(lying).toMatchObject({ kind: "afloat", heel: 0 });
    expect((lying as { freeboard: number }).freeboard).toBeGreaterThan(0.3);
    expect(warnings.map(({ kind }) => kind)).not.toContain("stability-gone");
  });
});

describe("figures alone", () => {
  it("urge nobody off by one sounding and a hole told, nor by an old one", () => {
    const fist = { readings: [{ at: 0, level: 0.4 }], pumping: [], hole: { diameter: 0.09 } };
    expect(ask({ ...fist, now: 10 }).leave.kind).not.toBe("now");
    const old = ask({ ...fist, readings: [{ at: 0, level: 0 }], now: 166 * 60 });
    expect(old.leave.kind).toBe("no-sign");
    expect(old.warnings.filter(({ signal }) => signal === "DANGER")).toEqual([]);
  });

  it("urge off where fresh soundings agree that a loss is near", () => {
    const readings = [0.7, 1.0, 1.3, 1.55].map((level, i) => ({ at: 180 * i, level }));
    expect(ask({ readings, pumping: [] })).toMatchObject({
      word: { kind: "losing" },
      leave: { kind: "now", seen: false },
    });
    expect(ask({ readings, pumping: [], now: 540 + 1500 }).leave.kind).not.toBe("now");
  });

  it("say by which rule they call, and with which chances", () => {
    const readings = [0.7, 1.0, 1.3, 1.55].map((level, i) => ({ at: 180 * i, level }));
    const [because] = ask({ readings, pumping: [] }).leave.because;
    const found =
      /^The water rises by 4 soundings since the last change\. By the estimate she is lost within 10 min with (?:more than )?(\d+) in 100, and afloat after 30 min with (?:less than )?(\d+) in 100\.$/.exec(
        because!,
      );
    expect(Number(found![1])).toBeGreaterThanOrEqual(50);
    expect(Number(found![2])).toBeLessThanOrEqual(Number(found![1]) / 8 + 1);
  });

  it("call nobody off by two soundings since a change, nor by a hull that she may well outlast", () => {
    const readings = [0.7, 1.0, 1.3, 1.55].map((level, i) => ({ at: 180 * i, level }));
    const started = [{ from: 200, flow: "10 L/min" }];
    expect(ask({ readings, pumping: started }).leave.kind).toBe("be-ready");
    const open = {
      boat: { kind: "open boat", length: 11.9 },
      spaces: [{ name: "inside", sort: "open", part: "whole" }],
    };
    const slow = [0.6, 0.66, 0.71, 0.78].map((level, i) => ({ at: 120 * i, level }));
    const { word, leave } = ask({ ...open, readings: slow, pumping: [], now: 365 });
    expect(word.kind).toBe("losing");
    expect(leave).toMatchObject({ kind: "be-ready", seen: false });
  });

  const RISING = { readings: [0.6, 0.65, 0.7, 0.75].map((level, i) => ({ at: 180 * i, level })), pumping: [] };

  it("keep people ready where she was losing when last sounded and nobody has looked since: silence is no good sign", () => {
    expect(ask({ ...RISING, now: 540 + 29 * 60 }).leave.kind).toBe("be-ready");
    for (const minutes of [31, 90, 300]) {
      const { word, leave } = ask({ ...RISING, now: 540 + 60 * minutes });
      expect(word.kind).toBe("not-known");
      expect(leave).toMatchObject({ kind: "be-ready", seen: false });
      expect(leave.because).toContain("She was losing when last sounded, and nobody has sounded since.");
    }
  });

  const FAST = [0.6, 0.72, 0.84, 0.96, 1.08, 1.2].map((level, i) => ({ at: 120 * i, level }));

  it("keep people ready where she was losing until a pump was started: what it should do nobody has seen yet", () => {
    expect(ask({ readings: FAST, pumping: [], now: 604 }).leave.kind).toBe("now");
    const started = { readings: FAST, pumping: [{ from: 605, flow: "2000 L/min" }], now: 610 };
    const { word, leave } = ask(started);
    expect(word.kind).toBe("should-be-gaining");
    expect(leave).toMatchObject({ kind: "be-ready", seen: false });
    expect(leave.because).toContain("She was losing by the stick, and no sounding has shown better since.");
  });

  it("keep people ready through one sounding that shows nothing, after a rise that was shown", () => {
    const levels = [0.62, 0.67, 0.64, 0.7, 0.74, 0.76, 0.75, 0.81, 0.89, 0.88, 0.88, 0.92, 0.87];
    const readings = levels.map((level, i) => ({ at: 120 * i, level }));
    const { word, leave } = ask({ readings, pumping: [], now: 1450 });
    expect(word.kind).toBe("too-soon");
    expect(leave.because).toContain("She was losing by the stick, and no sounding has shown better since.");
  });

  it("let people be where the stick has shown a fall since", () => {
    const fallen = [1.16, 1.1, 1.03, 0.96].map((level, i) => ({ at: 720 + 120 * i, level }));
    const more = { readings: [...FAST, ...fallen], pumping: [{ from: 605, flow: "2000 L/min" }], now: 1090 };
    expect(ask(more)).toMatchObject({ word: { kind: "gaining" }, leave: { kind: "no-sign" } });
  });

  it("urge nobody by silence where she was gaining, holding or sounded once", () => {
    const held = [0.4, 0.41, 0.4, 0.4, 0.41, 0.4].map((level, i) => ({ at: 180 * i, level }));
    for (const readings of [GAINING, held, GAINING.slice(0, 1)])
      expect(ask({ readings, now: 900 + 31 * 60 }).leave.kind).toBe("no-sign");
  });

  it("say nothing of the time to come by an old sounding: no loss, no pump near the bottom", () => {
    const hole = { diameter: 0.1 };
    const shallow = [0.05, 0.03, 0].map((level, i) => ({ at: 180 * i, level }));
    for (const more of [{ readings: shallow, pumping: [], hole, now: 360 + 166 * 60 }, { now: 540 + 31 * 60 }]) {
      const kinds = ask(more).warnings.map(({ kind }) => kind);
      expect(kinds).toContain("stale");
      expect(kinds).not.toContain("loss-possible");
      expect(kinds).not.toContain("pump-will-suck-air");
    }
  });

  const OPEN = {
    boat: { kind: "open boat", length: 8.5 },
    spaces: [{ name: "inside", sort: "open", part: "whole" }],
  };
  const STEADY = [0.35, 0.42, 0.48, 0.44, 0.48, 0.44].map((level, i) => ({ at: 180 * i, level }));

  it("urge nobody by a guessed deck that is under, of a boat that is sounded and can hardly be lost", () => {
    const pumping = [
      { from: 315, flow: "230 L/min" },
      { from: 815, flow: "330 L/min" },
    ];
    const { leave, lying, reading } = ask({ ...OPEN, readings: STEADY, pumping, now: 909 });
    expect((lying as { freeboard: number }).freeboard).toBeLessThan(0);
    expect(reading!.loss?.chance ?? 0).toBeLessThan(0.1);
    expect(leave.kind).toBe("no-sign");
  });

  it("urge by it where the water rises", () => {
    const readings = [0.35, 0.4, 0.45, 0.5].map((level, i) => ({ at: 180 * i, level }));
    const { leave, lying } = ask({ ...OPEN, readings, pumping: [], now: 545 });
    expect((lying as { freeboard: number }).freeboard).toBeLessThan(0);
    expect(leave.kind).not.toBe("no-sign");
  });
});
