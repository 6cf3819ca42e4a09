import { repeatableStream } from "#numerics";
import { describe, expect, it } from "vitest";
import {
  simulateFlood,
  type FloodCase,
  type FloodRun,
  type HullForm,
  type PlacedOpening,
  type PlacedPump,
} from "./index.ts";

/** A number drawn evenly on a logarithmic scale. */
function spread(draw: () => number, low: number, high: number): number {
  return low * (high / low) ** draw();
}

const between = (draw: () => number, low: number, high: number): number => low + (high - low) * draw();

const NAMES = ["fore", "middle", "after"] as const;

function randomFixed(draw: () => number): FloodCase {
  const count = 1 + Math.floor(3 * draw());
  const names = NAMES.slice(0, count);
  // Every other case starts or ends with equal levels: √head has no slope there.
  const outside = between(draw, 0.1, 2.5);
  const compartments = names.map((name) => ({
    name,
    area: spread(draw, 0.3, 60),
    permeability: between(draw, 0.5, 1),
    level: draw() < 0.5 ? outside : between(draw, 0, 2.5),
  }));
  return {
    vessel: { kind: "fixed", outsideLevel: outside, compartments },
    openings: randomOpenings(draw, names),
    pumps: randomPumps(draw, names),
    duration: spread(draw, 60, 7200),
    step: 3600,
  };
}

function randomFloating(draw: () => number, form: "box" | "wedge" | "family" | "wigley"): FloodCase {
  const length = spread(draw, 5, 25);
  const beam = length * between(draw, 0.25, 0.4);
  const depth = beam * between(draw, 0.4, 0.7);
  const size = { length, beam, depth, draught: depth * between(draw, 0.35, 0.7) };
  const hull: HullForm =
    form === "family" ? { form, ...size, blockCoefficient: between(draw, 0.35, 0.7) } : { form, ...size };
  const cut = length * between(draw, 0.3, 0.7);
  const compartments = [
    { name: "after", from: 0.05 * length, to: cut, permeability: between(draw, 0.6, 1) },
    { name: "fore", from: cut, to: 0.95 * length, permeability: between(draw, 0.6, 1) },
  ];
  const names = ["after", "fore"];
  return {
    vessel: { kind: "floating", hull, compartments, lostWhen: draw() < 0.5 ? "deck-edge" : "foundered" },
    openings: randomOpenings(draw, names),
    pumps: randomPumps(draw, names),
    duration: spread(draw, 60, 3600),
    step: 3600,
  };
}

function randomOpenings(draw: () => number, names: readonly string[]): PlacedOpening[] {
  const openings: PlacedOpening[] = names.map((into, i) => {
    const from = draw() < 0.4 && i > 0 ? { from: names[i - 1]! } : {};
    const height = between(draw, 0.02, 1.2);
    if (draw() < 0.3) {
      const opening = { kind: "slot", width: spread(draw, 0.01, 1), sill: height, top: height + 0.3 } as const;
      return { name: `slot ${i}`, into, opening, ...from };
    }
    return { name: `hole ${i}`, into, opening: { kind: "hole", area: spread(draw, 1e-4, 0.3), height }, ...from };
  });
  return openings;
}

function randomPumps(draw: () => number, names: readonly string[]): PlacedPump[] {
  return names
    .filter(() => draw() < 0.6)
    .map((compartment) => ({
      name: `pump ${compartment}`,
      compartment,
      delivery: { kind: "steady", flow: spread(draw, 1e-4, 0.05) },
      from: draw() < 0.5 ? 0 : between(draw, 0, 600),
      ...(draw() < 0.3 ? { refuel: { runtime: 900, pause: 120 } } : {}),
    }));
}

/** Seconds on a quiet machine; a busy one gets minutes [ms]. */
const PATIENCE = 300_000;

function judge(run: FloodRun, given: FloodCase, label: string): void {
  const numbers = run.series.flatMap((sample) => [
    ...Object.values(sample.water),
    ...Object.values(sample.levels),
    sample.inflow,
    sample.pumped,
    ...Object.values(sample.attitude ?? {}),
  ]);
  expect(numbers.every(Number.isFinite), `${label}: every number finite`).toBe(true);
  const most = Math.max(1, ...run.series.map((sample) => Math.abs(sample.inflow) * given.duration));
  expect(Math.abs(run.volumeError), `${label}: volume kept`).toBeLessThan(1e-9 * most);
  expect(run.counters.steps, `${label}: steps`).toBeLessThan(20_000);
  expect(run.outcome.kind, `${label}: ${run.outcome.because}`).not.toBe("gave-up");
}

function judgeMany(count: number, seed: number, make: (draw: () => number) => FloodCase): void {
  for (let n = 0; n < count; n += 1) {
    const given = make(repeatableStream(seed * 1_000_003 + n));
    judge(simulateFlood(given), given, `seed ${seed}, case ${n}`);
  }
}

describe("random valid vessels and openings: finite, bounded, no water lost", () => {
  it.each([1, 2, 3, 4, 5, 6, 7])(
    "14,200 of upright spaces at a held level, part %i",
    (part) => {
      judgeMany(14_200, part, randomFixed);
    },
    PATIENCE,
  );

  it("500 box boats", () => judgeMany(500, 11, (draw) => randomFloating(draw, "box")), PATIENCE);
  it("200 wedge boats", () => judgeMany(200, 12, (draw) => randomFloating(draw, "wedge")), PATIENCE);
  it("30 rounded boats", () => judgeMany(30, 13, (draw) => randomFloating(draw, "family")), PATIENCE);
  it("30 Wigley hulls", () => judgeMany(30, 14, (draw) => randomFloating(draw, "wigley")), PATIENCE);
});

describe("the time step", () => {
  const given = randomFloating(repeatableStream(5), "box");
  const waterWith = (relative: number): number =>
    simulateFlood({ ...given, accuracy: { relative, absolute: relative * 1e-2 } }).series.at(-1)!.water.after!;

  it("refined a thousandfold gives the same answer to its tolerance", () => {
    expect(waterWith(1e-6) / waterWith(1e-9)).toBeCloseTo(1, 5);
  });

  it("the answer does not depend on how often the series is sampled", () => {
    const [often, seldom] = [1, 600].map((step) => simulateFlood({ ...given, step }).series.at(-1)!.water.after!);
    expect(often! / seldom!).toBeCloseTo(1, 12);
  });
});
