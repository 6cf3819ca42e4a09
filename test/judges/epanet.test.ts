import fc from "fast-check";
import { beforeAll, describe, expect, it, vi } from "vitest";
import type { Workspace } from "epanet-js";
import { pumpingOf, type DeliveryCase, type Hose, type PumpPoint } from "#hydraulics";
import { EPANET_FORMULAE, EPANET_VISCOSITY, judge, linkCount, openNetwork, startJudge } from "./epanet.ts";

/**
 * The open EPA network model (epanet-js) as judge: networks of one pump or two in parallel, both friction laws, every
 * form of curve, full and reduced speed. NPSH plays no part in it, so the rigs have a suction that never binds.
 */

const SEED = 20_260_301;
const NETWORKS = 240;

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

type Law = "D-W" | "H-W";
const hose = (law: Law): fc.Arbitrary<Hose> =>
  fc.record({
    bore: between(0.045, 0.15),
    length: between(3, 40),
    fittings: between(0, 5),
    resistance:
      law === "D-W"
        ? between(2e-5, 4e-4).map((roughness) => ({ kind: "roughness" as const, roughness }))
        : between(100, 150).map((coefficient) => ({ kind: "hazen-williams" as const, coefficient })),
  });

/** Falling points of each form: one, two, three from no flow, three from some flow, four, six. */
const FORMS = ["one", "two", "three", "three from some flow", "four", "six"] as const;
const curve = (form: (typeof FORMS)[number]): fc.Arbitrary<readonly PumpPoint[]> =>
  fc.tuple(between(0.006, 0.03), between(18, 45), between(1.4, 3)).map(([flow, head, bend]) => {
    const at = (share: number): PumpPoint => ({ flow: flow * share, head: head * (1 - 0.8 * share ** bend) });
    const shares = {
      one: [0.6],
      two: [0, 1],
      three: [0, 0.5, 1],
      "three from some flow": [0.1, 0.5, 1],
      four: [0, 0.3, 0.7, 1],
      six: [0, 0.2, 0.4, 0.6, 0.8, 1],
    };
    return shares[form].map(at);
  });

const rig = fc
  .record({ law: fc.constantFrom<Law>("D-W", "H-W"), form: fc.constantFrom(...FORMS) })
  .chain(({ law, form }) =>
    fc.record({
      water: fc.constant({ density: 1000, viscosity: EPANET_VISCOSITY * 1000, vapourPressure: -1e9 }),
      airPressure: fc.constant(101_325),
      pump: curve(form).map((points) => ({ curve: points })),
      speedRatio: fc.oneof(fc.constant(1), between(0.75, 1)),
      lift: between(-1, 4),
      suction: hose(law),
      rise: between(0, 4),
      discharge: hose(law),
      exitLoss: fc.boolean(),
      pumps: fc.constantFrom(1, 2),
    }),
  );

const rigs: readonly DeliveryCase[] = fc.sample(rig, { seed: SEED, numRuns: NETWORKS });

let workspace: Workspace;
beforeAll(async () => {
  // The judge warns on the console, once a network, of a duty beyond the pump's last point; it answers all the same.
  vi.spyOn(console, "warn").mockImplementation(() => undefined);
  workspace = await startJudge();
});

describe(`${NETWORKS} generated networks (seed ${SEED})`, () => {
  it("hold every form of curve, both laws, one and two pumps, full and reduced speed", () => {
    const counts = new Set(rigs.map((one) => one.pump.curve.length));
    expect([...counts].sort()).toEqual([1, 2, 3, 4, 6]);
    expect(new Set(rigs.map((one) => one.discharge.resistance.kind)).size).toBe(2);
    expect(rigs.filter((one) => one.pumps === 2).length).toBeGreaterThan(80);
    expect(rigs.filter((one) => one.speedRatio < 1).length).toBeGreaterThan(80);
  });

  it("reach the judge whole", () => {
    const project = openNetwork(workspace, { ...rigs[0]!, pumps: 2 });
    expect(linkCount(project)).toBe(5);
    project.close();
  });

  it("agree with the judge within 0.5 % of flow, with our own constants", () => {
    const deviations = rigs.map((one) => pumpingOf(one).flow / judge(workspace, one).flow - 1);
    expect(Math.max(...deviations.map(Math.abs))).toBeLessThan(0.005);
  });

  it("agree with the judge within 0.01 % of flow and head, with its constants", () => {
    for (const one of rigs) {
      const ours = pumpingOf(one, EPANET_FORMULAE);
      const theirs = judge(workspace, one);
      expect(Math.abs(ours.flow / theirs.flow - 1)).toBeLessThan(1e-4);
      expect(Math.abs(ours.head / theirs.head - 1)).toBeLessThan(1e-4);
    }
  });

  it("leave a residual below 1e-9 m at every operating point", () => {
    const residuals = rigs.flatMap((one) => [pumpingOf(one).residual, pumpingOf(one, EPANET_FORMULAE).residual]);
    expect(Math.max(...residuals.map(Math.abs))).toBeLessThan(1e-9);
  });
});

// Only curves that begin at no flow: the judge shuts a pump whose duty lies before its first point.
describe("thick water in narrow hoses (laminar and the join to turbulent flow)", () => {
  const slow = rigs
    .filter((one) => one.discharge.resistance.kind === "roughness" && startsAtNoFlow(one))
    .slice(0, 60)
    .map((one, i) => {
      const viscosity = EPANET_VISCOSITY * 1000 * (10 + 4 * i);
      return { ...one, water: { ...one.water, viscosity } };
    });

  it("agrees with the judge within 0.01 %, with its constants", () => {
    for (const one of slow) {
      const deviation = pumpingOf(one, EPANET_FORMULAE).flow / judge(workspace, one).flow - 1;
      expect(Math.abs(deviation)).toBeLessThan(1e-4);
    }
  });
});

function startsAtNoFlow({ pump: { curve } }: DeliveryCase): boolean {
  return curve.length === 1 || curve[0]!.flow === 0;
}
