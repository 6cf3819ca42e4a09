import { describe, expect, it } from "vitest";
import { InputError } from "#base";
import { waterAt } from "#water";
import type { DeliveryCase } from "./delivery-case.ts";
import { deliveryAdvice, deliveryOf } from "./delivery.ts";
import { deliveryCurve, deliveryTable } from "./delivery-table.ts";
import { greatestSpeedRatio } from "./engine.ts";
import type { Hose } from "./hose.ts";
import { pumpCurve } from "./pump-curve.ts";
import { pumpingOf } from "./pumping.ts";
import { npshRequiredBy } from "./suction.ts";

const hose = (bore: number, length: number): Hose => ({
  bore,
  length,
  fittings: 2,
  resistance: { kind: "roughness", roughness: 1e-4 },
});
const RIG: DeliveryCase = {
  water: waterAt(288.15, 35),
  airPressure: 101_325,
  pump: {
    curve: [
      { flow: 0, head: 32 },
      { flow: 0.008, head: 26 },
      { flow: 0.015, head: 12 },
    ],
  },
  speedRatio: 1,
  lift: 3,
  suction: hose(0.076, 6),
  rise: 2,
  discharge: hose(0.065, 15),
  exitLoss: true,
  pumps: 1,
};

describe("what binds", () => {
  it("is the curve at a low lift", () => {
    expect(deliveryOf(RIG)).toMatchObject({ kind: "delivers", limit: "curve" });
  });

  it("is the suction where NPSH runs out, and the flow is what the suction feeds", () => {
    const thirsty = { ...RIG, pump: { ...RIG.pump, npshRequired: [{ flow: 0.01, head: 5 }] }, lift: 4 };
    const answer = deliveryOf(thirsty);
    expect(answer).toMatchObject({ kind: "suction-limited", limit: "suction" });
    expect(answer.flow).toBeLessThan(deliveryOf({ ...RIG, lift: 4 }).flow);
    expect(answer.because).toContain("curve alone would give");
  });

  it("is the suction altogether where lift passes what the air can push up", () => {
    expect(deliveryOf({ ...RIG, lift: 10.3, rise: 0 })).toMatchObject({
      kind: "cannot-lift",
      limit: "suction",
      flow: 0,
    });
  });

  it("is the height where the pump's shut-off head is passed", () => {
    const answer = deliveryOf({ ...RIG, rise: 40 });
    expect(answer).toMatchObject({ kind: "cannot-lift", limit: "height", flow: 0, head: 32 });
    expect(answer.because).toBe("the pump gives 32.0 m at no flow and the rig needs 43.0 m");
  });

  it("takes a stated greatest lift as lift and losses together, and none is left at that lift", () => {
    const stated = { ...RIG, pump: { ...RIG.pump, greatestLift: 7 }, water: waterAt(293.15, 0) };
    expect(deliveryOf({ ...stated, lift: 6.9 }).kind).toBe("suction-limited");
    expect(deliveryOf({ ...stated, lift: 7.001 }).kind).toBe("cannot-lift");
    expect(deliveryOf({ ...stated, lift: 6.99 }).flow).toBeLessThan(deliveryOf({ ...stated, lift: 6 }).flow);
  });

  it("is never the suction for a pump that stands in the water", () => {
    const { suction, ...sunk } = RIG;
    expect(suction).toBeDefined();
    expect(deliveryOf({ ...sunk, lift: 20, rise: 0 })).toMatchObject({ kind: "delivers", suctionLoss: 0 });
  });
});

