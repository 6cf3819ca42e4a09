import { normalQuantile, repeatableStream } from "#numerics";
import { describe, expect, it } from "vitest";
import { spreadOf } from "./sounding-forecast.ts";
import { pickEvenly } from "./sounding-picks.ts";
import type { Posterior } from "./sounding-sampler.ts";

/** Points of two unknowns spread twice as wide as what is believed, weighted to a standard normal of each. */
function believed(count: number): Posterior {
  const draw = repeatableStream(0x91c);
  const points = Float64Array.from({ length: 2 * count }, () => 2 * normalQuantile(draw()));
  const raw = Float64Array.from({ length: count }, (_, n) =>
    Math.exp(-(3 / 8) * (points[2 * n]! ** 2 + points[2 * n + 1]! ** 2)),
  );
  const sum = raw.reduce((total, one) => total + one, 0);
  const weights = raw.map((one) => one / sum);
  return { points, weights, dimensions: 2, effective: count, rounds: 1, best: 0, bestLog: 0 };
}

describe("evenly spaced picks", () => {
  const belief = believed(8192);
  const picks = pickEvenly(belief, 1024, [0, 1]);

  it("pick each point as often as its weight says, rounded down or up", () => {
    const times = new Int32Array(belief.weights.length);
    for (const n of picks) times[n]! += 1;
    times.forEach((often, n) => expect(Math.abs(often - 1024 * belief.weights[n]!)).toBeLessThan(1 + 1e-3));
  });

  it.each([0, 1])("have the mean of unknown %s that all points have, ten times nearer than chance would", (place) => {
    let mean = 0;
    belief.weights.forEach((weight, n) => (mean += weight * belief.points[2 * n + place]!));
    const picked = Array.from(picks, (n) => belief.points[2 * n + place]!);
    const off = picked.reduce((sum, one) => sum + one, 0) / picked.length - mean;
    expect(Math.abs(off)).toBeLessThan(0.1 / Math.sqrt(1024));
    expect(spreadOf(picked).p95).toBeGreaterThan(1.5);
  });
});
