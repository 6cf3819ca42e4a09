import { describe, expect, it } from "vitest";
import { ask } from "../ask.ts";

const because = (name: string, given: object) => (ask(name, given) as { readonly because?: string }).because ?? "";

describe("a number without a unit, where nobody reckons by the second", () => {
  it("is said to be read in seconds, and by which fields", () => {
    expect(because("failure-rate", { failures: 3, time: 9, over: 1 })).toMatch(
      /Numbers without a unit \(time, over\) were read as a time in seconds: write "0\.3 per year" or "2 years"/,
    );
    expect(because("interval", { failureRate: 3e-9, testTime: "3 h" })).toMatch(
      /\(failureRate\) were read as a rate per second/,
    );
    expect(because("standby", { failureRate: 3e-9, interval: 3e7 })).toMatch(
      /\(failureRate, interval\) were read as a time in seconds and a rate per second/,
    );
    const prior = { median: 3e-9, errorFactor: 3 };
    expect(because("failure-rate", { failures: 0, time: "9 years", prior })).toMatch(/\(median\).* rate per second/);
    const fleet = [1, 2].map((time) => ({ failures: 1, time }));
    expect(because("failure-rate", { failures: 3, time: "9 years", fleet })).toMatch(/\(time\)/);
  });

  it("is not spoken of where every one has its unit, or is nothing", () => {
    const given = { failures: 3, time: "9 years", prior: { a: 0.5, b: 0 }, over: "1 year" };
    expect(because("failure-rate", given)).not.toContain("without a unit");
    expect(because("standby", { failureRate: "0.3 per year", interval: "1 year", testTime: 0 })).toBe("");
  });
});
