import { repeatableStream } from "#numerics";
import { describe, expect, it } from "vitest";
import { bestInterval, standbyOf } from "./index.ts";
import type { StandbyCase } from "./standby-case.ts";

const CASE: StandbyCase = {
  life: { shape: 1, scale: 1000 },
  interval: 500,
  testTime: 5,
  repairTime: 20,
  demandFailure: 0.02,
  harm: 0.01,
};

/** Mean time lost to hidden faults over so many intervals, played one by one [1]. */
function played({ life, interval, testTime, repairTime, demandFailure, harm = 0 }: StandbyCase, missed: number) {
  const random = repeatableStream(5);
  const ROUNDS = 400_000;
  let [lost, found, after] = [0, 0, "good" as "good" | "mended" | "left"];
  for (let i = 0; i < ROUNDS; i += 1) {
    const stretch = interval - testTime - (after === "mended" ? repairTime : 0);
    const came = after === "left" || random() < harm ? 0 : -life.scale * Math.log(1 - random());
    lost += Math.max(0, stretch - came);
    const isThere = came < stretch;
    const isFound = isThere ? random() >= missed : random() < demandFailure;
    found += isFound ? 1 : 0;
    after = isFound ? "mended" : isThere ? "left" : "good";
  }
  return { hidden: lost / ROUNDS / interval, found: found / ROUNDS };
}

describe("tests that may overlook a hidden fault, each afresh", () => {
  it("are exact where none does", () => {
    const [one, other] = [standbyOf(CASE), standbyOf({ ...CASE, missed: 0 })];
    expect(other.unavailability).toBeCloseTo(one.unavailability, 14);
    expect(other.faultFound).toBeCloseTo(one.faultFound, 14);
  });

  it("agree with 400 000 intervals played one by one", () => {
    for (const missed of [0.1, 0.4, 0.8]) {
      const { parts, faultFound } = standbyOf({ ...CASE, missed });
      const { hidden, found } = played(CASE, missed);
      expect(Math.abs(parts.hidden - hidden), `${missed}`).toBeLessThan(0.003);
      expect(Math.abs(faultFound - found), `${missed}`).toBeLessThan(0.003);
    }
  });

  it("DERIVED: leave a rare fault another (1 - θ)/θ intervals, by hand: λT/2 + λT for a coin", () => {
    const bare = { life: { shape: 1, scale: 1e6 }, interval: 100, testTime: 0, repairTime: 0, demandFailure: 0 };
    const { unavailability, firstOrder } = standbyOf({ ...bare, missed: 0.5 });
    expect(unavailability / 1.5e-4).toBeCloseTo(1, 3);
    expect(firstOrder).toBeCloseTo(1.5e-4, 12);
  });

  it("stay finite where every interval ends with a fault", () => {
    const { parts } = standbyOf({ ...CASE, interval: 1e7, missed: 0.4 });
    expect(parts.hidden).toBeGreaterThan(0.999);
  });

  it("DERIVED: shorten the best interval by √(1 + 2 (1 - θ)/θ), for rare faults", () => {
    const costs = { test: 6, failureOnTheNight: 1000, callsPerYear: 0.2, perDayNotReady: 0 };
    const rare = { life: { shape: 1, scale: 1e13 }, testTime: 0, repairTime: 0, demandFailure: 0 };
    const [sure, half] = [0, 0.5].map((missed) => bestInterval({ ...rare, missed }, costs).best.interval);
    expect(sure! / half!).toBeCloseTo(Math.sqrt(3), 2);
  });
});
