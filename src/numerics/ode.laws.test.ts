import { describe, expect, it } from "vitest";
import { solveOde, type OdeProblem } from "./ode.ts";
import type { OdeEvent } from "./events.ts";

const swing: OdeProblem = {
  rate: (_t, y, out) => {
    out[0] = y[1]!;
    out[1] = -y[0]!;
  },
  from: 0,
  to: 10,
  start: [0, 1],
};

/** Global error with steps of fixed length: tolerances so loose that only `longestStep` binds. */
function errorWithSteps(h: number, method: "explicit" | "stiff"): number {
  const run = solveOde(swing, { relative: 1, absolute: 1, longestStep: h, method, maxAttempts: 1e6 });
  return Math.hypot(run.y[0]! - Math.sin(10), run.y[1]! - Math.cos(10));
}

function errorWithin(tolerance: number): number {
  return Math.abs(solveOde(swing, { relative: tolerance, absolute: tolerance }).y[0]! - Math.sin(10));
}

function crossing(more: Partial<OdeEvent> = {}): OdeEvent {
  return { name: "through zero", value: (_t, y) => y[0]!, direction: "either", terminal: false, ...more };
}

function measuredOrder(coarse: number, method: "explicit" | "stiff"): number {
  return Math.log2(errorWithSteps(coarse, method) / errorWithSteps(coarse / 2, method));
}

describe("measured convergence order", () => {
  it("the explicit method converges with order 5", () => {
    expect(measuredOrder(0.2, "explicit")).toBeGreaterThan(4.7);
    expect(measuredOrder(0.2, "explicit")).toBeLessThan(5.6);
  });

  it("the stiff method converges with order 3", () => {
    expect(measuredOrder(0.02, "stiff")).toBeGreaterThan(2.8);
    expect(measuredOrder(0.02, "stiff")).toBeLessThan(3.3);
  });

  it("the explicit interpolant converges with order 4 or better", () => {
    const [coarse, fine] = [0.4, 0.2].map((h) => {
      const run = solveOde(swing, { relative: 1, absolute: 1, longestStep: h, method: "explicit" });
      return Math.max(...Array.from({ length: 97 }, (_, i) => Math.abs(run.at(0.1 * i)[0]! - Math.sin(0.1 * i))));
    });
    expect(Math.log2(coarse! / fine!)).toBeGreaterThan(3.9);
  });
});

describe("adaptive steps", () => {
  it("tightening the tolerance by 1000 lowers the error by 100 or more", () => {
    expect(errorWithin(1e-9)).toBeLessThan(errorWithin(1e-6) / 100);
  });

  it("keeps a linear invariant to rounding", () => {
    const split: OdeProblem = {
      rate: (_t, y, out) => {
        const flow = Math.sqrt(Math.abs(y[0]! - y[1]!)) * Math.sign(y[0]! - y[1]!);
        out[0] = -flow;
        out[1] = flow;
      },
      from: 0,
      to: 1,
      start: [3, 1],
    };
    const { y } = solveOde(split, { relative: 1e-4 });
    expect(Math.abs(y[0]! + y[1]! - 4)).toBeLessThan(1e-14);
  });

  it("turns to the stiff method where stability holds the steps short", () => {
    const fast: OdeProblem = {
      rate: (t, y, out) => {
        out[0] = -5000 * (y[0]! - Math.cos(t));
      },
      from: 0,
      to: 100,
      start: [0],
    };
    const run = solveOde(fast, { relative: 1e-5, absolute: 1e-7 });
    expect(run.kind).toBe("finished");
    expect(run.y[0]).toBeCloseTo(Math.cos(100) + Math.sin(100) / 5000, 5);
    expect(run.counters.steps).toBeLessThan(5000);
    const alone = solveOde(fast, { relative: 1e-5, absolute: 1e-7, method: "explicit" });
    expect(alone.kind).toBe("too-many-attempts");
  });
});

describe("events", () => {
  it("finds each crossing once, to the accuracy of the interpolant", () => {
    const run = solveOde(swing, { relative: 1e-10, absolute: 1e-12, events: [crossing()] });
    expect(run.crossings.map((found) => found.at)).toHaveLength(3);
    run.crossings.forEach((found, i) => expect(found.at).toBeCloseTo((i + 1) * Math.PI, 7));
  });

  it("hears only the direction asked for", () => {
    const run = solveOde(swing, { events: [crossing({ direction: "rising" })] });
    expect(run.crossings).toHaveLength(1);
    expect(run.crossings[0]!.at).toBeCloseTo(2 * Math.PI, 4);
  });

  it("stops at a terminal event and can go on from there without meeting it again", () => {
    const first = solveOde(swing, { events: [crossing({ terminal: true })] });
    expect(first.kind).toBe("stopped");
    expect(first.t).toBeCloseTo(Math.PI, 5);
    const second = solveOde({ ...swing, from: first.t, start: first.y }, { events: [crossing({ terminal: true })] });
    expect(second.t).toBeCloseTo(2 * Math.PI, 4);
  });

  it("two at one place are both met, whichever ends the run; what lies further on is not", () => {
    const twin = crossing({ terminal: true, name: "twin" });
    const later = { ...crossing({ name: "later" }), value: (_t: number, y: Float64Array) => y[0]! + 1e-6 };
    const run = solveOde(swing, { events: [later, crossing({ terminal: true }), twin] });
    expect(run.crossings.map(({ event }) => event.name).toSorted()).toEqual(["through zero", "twin"]);
  });
});

describe("outcomes that are not a finished run", () => {
  it("says so when the rate stops being finite", () => {
    const blows: OdeProblem = { rate: (_t, y, out) => void (out[0] = y[0]! ** 2), from: 0, to: 2, start: [1] };
    const run = solveOde(blows);
    expect(["not-finite", "step-too-small", "too-many-attempts"]).toContain(run.kind);
    expect(run.t).toBeLessThan(1.01);
  });

  it("says so when the rate is never finite", () => {
    const bad: OdeProblem = { rate: (_t, _y, out) => void (out[0] = Number.NaN), from: 0, to: 2, start: [1] };
    expect(solveOde(bad).kind).toBe("not-finite");
  });

  it("an empty span is finished at once", () => {
    const run = solveOde({ ...swing, to: 0 });
    expect(run.kind).toBe("finished");
    expect([...run.at(0)]).toEqual([0, 1]);
  });
});
