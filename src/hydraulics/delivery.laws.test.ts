import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { waterAt } from "#water";
import { prepareCase, type DeliveryCase } from "./delivery-case.ts";
import { deliveryOf } from "./delivery.ts";
import type { Hose } from "./hose.ts";
import type { PumpPoint } from "./pump-curve.ts";
import { pumpingOf } from "./pumping.ts";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const resistance: fc.Arbitrary<Hose["resistance"]> = fc.oneof(
  between(0, 4e-4).map((roughness) => ({ kind: "roughness" as const, roughness })),
  between(60, 150).map((coefficient) => ({ kind: "hazen-williams" as const, coefficient })),
  between(0.5, 30).map((coefficient) => ({ kind: "fire-hose" as const, coefficient })),
);
const hose: fc.Arbitrary<Hose> = fc.record({
  bore: between(0.02, 0.15),
  length: between(1, 60),
  fittings: between(0, 8),
  resistance,
});

const falling: fc.Arbitrary<readonly PumpPoint[]> = fc
  .tuple(between(0.002, 0.03), between(8, 60), between(1, 3), fc.integer({ min: 1, max: 7 }))
  .map(([flow, head, bend, count]) =>
    Array.from({ length: count }, (_, i) => (count === 1 ? 0.5 : i / (count - 1))).map((share) => ({
      flow: flow * share,
      head: head * (1 - 0.85 * share ** bend),
    })),
  );

const npshRequired = fc.option(
  fc.tuple(between(0.5, 3), between(0, 4), between(0.005, 0.03)).map(([rest, more, flow]) => [
    { flow: 0, head: rest },
    { flow: flow / 2, head: rest + more / 3 },
    { flow, head: rest + more },
  ]),
  { nil: undefined },
);

const rig: fc.Arbitrary<DeliveryCase> = fc
  .record({
    temperature: between(273.15, 313.15),
    salinity: between(0, 42),
    airPressure: between(80_000, 105_000),
    curve: falling,
    between: fc.constantFrom("straight" as const, "smooth" as const),
    npshRequired,
    greatestLift: fc.option(between(3, 9), { nil: undefined }),
    speedRatio: between(0.3, 1),
    lift: between(-2, 8),
    suction: fc.option(hose, { nil: undefined, freq: 8 }),
    rise: between(-1, 10),
    discharge: hose,
    exitLoss: fc.boolean(),
    pumps: fc.integer({ min: 1, max: 3 }),
  })
  .map(({ temperature, salinity, curve, between: how, npshRequired: points, greatestLift, suction, ...rest }) => ({
    ...rest,
    water: waterAt(temperature, salinity),
    pump: {
      curve,
      between: how,
      ...(points === undefined ? {} : { npshRequired: points }),
      ...(greatestLift === undefined ? {} : { greatestLift }),
    },
    ...(suction === undefined ? {} : { suction }),
  }));

const SEED = { seed: 20_260_302, numRuns: 2000 };
/** Flows are found to about 1e-10 m of head; what that leaves open in flow, generously [m³/s]. */
const SLACK = 1e-9;

const flowOf = (one: DeliveryCase): number => pumpingOf(one).flow;
const longer = (one: Hose, by: number): Hose => ({ ...one, length: one.length + by });
const wider = (one: Hose, by: number): Hose => ({ ...one, bore: one.bore * by });

describe("flow never rises", () => {
  it.each([
    ["with more lift", (one: DeliveryCase, x: number) => ({ ...one, lift: one.lift + 3 * x })],
    ["with more rise", (one: DeliveryCase, x: number) => ({ ...one, rise: one.rise + 5 * x })],
    ["with a longer suction hose", (one: DeliveryCase, x: number) => withSuction(one, (was) => longer(was, 30 * x))],
    [
      "with a longer discharge hose",
      (one: DeliveryCase, x: number) => ({ ...one, discharge: longer(one.discharge, 50 * x) }),
    ],
    ["with less throttle", (one: DeliveryCase, x: number) => ({ ...one, speedRatio: one.speedRatio * (1 - 0.6 * x) })],
    ["with thinner air", (one: DeliveryCase, x: number) => ({ ...one, airPressure: one.airPressure * (1 - 0.2 * x) })],
    [
      "with a narrower suction hose",
      (one: DeliveryCase, x: number) => withSuction(one, (was) => wider(was, 1 - 0.6 * x)),
    ],
    [
      "with a narrower discharge hose",
      (one: DeliveryCase, x: number) => ({ ...one, discharge: wider(one.discharge, 1 - 0.6 * x) }),
    ],
  ])("%s", (_, change) => {
    fc.assert(
      fc.property(rig, between(0, 1), (one, x) => {
        expect(flowOf(change(one, x))).toBeLessThanOrEqual(flowOf(one) + SLACK);
      }),
      SEED,
    );
  });
});