describe("pump curves", () => {
  it("take one, two, three or many points", () => {
    expect(pumpCurve([{ flow: 0.01, head: 20 }]).form).toBe("one-point");
    expect(pumpCurve(RIG.pump.curve.slice(0, 2)).form).toBe("segments");
    expect(pumpCurve(RIG.pump.curve).form).toBe("three-point");
    expect(pumpCurve([...RIG.pump.curve, { flow: 0.018, head: 2 }]).form).toBe("segments");
    expect(pumpCurve([...RIG.pump.curve, { flow: 0.018, head: 2 }], "smooth").form).toBe("smooth");
  });

  it("go through their points in every form", () => {
    const many = [...RIG.pump.curve, { flow: 0.018, head: 2 }];
    for (const points of [many.slice(0, 1 + 1), RIG.pump.curve, many]) {
      const curve = pumpCurve(points);
      for (const { flow, head } of points) expect(curve.head(flow)).toBeCloseTo(head, 10);
    }
  });

  it("name every fault", () => {
    expect(codesOf(() => pumpCurve([]))).toEqual(["HY-101"]);
    expect(codesOf(() => pumpCurve([{ flow: 0, head: 5 }]))).toEqual(["HY-105"]);
    expect(
      codesOf(() =>
        pumpCurve([
          { flow: -1, head: -2 },
          { flow: -1, head: 5 },
        ]),
      ),
    ).toEqual(["HY-102", "HY-103", "HY-102", "HY-104"]);
    expect(
      codesOf(() =>
        pumpCurve([
          { flow: 0, head: 5 },
          { flow: 1, head: 6 },
        ]),
      ),
    ).toEqual(["HY-106"]);
  });

  it("that droop give two operating points, the greater one stable, and say so", () => {
    const curve = [
      { flow: 0, head: 9 },
      { flow: 0.004, head: 11 },
      { flow: 0.01, head: 4 },
    ];
    const answer = pumpingOf({ ...RIG, pump: { curve }, lift: 0, rise: 9.5, discharge: hose(0.1, 5) });
    expect(answer.points.map((point) => point.stable)).toEqual([true, false]);
    expect(answer.because).toContain("droops");
    expect(answer.flow).toBe(answer.points[0]!.flow);
  });
});

describe("NPSH required", () => {
  it("never falls, is flat before its first point and grows with the square of flow beyond its last", () => {
    const required = npshRequiredBy({
      npshRequired: [
        { flow: 0.002, head: 2 },
        { flow: 0.004, head: 1.5 },
        { flow: 0.01, head: 4 },
      ],
    });
    expect(required.at(0)).toBe(2);
    expect(required.at(0.004)).toBe(2);
    expect(required.at(0.02)).toBeCloseTo(16, 12);
  });
});

describe("what was assumed", () => {
  it("is said where nothing is known of the suction, with how much it matters", () => {
    const effects = deliveryOf({ ...RIG, lift: 7 })
      .assumptions.map((one) => one.effect)
      .join("\n");
    expect(effects).toContain("the suction would bind");
    expect(what(RIG)).toContain("Nothing is known of the pump's suction");
  });

  it("is said where the curve was drawn on beyond its points", () => {
    const open = { ...RIG, lift: 0, rise: -3, discharge: hose(0.15, 2), suction: hose(0.15, 2) };
    expect(what(open)).toContain("beyond the pump's last point");
    const before = [
      { flow: 0.01, head: 20 },
      { flow: 0.015, head: 12 },
    ];
    expect(what({ ...RIG, pump: { curve: before }, rise: 20 })).toContain("before the pump's first point");
  });
});

describe("the band", () => {
  it("holds the answer and shuts at no flow", () => {
    const { band, flow } = deliveryOf(RIG);
    expect(band.low).toBeLessThan(flow);
    expect(band.high).toBeGreaterThan(flow);
    expect((band.high - band.low) / (4 * band.uncertainty)).toBeCloseTo(1, 9);
    expect(deliveryOf({ ...RIG, rise: 40 }).band).toEqual({ low: 0, high: 0, uncertainty: 0 });
  });

  it("agrees with moving each figure by its uncertainty and solving again", () => {
    const { band, flow, head } = deliveryOf(RIG);
    const moved = (change: Partial<DeliveryCase>): number => pumpingOf({ ...RIG, ...change }).flow - flow;
    const points = RIG.pump.curve.map((point) => ({ ...point, head: point.head + 0.05 * head }));
    const byHead = moved({ pump: { curve: points } });
    const byHeight = moved({ rise: RIG.rise - 0.15 });
    expect(band.uncertainty).toBeGreaterThan(0.95 * Math.hypot(byHead, byHeight));
    expect(band.uncertainty).toBeLessThan(2.5 * Math.hypot(byHead, byHeight));
  });
});

