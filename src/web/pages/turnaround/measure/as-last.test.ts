import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { loadPattern } from "#kit";
import type { KitState } from "#readiness";
import { fetchWords } from "#words";
import { lastRig } from "./as-last.ts";

const words = await fetchWords("en", "turnaroundMeasure");
const folder = join(import.meta.dirname, "../../../../../patterns");
const petrol = loadPattern(readFileSync(join(folder, "brinnet-450@2.yaml"), "utf8"), "brinnet-450@2.yaml");
const MEASURED = { step: "measure-delivery", method: "timed-fill", lift: 2, rise: 1.5, throttle: 1, readings: {} };

function kit(...measured: object[]): KitState {
  return { turnarounds: measured.map((one) => ({ measured: [one] })) } as unknown as KitState;
}

const rig = (...measured: object[]) =>
  lastRig(kit(...measured), petrol, "measure-delivery", { units: "metric", words });

describe("the rig of the last delivery", () => {
  it("is heights, hoses, throttle and way of measuring, and nothing that was read", () => {
    const last = rig({ ...MEASURED, lift: 3 }, MEASURED)!;
    expect(last.said.replaceAll("\u00a0", " ")).toBe(
      "lift 2.00 m, rise 1.50 m, the kit's own hoses, full throttle, timed fill of a drum",
    );
    expect(last.draft).toMatchObject({ method: "timed-fill", hoses: "packed", speed: "full" });
    expect(Object.keys(last.draft.boxes)).toEqual(["lift", "rise"]);
  });

  it("is not offered where other hoses were on, it ran slower, or nothing was measured at that line", () => {
    expect(rig({ ...MEASURED, dischargeLength: 3 })).toBeUndefined();
    expect(rig({ ...MEASURED, throttle: 0.8 })).toBeUndefined();
    expect(rig({ ...MEASURED, step: "another" })).toBeUndefined();
    expect(rig()).toBeUndefined();
  });
});
