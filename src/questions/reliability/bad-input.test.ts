import { describe, expect, it } from "vitest";
import { ask } from "../ask.ts";

/** What a person reads of the first thing that is wrong. */
function toldOf(name: string, given: unknown): string {
  try {
    ask(name, given);
  } catch (thrown) {
    return (thrown as Error).message;
  }
  return "answered";
}

const series = [{ at: 1, value: 2 }];
const cures = { causes: [{ name: "a", chance: 1 }], actions: [{ name: "x", cost: 1, cures: ["a"] }] };

describe("bad input is told with what to do about it", () => {
  it.each<[string, unknown, string]>([
    ["start-chance", { failures: 0, trials: 3, pooling: "wary" }, "there is nothing to pool."],
    ["failure-rate", { failures: 1, time: "9 years", pooling: "fitted" }, "there is nothing to pool."],
    ["start-chance", { failures: "two", trials: 3 }, "Give a number or an object with these fields."],
    ["start-chance", { failures: 1.5, trials: 3 }, "Give a whole number."],
    ["start-chance", [], "Give an object with these fields."],
    ["start-chance", { failures: 0, trials: 3, fleet: "two" }, "Give a list."],
    ["trend", { method: "mann-kendall", series: [{ at: 1, value: "x" }] }, "Give a number."],
    ["fault", cures, "Give a number."],
    ["symptoms", { causes: "a", signs: [] }, "Give a list."],
    [
      "symptoms",
      { causes: [{ name: "a", chance: 1, shows: [1] }], signs: [{ name: "s", leak: 0, seen: "no" }] },
      "null",
    ],
    ["spares", { items: [{ name: 3, perYear: 1, leadTime: "1 wk" }] }, "Give text."],
    ["lifetimes", { records: [{ failedAt: "2026-03-01" }] }, "That is a day, and a length of time is wanted here"],
    ["trend", { method: "laplace", events: { times: ["2026-03-01"], end: 5 } }, "That is a day"],
    ["trend", { method: "mann-kendall", series: [{ at: "2026-02-30", value: 2 }] }, "There is no such day"],
    ["failure-rate", { failures: 1, time: "2026" }, "Add the unit"],
  ])("%s: %j", (name, given, told) => {
    expect(toldOf(name, given)).toContain(told);
  });

  it("a bare time in somebody's own unit is not said to be read in seconds", () => {
    const told = toldOf("lifetimes", { records: [{ failedAt: -5 }] });
    expect(told).toContain(
      "allowed: at least 0, at most 1000000000000. It is too little: check the number and its unit.",
    );
    const far = toldOf("trend", { method: "mann-kendall", series: [{ at: 2e12, value: 1 }, ...series] });
    expect(far).toContain("It is too much: check the number and its unit.");
    expect(toldOf("lifetimes", { records: [{ failedAt: "-5 months" }] })).toContain(
      "at least 0, at most 1000000000000 s",
    );
  });

  it("a time too short or too long is told as people count it, not in seconds alone", () => {
    const standby = { failureRate: "0.3 per year", interval: "1 year", testTime: "2 years" };
    expect(toldOf("standby", standby).replaceAll("\u00a0", " ")).toContain(
      "got 31557600 s (365 days); allowed: more than the 63115200 s (2 years)",
    );
  });
});
