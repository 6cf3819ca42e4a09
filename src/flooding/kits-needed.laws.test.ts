import { describe, expect, it } from "vitest";
import { needKits, type CallForHelp } from "./index.ts";

const CALL: CallForHelp = {
  length: 10,
  kind: "motor boat",
  holeDiameter: 0.05,
  holeDepth: 0.4,
  arrival: 1800,
  delivery: 0.004,
  deliveryLogSpread: 0.2,
  onScene: 3 * 3600,
  burn: 0.0015 / 3600,
  fuelInKit: 0,
  can: 0.005,
};

describe("kits needed before launching", () => {
  it("a known hole's median inflow is the orifice's", () => {
    const { inflow } = needKits(CALL);
    const orifice = 0.6 * (Math.PI / 4) * 0.05 ** 2 * Math.sqrt(2 * 9.80665 * 0.4);
    expect(inflow.p50 / orifice).toBeCloseTo(1, 1);
    expect(needKits(CALL).noWorseThan).toBeGreaterThan(inflow.p95);
  });

  it("more kits never lower a chance, and a patch never raises the number of kits", () => {
    const { byKits, forHolding, forHoldingPatched } = needKits({ ...CALL, holeDiameter: 0.09 });
    byKits.slice(1).forEach((row, k) => expect(row.holding).toBeGreaterThanOrEqual(byKits[k]!.holding));
    expect(forHoldingPatched!).toBeLessThanOrEqual(forHolding ?? Infinity);
    byKits.forEach((row) => expect(row.gaining).toBeLessThanOrEqual(row.holding));
  });

  it("where no number of kits is likely to hold, none is named", () => {
    expect(needKits({ ...CALL, holeDiameter: 0.4 }).forHolding).toBeUndefined();
  });

  it("a measured rise stands in place of a guessed hole", () => {
    const slow = needKits({ ...CALL, rising: 1e-5 });
    const fast = needKits({ ...CALL, rising: 1e-3 });
    expect(fast.inflow.p50 / slow.inflow.p50).toBeCloseTo(100, 6);
  });

  it("a longer way leaves less chance of finding her afloat", () => {
    expect(needKits({ ...CALL, arrival: 7200 }).afloatOnArrival).toBeLessThan(needKits(CALL).afloatOnArrival);
  });

  it("asks only what is not known, people first", () => {
    const all = needKits({
      length: 10,
      kind: "open boat",
      arrival: 0,
      delivery: 0.004,
      deliveryLogSpread: 0.2,
      onScene: 3600,
      burn: 4e-7,
      fuelInKit: 0,
      can: 0.005,
    }).ask;
    expect(all[0]).toContain("people");
    expect(needKits(CALL).ask.length).toBeLessThan(all.length);
  });

  it("counts cans for the time on scene", () => {
    expect(needKits(CALL).cansPerKit).toBe(1);
    expect(needKits({ ...CALL, onScene: 7 * 3600 }).cansPerKit).toBe(3);
  });
});
