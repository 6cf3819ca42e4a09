import { describe, expect, it } from "vitest";
import { ask } from "../ask.ts";

interface Told {
  readonly kind: string;
  readonly because: string;
}

const asked = (given: object) => ask("failure-rate", given) as Told;
const LOGNORMAL = { median: "0.1 per year", errorFactor: 3 };
const FLEET = [
  { failures: 1, time: "10 years" },
  { failures: 0, time: "20 years" },
];

describe("what a rate rests on", () => {
  it("DERIVED: a lognormal prior weighs as the gamma of its mean and variance, 1 / (exp(s²) - 1) failures", () => {
    const told = asked({ failures: 0, time: "5 years", prior: LOGNORMAL });
    expect(told.kind).toBe("told");
    // s = ln 3 / 1.645 = 0.668: 1.78 failures at a mean of 0.125 a year, in 14 years.
    expect(told.because).toContain("the prior was given, and weighs about as much as 1.8 failures in 14 years");
  });

  it("a gamma prior weighs what it says", () => {
    const told = asked({ failures: 0, time: "5 years", prior: { a: 2, b: "20 years" } });
    expect(told.because).toContain("the prior was given, and weighs about as much as 2 failures in 20 years");
  });

  it("what it would take is not what is there already", () => {
    const among = asked({ failures: 1, time: "5 years", fleet: FLEET, pooling: "fitted" });
    expect(among.kind).toBe("cannot-tell");
    expect(among.because).toContain("it would take more failures");
    expect(among.because).not.toContain("others alike");
    expect(asked({ failures: 0, time: "5 years", fleet: FLEET }).because).not.toContain("others alike");
    expect(asked({ failures: 0, time: "5 years" }).because).toContain("a failure or two, or others alike");
  });
});