describe("flow never jumps", () => {
  it.each([
    ["in lift", (one: DeliveryCase, x: number) => ({ ...one, lift: one.lift + 1e-7 * x })],
    ["in suction length", (one: DeliveryCase, x: number) => withSuction(one, (was) => longer(was, 1e-7 * x))],
    ["in discharge length", (one: DeliveryCase, x: number) => ({ ...one, discharge: longer(one.discharge, 1e-7 * x) })],
    [
      "in discharge bore",
      (one: DeliveryCase, x: number) => ({ ...one, discharge: wider(one.discharge, 1 + 1e-8 * x) }),
    ],
    ["in throttle", (one: DeliveryCase, x: number) => ({ ...one, speedRatio: one.speedRatio * (1 - 1e-8 * x) })],
  ])("%s", (_, change) => {
    fc.assert(
      fc.property(rig, (one) => {
        // Near no flow the flow goes like a root of the head left, so a step of 1e-7 m may move it by its root.
        expect(Math.abs(flowOf(change(one, 1)) - flowOf(one))).toBeLessThan(2e-5);
      }),
      SEED,
    );
  });
});

describe("every answer", () => {
  it("balances: heads add up, the residual is below 1e-9 m, all is finite", () => {
    fc.assert(
      fc.property(rig, (one) => {
        const answer = deliveryOf(one);
        const numbers = Object.values(answer).filter((value) => typeof value === "number");
        expect(numbers.every(Number.isFinite)).toBe(true);
        expect(Math.abs(answer.residual)).toBeLessThan(1e-9);
        expect(answer.flow).toBeGreaterThanOrEqual(0);
        expect(answer.band.low).toBeLessThanOrEqual(answer.flow);
        expect(answer.band.high).toBeGreaterThanOrEqual(answer.flow);
        if (answer.kind === "cannot-lift") return;
        const needed = one.lift + one.rise + answer.suctionLoss + answer.dischargeLoss;
        expect(Math.abs(answer.head - needed)).toBeLessThan(1e-8);
      }),
      SEED,
    );
  });

  it("is suction-limited exactly where NPSH required would not be met", () => {
    fc.assert(
      fc.property(rig, (one) => {
        const answer = pumpingOf(one);
        if (!one.suction || answer.kind === "cannot-lift") return;
        const margin = answer.npshAvailable - answer.npshRequired;
        if (answer.kind === "delivers") expect(margin).toBeGreaterThanOrEqual(0);
        else expect(Math.abs(margin)).toBeLessThan(1e-9);
      }),
      SEED,
    );
  });

  it("does not change what it was given", () => {
    fc.assert(
      fc.property(rig, (one) => {
        const before = JSON.stringify(one);
        deliveryOf(one);
        expect(JSON.stringify(one)).toBe(before);
      }),
      { ...SEED, numRuns: 200 },
    );
  });

  it("two pumps give more than one and less than twice as much", () => {
    fc.assert(
      fc.property(rig, (one) => {
        const single = flowOf({ ...one, pumps: 1 });
        const pair = flowOf({ ...one, pumps: 2 });
        expect(pair).toBeGreaterThanOrEqual(single - SLACK);
        expect(pair).toBeLessThanOrEqual(2 * single + SLACK);
      }),
      SEED,
    );
  });
});

describe("drooping curves", () => {
  const drooping = fc.tuple(between(0.002, 0.02), between(8, 30), between(0.02, 0.3)).map(([flow, head, droop]) => [
    { flow: 0, head: head * (1 - droop) },
    { flow: flow * 0.3, head },
    { flow: flow * 0.7, head: head * 0.8 },
    { flow, head: head * 0.3 },
  ]);

  it("have stable and unstable points in turn, all balanced, the greatest flow stable", () => {
    fc.assert(
      fc.property(rig, drooping, between(0.7, 1.1), (one, curve, share) => {
        const summit = curve[1]!.head * one.speedRatio ** 2;
        const given = { ...one, pump: { curve }, lift: 0, rise: Math.min(300, share * summit) };
        const { points } = pumpingOf(given);
        const prepared = prepareCase(given);
        expect(points.map((point) => point.stable)).toEqual(points.map((_, i) => i % 2 === 0));
        for (const point of points) expect(Math.abs(prepared.excess(point.flow))).toBeLessThan(1e-9);
      }),
      SEED,
    );
  });
});

function withSuction(one: DeliveryCase, change: (was: Hose) => Hose): DeliveryCase {
  return one.suction ? { ...one, suction: change(one.suction) } : one;
}
