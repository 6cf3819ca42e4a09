import { describe, expect, it } from "vitest";
import { levelAfterSeconds, secondsBetween, strengthOfHole } from "#test/judges/held-flood.ts";
import { integral } from "#test/judges/quadrature.ts";
import { eventAt, levelAt, SHARP, steadyPump } from "#test/references/flood-readers.ts";
import { simulateFlood, type FloodCase, type FloodRun, type PlacedPump } from "./index.ts";

/* Pumps whose delivery changes with the lift or on the way. Nothing here is published: see the derivations. */

const CLOSE = 1e-7;
const HOLE = 0.005;
const K = strengthOfHole(HOLE);
const apart = (got: number, judged: number): number => Math.abs(got / judged - 1);

interface Space {
  readonly floor: number;
  readonly start: number;
  readonly outside: number;
  readonly hole?: number;
}

function flood(space: Space, pumps: readonly PlacedPump[], more: Partial<FloodCase> = {}): FloodRun {
  const compartments = [{ name: "hold", area: space.floor, level: space.start }];
  const opening = { kind: "hole", area: HOLE, height: space.hole ?? 0 } as const;
  return simulateFlood({
    vessel: { kind: "fixed", outsideLevel: space.outside, compartments },
    openings: space.hole === undefined ? [] : [{ name: "hole", into: "hold", opening }],
    pumps,
    duration: 3600,
    step: 60,
    accuracy: SHARP,
    ...more,
  });
}

const secondsTo = (space: Space, pumps: readonly PlacedPump[], level: number): number =>
  eventAt(flood(space, pumps, { marks: [{ compartment: "hold", level }] }), "mark");

/**
 * Q = Q₁ + s·(lift − l₁), lift = D − h, so Q = α + β·h with β = −s. With a constant inflow q from a hole in the air:
 * A·dh/dt = q − α − β·h, of which t = (A/β)·ln((α − q + β h₀)/(α − q + β h₁)).
 */
describe("DERIVED D7: a pump whose head curve is a straight line", () => {
  const points = [
    { lift: 1, flow: 0.02 },
    { lift: 2, flow: 0.016 },
    { lift: 4, flow: 0.002 },
  ];
  const discharge = 2.6;
  const pumps: PlacedPump[] = [
    {
      name: "kit",
      compartment: "hold",
      delivery: { kind: "table", points, dischargeHeight: discharge },
      suctionHeight: 0.05,
    },
  ];
  /** α and β of the stretch from one point to the next. */
  const stretch = (k: number): { readonly alpha: number; readonly beta: number } => {
    const [one, other] = [points[k]!, points[k + 1]!];
    const beta = (one.flow - other.flow) / (other.lift - one.lift);
    return { alpha: one.flow + beta * (one.lift - discharge), beta };
  };
  const seconds = (k: number, floor: number, inflow: number, from: number, to: number): number => {
    const { alpha, beta } = stretch(k);
    return (floor / beta) * Math.log((alpha - inflow + beta * from) / (alpha - inflow + beta * to));
  };
  const kink = discharge - points[1]!.lift;

  it("empties a tight space through both straight pieces", () => {
    const space = { floor: 10, start: 1.4, outside: 0 };
    const judged = seconds(0, 10, 0, 1.4, kink) + seconds(1, 10, 0, kink, 0.05);
    expect(apart(eventAt(flood(space, pumps), "suction-dry"), judged)).toBeLessThan(CLOSE);
    expect(apart(secondsTo(space, pumps, 0.9), seconds(0, 10, 0, 1.4, 0.9))).toBeLessThan(CLOSE);
  });

  it("settles exponentially where it delivers what a hole in the air lets in", () => {
    const inflow = K * Math.sqrt(1.1);
    const { alpha, beta } = stretch(1);
    const space = { floor: 2, start: 0.1, outside: 1.9, hole: 0.8 };
    const rest = (inflow - alpha) / beta;
    const run = flood(space, pumps);
    for (const at of [60, 300, 1200]) {
      const judged = rest + (0.1 - rest) * Math.exp((-beta * at) / 2);
      expect(apart(levelAt(run, at), judged)).toBeLessThan(CLOSE);
    }
  });

  it("with a drowned hole, t = ∫A dh/(K·√(H − h) − α − β h)", () => {
    const { alpha, beta } = stretch(0);
    const space = { floor: 8, start: 1.5, outside: 1.55, hole: 0 };
    const judged = integral((level) => 8 / (K * Math.sqrt(1.55 - level) - alpha - beta * level), 1.5, 1, 400);
    expect(apart(secondsTo(space, pumps, 1), judged)).toBeLessThan(CLOSE);
  });
});

/** Of an engine that starts at 120 s and runs 900 s between stops of 180 s. */
function secondsRun(at: number): number {
  const since = Math.max(0, at - 120);
  return 900 * Math.floor(since / 1080) + Math.min(900, since % 1080);
}

describe("DERIVED D8: a pump comes late, a patch goes on midway, an engine is refuelled", () => {
  it("Torricelli, then the logarithm, then a smaller hole pumped dry: each from where the last ended", () => {
    const [floor, outside, pumped] = [12, 1.4, 0.0115];
    const space = { floor, start: 0, outside, hole: 0 };
    const run = flood(space, [steadyPump(pumped, { from: 300 })], {
      changes: [{ kind: "opening-share", at: 900, opening: "hole", share: 0.35, says: "patched" }],
    });
    const open = { area: floor, strength: K, hole: 0, outside, pumped: 0 };
    const late = levelAfterSeconds(open, 0, 300, [0, 1]);
    const held = levelAfterSeconds({ ...open, pumped }, late, 600, [late, outside - (pumped / K) ** 2 - 1e-9]);
    const patched = { ...open, strength: 0.35 * K, pumped };
    expect(apart(levelAt(run, 300), late)).toBeLessThan(CLOSE);
    expect(apart(levelAt(run, 900), held)).toBeLessThan(CLOSE);
    expect(apart(eventAt(run, "suction-dry"), 900 + secondsBetween(patched, held, 0))).toBeLessThan(CLOSE);
  });

  it("stops for fuel: in a tight space what is left is the start less the minutes it ran", () => {
    const pump = steadyPump(0.004, { from: 120, refuel: { runtime: 900, pause: 180 } });
    const run = flood({ floor: 14, start: 1.2, outside: 0 }, [pump]);
    for (const at of [60, 600, 1080, 1200, 2100, 2220, 3600]) {
      expect(apart(levelAt(run, at), 1.2 - (0.004 * secondsRun(at)) / 14)).toBeLessThan(1e-12);
    }
  });
});
