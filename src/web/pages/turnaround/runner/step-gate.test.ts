import { describe, expect, it } from "vitest";
import type { StepTimer } from "#kit";
import { SAMPLE, sampleMark } from "#web/kit-view/sample.ts";
import { fetchWords } from "#words";
import { whyNotYet } from "./step-gate.ts";

const words = await fetchWords("en", "turnaroundLine");

const STARTED = "2026-03-14T09:00:00+00:00";
const mark = sampleMark(0);
const gate = (timer: StepTimer, state?: Parameters<typeof whyNotYet>[1], seconds = 0) =>
  whyNotYet({ ...SAMPLE.stages[0]!.steps[0]!, timer }, state, {
    now: Date.parse(STARTED) + seconds * 1000,
    words,
  });

describe("steps with a clock", () => {
  it("waits until the clock has run out, whenever the phone wakes", () => {
    const wait = { kind: "wait", atLeast: 120 } as const;
    expect(gate(wait)).toBe("Start the wait first.");
    expect(gate(wait, { started: STARTED, mark }, 60)).toBe("The wait is not over: 1\u00a0min left.");
    expect(gate(wait, { started: STARTED, mark }, 120)).toBeUndefined();
    expect(gate(wait, { seconds: 60, reached: false, mark })).toContain("stopped early");
    expect(gate(wait, { seconds: 121, reached: true, mark })).toBeUndefined();
  });

  it("wants pulls and primes recorded", () => {
    expect(gate({ kind: "pulls", atMost: 6 })).toBe("Count the pulls first.");
    expect(gate({ kind: "pulls", atMost: 6 }, { pulls: 2, mark })).toBe(
      "Say on which pull it ran, or that it did not: found wrong.",
    );
    expect(gate({ kind: "pulls", atMost: 6 }, { pulls: 2, reached: true, mark })).toBeUndefined();
    expect(gate({ kind: "prime", atMost: 60 }, { started: STARTED, mark }, 90)).toBe("Time the prime first.");
  });

  it("holds nothing back where there is no clock", () => {
    expect(whyNotYet(SAMPLE.stages[0]!.steps[0]!, undefined, { now: 0, words })).toBeUndefined();
  });
});
