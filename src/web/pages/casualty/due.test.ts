import type { CasualtyState } from "#readiness";
import { describe, expect, it } from "vitest";
import { callingOf, duesOf } from "./due.ts";

const T0 = Date.UTC(2027, 2, 14, 10);
const MINUTE = 60_000;
const stamp = (minute: number) => new Date(T0 + minute * MINUTE).toISOString();
const PUMP = {
  pump: "p1",
  name: "Pump 1",
  running: true,
  runtime: 1200,
  filled: stamp(0),
  runs: [{ from: stamp(0), space: "s1", flow: 0.003 }],
};
const CASUALTY = {
  id: "c1",
  soundings: [{ at: stamp(5), space: "s1", level: 0.4 }],
  pumps: [PUMP],
} as unknown as CasualtyState;
const words = (casualty: CasualtyState, next: number | undefined) =>
  duesOf(casualty, "s1", next, T0 + 6 * MINUTE).map((due) => due.words);

describe("what is due on a sheet", () => {
  it("is the next sounding and each refuelling, the first to come first", () => {
    expect(words(CASUALTY, T0 + 10 * MINUTE)).toEqual(["Sound", "Refuel Pump 1"]);
    expect(words(CASUALTY, T0 + 25 * MINUTE)).toEqual(["Refuel Pump 1", "Sound"]);
  });

  it("is no sounding that the last one has answered, while the next is being computed", () => {
    expect(words(CASUALTY, T0 + 4 * MINUTE)).toEqual(["Refuel Pump 1"]);
    expect(words(CASUALTY, undefined)).toEqual(["Refuel Pump 1"]);
  });

  it("is no sounding while fuel is smelt", () => {
    const smelt = { ...CASUALTY, fuelSmelt: { at: stamp(6), by: "me", entry: "e" }, pumps: [] };
    expect(words(smelt as unknown as CasualtyState, T0 + 10 * MINUTE)).toEqual([]);
  });
});

describe("what calls", () => {
  const dues = duesOf(CASUALTY, "s1", T0 + 10 * MINUTE, T0 + 30 * MINUTE);

  it("is the longest due that nobody has silenced", () => {
    expect(callingOf(dues, [], T0 + 9 * MINUTE)).toBeUndefined();
    expect(callingOf(dues, [], T0 + 30 * MINUTE)?.words).toBe("Sound");
    expect(callingOf(dues, [dues[0]!.key], T0 + 30 * MINUTE)?.words).toBe("Refuel Pump 1");
  });

  it("stays silent for this sounding and this tank, and calls anew for the next", () => {
    const silenced = dues.map(({ key }) => key);
    const later = {
      ...CASUALTY,
      soundings: [...CASUALTY.soundings, { ...CASUALTY.soundings[0]!, at: stamp(31) }],
      pumps: [{ ...PUMP, filled: stamp(31) }],
    } as unknown as CasualtyState;
    const next = duesOf(later, "s1", T0 + 36 * MINUTE, T0 + 60 * MINUTE);
    expect(callingOf(dues, silenced, T0 + 60 * MINUTE)).toBeUndefined();
    expect(next.filter(({ key }) => silenced.includes(key))).toEqual([]);
  });
});
