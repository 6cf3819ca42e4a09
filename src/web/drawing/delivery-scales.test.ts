import { describe, expect, it } from "vitest";
import { placeDelivery, type DeliveryDrawn } from "./delivery-scales.ts";

const FRAME = { left: 50, right: 450, top: 10, bottom: 310 };
const UNITS = {
  flow: { symbol: "L/min", of: (si: number) => si * 60_000 },
  head: { symbol: "m", of: (si: number) => si },
};
const flows = [0, 0.002, 0.004, 0.006, 0.008, 0.01];
const DRAWN: DeliveryDrawn = {
  points: flows.map((flow) => ({ flow, pumpHead: 20 - 2e5 * flow ** 2, rigHead: 5 + 1.75e5 * flow ** 2 })),
  operating: [{ flow: 0.00632455532, head: 12, stable: true }],
  flow: 0.00632455532,
  head: 12,
  band: { low: 0.006, high: 0.0066 },
};

describe("a delivery placed in its frame", () => {
  it("has no flow at the left edge, no head at the bottom, and the whole pump curve inside", () => {
    const { pump, rig } = placeDelivery(DRAWN, UNITS, FRAME);
    expect(pump[0]!.x).toBe(FRAME.left);
    expect(pump.at(-1)!.x).toBe(FRAME.right);
    expect(pump[0]!.y).toBeGreaterThan(FRAME.top);
    expect(pump[0]!.y).toBeLessThan(rig[0]!.y);
    expect(rig[0]!.y).toBeLessThan(FRAME.bottom);
  });

  it("puts the point where the curves cross, inside its band", () => {
    const { point, band, pump, rig } = placeDelivery(DRAWN, UNITS, FRAME);
    const before = flows.findLastIndex((flow) => flow <= DRAWN.flow);
    expect(pump[before]!.y).toBeLessThan(rig[before]!.y);
    expect(pump[before + 1]!.y).toBeGreaterThan(rig[before + 1]!.y);
    expect(point!.x).toBeGreaterThan(band!.from);
    expect(point!.x).toBeLessThan(band!.to);
  });

  it("draws no point and no band where nothing comes", () => {
    const none = placeDelivery({ ...DRAWN, operating: [], flow: 0, head: 20 }, UNITS, FRAME);
    expect([none.point, none.band, none.others]).toEqual([undefined, undefined, []]);
  });

  it("shows the point the suction does not let it reach, and the limit before it", () => {
    const limited = placeDelivery({ ...DRAWN, flow: 0.005, suctionLimit: 0.005 }, UNITS, FRAME);
    expect(limited.others.map(({ why }) => why)).toEqual(["not-fed"]);
    expect(limited.limit).toBeCloseTo(limited.point!.x, 9);
    expect(limited.others[0]!.x).toBeGreaterThan(limited.limit!);
  });

  it("tells a meeting that is passed through from one that is worked at", () => {
    const operating = [...DRAWN.operating, { flow: 0.001, head: 6, stable: false }];
    expect(placeDelivery({ ...DRAWN, operating }, UNITS, FRAME).others.map(({ why }) => why)).toEqual(["unstable"]);
  });

  it("has round figures in the person's units on its axes", () => {
    const { across, up } = placeDelivery(DRAWN, UNITS, FRAME);
    expect(across.map(({ label }) => label)).toContain("200");
    expect(up.map(({ label }) => label)).toContain("10");
  });
});
