import { fetchWords } from "#words";
import { describe, expect, it } from "vitest";
import { parseQuantity } from "#base";
import { sayStep, stepBy, stepFault, STEPS } from "./stepping.ts";

const words = await fetchWords("en", "delivery");
const metres = (text: string) => parseQuantity(text, "length");

describe("setting a quantity by steps", () => {
  it("goes to the next round figure in the person's own unit", () => {
    expect(stepBy(2, STEPS.lift, "metric", 1)).toBeCloseTo(2.5, 12);
    expect(stepBy(4.572, STEPS.suctionLength, "metric", 1)).toBeCloseTo(5, 12);
    expect(stepBy(4.572, STEPS.suctionLength, "metric", -1)).toBeCloseTo(4, 12);
    expect(stepBy(metres("15 ft"), STEPS.suctionLength, "us", 1)).toBeCloseTo(metres("20 ft"), 9);
    expect(stepBy(2, STEPS.lift, "us", -1)).toBeCloseTo(metres("6 ft"), 9);
  });

  it("goes there and back to where it was, a hundred times", () => {
    let at = 0;
    for (let tap = 0; tap < 100; tap += 1) at = stepBy(at, STEPS.rise, "metric", tap % 2 === 0 ? 1 : -1);
    expect(at).toBeCloseTo(0, 12);
  });

  it("counts degrees from where their scale begins", () => {
    const warmer = stepBy(parseQuantity("54 °F", "temperature"), STEPS.waterTemperature, "us", 1);
    expect(warmer).toBeCloseTo(parseQuantity("56 °F", "temperature"), 9);
  });

  it("stops at its limits", () => {
    expect(stepBy(1, STEPS.throttle, "metric", 1)).toBe(1);
    expect(stepBy(0, STEPS.altitude, "us", -1)).toBe(0);
  });

  it("writes what is set in the person's unit, and why something cannot be", () => {
    expect(sayStep(4.572, STEPS.suctionLength, "metric")).toBe("4.57\u00a0m");
    expect(sayStep(4.572, STEPS.suctionLength, "us")).toBe("15\u00a0ft");
    expect(sayStep(0.85, STEPS.throttle, "metric")).toBe("85\u00a0%");
    expect(stepFault(1.2, STEPS.throttle, "metric", words)).toBe("From 30\u00a0% to 100\u00a0%.");
    expect(stepFault(0.8, STEPS.throttle, "metric", words)).toBeUndefined();
  });
});
