import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { InputError } from "#base";
import { waterAt } from "#water";
import { COLEBROOK, FrictionFactor, SWAMEE_JAIN, colebrookFriction } from "./friction.ts";
import { narrowingLoss, wideningLoss } from "./fittings.ts";
import { hoseLoss, prepareHose, type Hose } from "./hose.ts";

const WATER = waterAt(288.15, 0);
const HOSE: Hose = { bore: 0.065, length: 20, fittings: 1.5, resistance: { kind: "roughness", roughness: 1e-4 } };
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe("friction factor", () => {
  it("solves Colebrook-White to 1e-12", () => {
    fc.assert(
      fc.property(between(3.4, 8), between(0, 0.1), (logReynolds, rough) => {
        const reynolds = 10 ** logReynolds;
        const x = 1 / Math.sqrt(colebrookFriction(reynolds, rough));
        const miss = x + 2 * Math.log10(rough / 3.7 + (2.51 * x) / reynolds);
        expect(Math.abs(miss)).toBeLessThan(1e-12 * x);
      }),
      { seed: 20_260_310, numRuns: 1000 },
    );
  });

  it.each([
    ["Colebrook-White", COLEBROOK],
    ["Swamee-Jain", SWAMEE_JAIN],
  ])("joins laminar and turbulent flow without a jump or a kink: %s", (_, law) => {
    for (const rough of [0, 1e-4, 0.01, 0.05]) {
      const factor = new FrictionFactor(rough, law);
      const friction = (reynolds: number): number => factor.at(reynolds);
      for (const edge of [2000, 4000]) {
        expect(friction(edge * (1 + 1e-9)) - friction(edge * (1 - 1e-9))).toBeCloseTo(0, 9);
        const slope = (from: number, to: number): number => (friction(to) - friction(from)) / (to - from);
        expect(slope(edge, edge + 1e-2)).toBeCloseTo(slope(edge - 1e-2, edge), 8);
      }
    }
  });

  it("is 64/Re below 2000", () => {
    expect(new FrictionFactor(0.01).at(1000)).toBe(0.064);
  });
});

describe("hose loss", () => {
  it("is none at no flow, and rises with flow through every regime", () => {
    const line = prepareHose(HOSE, WATER);
    expect(line.loss(0)).toBe(0);
    const flows = Array.from({ length: 400 }, (_, i) => 1e-6 * 1.03 ** i);
    const losses = flows.map((flow) => line.loss(flow));
    expect(losses.every((head, i) => i === 0 || head > losses[i - 1]!)).toBe(true);
  });

  it("adds fittings as velocity heads", () => {
    const bare = hoseLoss({ ...HOSE, fittings: 0 }, 0.01, WATER);
    const dressed = hoseLoss({ ...HOSE, fittings: 2 }, 0.01, WATER);
    expect(dressed.headLoss - bare.headLoss).toBeCloseTo((2 * bare.velocity ** 2) / (2 * 9.80665), 12);
  });

  it("gives a friction factor only where there is one", () => {
    expect(hoseLoss(HOSE, 0.01, WATER).frictionFactor).toBeGreaterThan(0.01);
    expect(hoseLoss(HOSE, 0, WATER)).not.toHaveProperty("frictionFactor");
    const hazen: Hose = { ...HOSE, resistance: { kind: "hazen-williams", coefficient: 140 } };
    expect(hoseLoss(hazen, 0.01, WATER)).not.toHaveProperty("frictionFactor");
  });

  it("gives about the same for a smooth hose by roughness and by Hazen-Williams 140", () => {
    const smooth: Hose = { ...HOSE, fittings: 0, resistance: { kind: "roughness", roughness: 1e-5 } };
    const hazen: Hose = { ...smooth, resistance: { kind: "hazen-williams", coefficient: 140 } };
    const ratio = hoseLoss(smooth, 0.008, WATER).headLoss / hoseLoss(hazen, 0.008, WATER).headLoss;
    expect(ratio).toBeGreaterThan(0.85);
    expect(ratio).toBeLessThan(1.15);
  });

  it("names every fault at once", () => {
    const broken: Hose = {
      bore: -1,
      length: 1e9,
      fittings: Number.NaN,
      resistance: { kind: "hazen-williams", coefficient: 5 },
    };
    expect(() => prepareHose(broken, WATER)).toThrow(InputError);
    expect(codesOf(() => hoseLoss(broken, -1, WATER))).toEqual(["HY-110", "HY-111", "HY-112", "HY-113", "HY-115"]);
    const rough: Hose = { ...HOSE, resistance: { kind: "roughness", roughness: 0.02 } };
    expect(codesOf(() => prepareHose(rough, WATER))).toEqual(["HY-109"]);
    const fire: Hose = { ...HOSE, resistance: { kind: "fire-hose", coefficient: 0 } };
    expect(codesOf(() => prepareHose(fire, WATER))).toEqual(["HY-116"]);
    const negative: Hose = { ...HOSE, resistance: { kind: "roughness", roughness: -1 } };
    expect(codesOf(() => prepareHose(negative, WATER))).toEqual(["HY-114"]);
  });
});

describe("changes of bore", () => {
  it("cost nothing where nothing changes and rise with the change", () => {
    expect(wideningLoss(0.05, 0.05)).toBe(0);
    expect(narrowingLoss(1)).toBe(0);
    expect(narrowingLoss(0.05)).toBe(narrowingLoss(0.1));
    expect(narrowingLoss(0.3)).toBeGreaterThan(narrowingLoss(0.7));
  });
});

function codesOf(act: () => unknown): string[] {
  try {
    act();
  } catch (thrown) {
    if (thrown instanceof InputError) return thrown.faults.map((fault) => fault.code);
  }
  return [];
}
