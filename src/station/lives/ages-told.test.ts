import { describe, expect, it } from "vitest";
import { agesTold, wearOf } from "./ages-told.ts";
import { lastsTo, lifeTold } from "./life-told.ts";
import type { LifeSeen } from "./lives-seen.ts";

const life = (after: number, before = Infinity): LifeSeen => ({ after, before, looks: 1 }) as LifeSeen;
/** Looked at each year; most end between the third look and the sixth. */
const worn = [
  ...Array.from({ length: 20 }, (_, i) => life(365 * (3 + (i % 3)), 365 * (4 + (i % 3)))),
  ...Array.from({ length: 10 }, () => life(365 * 3)),
];

describe("ages by which things are found bad", () => {
  it("are those at which the chances that are told reach nine in ten and one in two, ends and all", () => {
    const told = lifeTold(worn, 730, false);
    const { tenth, half, oldest } = agesTold(told);
    expect(lastsTo(told, 0, tenth.value).chance).toBeCloseTo(0.9, 4);
    expect(lastsTo(told, 0, tenth.low).low).toBeCloseTo(0.9, 4);
    expect(lastsTo(told, 0, tenth.high).high).toBeCloseTo(0.9, 4);
    expect(lastsTo(told, 0, half.value).chance).toBeCloseTo(0.5, 4);
    expect(half.low).toBeLessThan(half.value);
    expect(half.high).toBeGreaterThan(half.value);
    expect(tenth.high).toBeLessThan(half.low);
    expect(oldest).toBe(6 * 365);
  });

  it("have no upper end where nothing was found bad, and a lower one that more looks push on", () => {
    const few = agesTold(
      lifeTold(
        Array.from({ length: 5 }, () => life(700)),
        730,
        false,
      ),
    );
    const many = agesTold(
      lifeTold(
        Array.from({ length: 50 }, () => life(700)),
        730,
        false,
      ),
    );
    expect(few.tenth.high).toBe(Infinity);
    expect(many.tenth.low).toBeGreaterThan(5 * few.tenth.low);
  });

  it("say how many more must be found bad for a law, and about how many lives that takes", () => {
    const told = lifeTold([...Array.from({ length: 18 }, () => life(700)), life(365, 730), life(365, 730)], 730, false);
    expect(agesTold(told).lack).toEqual({ ended: 3, lives: 26 });
    expect(agesTold(lifeTold(worn, 730, false)).lack).toBeUndefined();
  });
});

describe("whether a thing wears", () => {
  it("is told by a range that lies on one side of a steady rate", () => {
    expect(wearOf(lifeTold(worn, 730, false))).toBe("wears");
    const steady = [0, 100, 300, 700, 1500].flatMap((age) => [life(age, 1.6 * age + 100), life(1.2 * age + 50)]);
    expect(wearOf(lifeTold(steady, 730, false))).toBe("unknown");
  });

  it("is not told by fewer than five found bad", () => {
    expect(wearOf(lifeTold([life(700, 800), life(710, 790), life(700)], 730, false))).toBeUndefined();
  });
});