describe("advice", () => {
  it("is ranked by gain, and every gain is real", () => {
    const advice = deliveryAdvice(RIG);
    expect(advice.length).toBeGreaterThan(1);
    const gains = advice.map((one) => one.gain);
    expect(gains).toEqual([...gains].sort((one, other) => other - one));
    const shorter = advice.find((one) => one.kind === "shorten-discharge")!;
    const length = RIG.discharge.length - shorter.by;
    expect(pumpingOf({ ...RIG, discharge: { ...RIG.discharge, length } }).flow).toBeCloseTo(shorter.flow, 12);
  });

  it("puts the suction first where the suction binds, and throttles back without losing flow", () => {
    const thirsty = { ...RIG, pump: { ...RIG.pump, npshRequired: [{ flow: 0.01, head: 5 }] }, lift: 4.5 };
    const advice = deliveryAdvice(thirsty);
    expect(advice[0]!.kind).toMatch(/suction|lower-pump/);
    const back = advice.find((one) => one.kind === "throttle-back")!;
    const slower = pumpingOf({ ...thirsty, speedRatio: 1 - back.by });
    expect(slower.flow / pumpingOf(thirsty).flow).toBeCloseTo(1, 2);
  });

  it("opens the throttle where it is not open", () => {
    expect(deliveryAdvice({ ...RIG, speedRatio: 0.7 })[0]!.kind).toBe("open-throttle");
  });
});

describe("table and picture", () => {
  it("give flow at 1 to 7 m of lift, falling", () => {
    const rows = deliveryTable(RIG);
    expect(rows.map((row) => row.lift)).toEqual([1, 2, 3, 4, 5, 6, 7]);
    expect(rows[2]!.flow).toBe(deliveryOf(RIG).flow);
    expect(rows.every((row, i) => i === 0 || row.flow < rows[i - 1]!.flow)).toBe(true);
  });

  it("cross at the operating point and mark the suction limit", () => {
    const thirsty = { ...RIG, pump: { ...RIG.pump, npshRequired: [{ flow: 0.01, head: 5 }] }, lift: 4 };
    const picture = deliveryCurve(thirsty, 200);
    expect(picture.points).toHaveLength(200);
    expect(picture.suctionLimit).toBeCloseTo(picture.delivery.flow, 9);
    const before = picture.points.filter((point) => point.flow < picture.delivery.flow);
    expect(before.every((point) => point.pumpHead > point.rigHead)).toBe(true);
    expect(deliveryCurve(RIG)).not.toHaveProperty("suctionLimit");
  });
});

describe("engines", () => {
  it("hold full speed at sea level and less where the air is thin and hot", () => {
    expect(greatestSpeedRatio(101_325, 288.15)).toBe(1);
    expect(greatestSpeedRatio(84_560, 303.15)).toBeLessThan(0.95);
  });
});

describe("bad input", () => {
  it("is refused with every fault, named as the question names its fields", () => {
    const broken: DeliveryCase = {
      ...RIG,
      water: { density: Number.NaN, viscosity: 0, vapourPressure: Number.NaN },
      airPressure: 1,
      pump: { curve: RIG.pump.curve, npshRequired: [{ flow: -1, head: 2 }], greatestLift: 50 },
      speedRatio: 3,
      lift: 99,
      rise: 999,
      pumps: 1.5,
    };
    const fields = faultsOf(() => deliveryOf(broken)).map((fault) => fault.field);
    expect(fields).toEqual([
      "pump.npshRequired[0].flow",
      "pump.greatestLift",
      "water.density",
      "water.viscosity",
      "water.vapourPressure",
      "air.pressure",
      "throttle",
      "suction.lift",
      "discharge.rise",
      "pumpsInParallel",
    ]);
  });
});

function faultsOf(act: () => unknown) {
  try {
    act();
  } catch (thrown) {
    if (thrown instanceof InputError) return thrown.faults;
  }
  return [];
}
function codesOf(act: () => unknown): string[] {
  return faultsOf(act).map((fault) => fault.code);
}
function what(given: DeliveryCase): string {
  return deliveryOf(given)
    .assumptions.map((one) => one.what)
    .join("\n");
}
