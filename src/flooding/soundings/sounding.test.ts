import { describe, expect, it } from "vitest";
import { checkFit, likelyPrior, readSoundings, spaceOf, uprightSpace, type SoundingCase } from "../index.ts";

/** Upright space with a 70 mm hole at its floor, followed in small steps; soundings to the millimetre. */
function watch(more: { readonly flow?: number; readonly count?: number; readonly hole?: number } = {}): SoundingCase {
  const [area, outside, count] = [12, 1.2, more.count ?? 7];
  const strength = 0.6 * (more.hole ?? 0.003) * Math.sqrt(2 * 9.80665);
  const readings = [{ at: 0, level: 0.4 }];
  let level = 0.4;
  for (let k = 1; k < count; k += 1) {
    for (let s = 0; s < 300; s += 1) {
      const pumped = k > 1 ? (more.flow ?? 0) : 0;
      level = Math.max(0, level + (strength * Math.sqrt(Math.max(0, outside - level)) - pumped) / area);
    }
    readings.push({ at: 300 * k, level });
  }
  const pumping = more.flow === undefined ? [] : [{ from: 300, flow: more.flow }];
  return { space: uprightSpace({ area, outside, outsideDoubt: 0.03 }), readings, pumping, prior: likelyPrior(0.4) };
}

describe("reading soundings", () => {
  it("a level that falls fast under the pump is gaining, and the quantities hold the truth", () => {
    const found = readSoundings(watch({ flow: 0.012 }));
    expect(found.verdict.kind).toBe("gaining");
    expect(found.holding).toBeGreaterThan(0.95);
    expect(found.quantities.holeArea.p05).toBeLessThan(0.003);
    expect(found.quantities.holeArea.p95).toBeGreaterThan(0.003);
    expect(found.forecast.dry.chance).toBeGreaterThan(0.9);
  });

  it("a level that rises against the pump is losing, and a second pump or a patch comes first in the advice", () => {
    const found = readSoundings(watch({ flow: 0.002 }));
    expect(found.verdict.kind).toBe("losing");
    expect(found.holding).toBeLessThan(0.2);
    expect(["second-pump", "patch-half"]).toContain(found.advice[0]!.action);
    expect(found.advice[0]!.change).toBeGreaterThan(0);
  });

  it("advice is ranked by the chance of holding", () => {
    const chances = readSoundings(watch({ flow: 0.003 })).advice.map((action) => action.holding);
    expect(chances).toEqual(chances.toSorted((a, b) => b - a));
  });

  it("gives the same answer to the same soundings, always", () => {
    expect(readSoundings(watch({ flow: 0.004 }))).toEqual(readSoundings(watch({ flow: 0.004 })));
  });

  it("more soundings narrow the answer", () => {
    const [few, many] = [3, 8].map((count) => {
      const { p05, p95 } = readSoundings(watch({ flow: 0.006, count })).quantities.levelAtHorizon;
      return p95 - p05;
    });
    expect(many!).toBeLessThan(few!);
  });

  it("a single sounding still gets an answer, as wide as what was thought before, and says so", () => {
    const found = readSoundings(watch({ count: 1 }));
    expect(found.warnings.map((warning) => warning.kind)).toContain("few-readings");
    const { p05, p95 } = found.quantities.holeArea;
    expect(p95 / p05).toBeGreaterThan(20);
  });

  it("every number that leaves is finite", () => {
    const text = JSON.stringify(readSoundings(watch({ flow: 0.004 })));
    expect(text).not.toContain("null");
  });

  it("a second hole halfway is noticed and said to be more water coming in", () => {
    const steady = watch({ flow: 0.006, count: 5 });
    const grown = watch({ flow: 0.006, count: 5, hole: 0.009 });
    const last = steady.readings.at(-1)!;
    const first = grown.readings[0]!.level;
    const later = grown.readings.slice(1).map((reading) => ({
      at: last.at + reading.at,
      level: last.level + (reading.level - first),
    }));
    const misfit = checkFit({ ...steady, readings: [...steady.readings, ...later] });
    expect(misfit.flagged).toBe(true);
  });

  it("one sounding misread by 30 cm is flagged and pointed at", () => {
    const given = watch({ flow: 0.006 });
    const readings = given.readings.map((one, k) => (k === 4 ? { ...one, level: one.level + 0.3 } : one));
    const misfit = checkFit({ ...given, readings });
    expect(misfit.flagged).toBe(true);
    expect(misfit.worst.reading).toBe(4);
    expect(checkFit(given).flagged).toBe(false);
  });
});

describe("how soon soundings say losing", () => {
  const space = uprightSpace({ area: 9, outside: 0.75, outsideDoubt: 0.1, sinkage: 0.03, lossLevel: 1.1 });
  const readAt = (minutes: readonly number[], rise: number) =>
    readSoundings({
      space,
      readings: minutes.map((minute) => ({ at: 60 * minute, level: 0.5 + rise * minute })),
      pumping: [],
      prior: likelyPrior(0.5),
    });

  it("not from water that stands: six soundings of one level in 18 minutes say holding", () => {
    const { verdict, chances } = readAt([0, 2, 6, 10, 14, 18], 0);
    expect(verdict.kind).toBe("holding");
    expect(chances.losing).toBeLessThan(0.5);
  });

  it("from three soundings of a level that rises a centimetre a minute", () => {
    expect(readAt([0, 4, 8], 0.01).chances.losing).toBeGreaterThan(0.95);
  });

  it("hardly from one: a boat with water in her need not be taking any", () => {
    expect(readAt([0], 0).chances.losing).toBeLessThan(0.85);
  });
});

describe("the space of a real boat", () => {
  const vessel = {
    kind: "floating",
    hull: { form: "box", length: 10, beam: 3, depth: 1.6, draught: 0.8 },
    compartments: [{ name: "hold", from: 3, to: 7, permeability: 0.85 }],
  } as const;

  it("of a box is the closed form's: area μ·l·B, sinkage 1/(L·B), lost where the deck edge goes under", () => {
    const space = spaceOf(vessel, "hold");
    expect(space.areas[10]).toBeCloseTo(0.85 * 4 * 3, 9);
    expect(space.sinkage).toBeCloseTo(1 / 30, 9);
    expect(space.outside).toBeCloseTo(0.8, 12);
    expect(space.lossLevel).toBe(1.6);
  });

  it("is lost sooner, at the level the closed form gives, in a longer hold", () => {
    const space = spaceOf({ ...vessel, compartments: [{ name: "hold", from: 0, to: 10, permeability: 1 }] }, "hold");
    expect(space.lossLevel).toBeCloseTo(0.8, 6);
  });
});
