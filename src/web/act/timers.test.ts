import { fetchWords } from "#words";
import { describe, expect, it } from "vitest";
import type { Pattern, StepTimer } from "#kit";
import type { Turnaround } from "#readiness";
import { SAMPLE, sampleMark, sampleTurnaround } from "../kit-view/sample.ts";
import { readRunning, runningTimers, sayLeft, sayPulls, sayReached } from "./timers.ts";

const words = await fetchWords("en", "act");

const STARTED = "2026-03-14T09:00:00+00:00";

function withTimer(timer: StepTimer): Pattern {
  const stages = SAMPLE.stages.map((stage) => ({
    ...stage,
    steps: stage.steps.map((step) => (step.id === "vent" ? { ...step, timer } : step)),
  }));
  return { ...SAMPLE, stages };
}

const running = { ...sampleTurnaround(), timers: { vent: { started: STARTED, mark: sampleMark(0) } } };

function at(timer: StepTimer, turnaround: Turnaround = running) {
  return { kit: { findings: [] }, pattern: withTimer(timer), turnaround };
}

describe("clocks running in a turnaround", () => {
  it("finds those started and not stopped, with their limit", () => {
    const found = runningTimers(at({ kind: "wait", atLeast: 120 }));
    expect(found).toMatchObject([{ started: STARTED, limit: 120, what: "wait" }]);
    const stopped = { ...running, timers: { vent: { seconds: 125, reached: true, mark: sampleMark(2) } } };
    expect(runningTimers(at({ kind: "wait", atLeast: 120 }, stopped))).toEqual([]);
  });

  it("calls the person at the most a prime may take", () => {
    const [prime] = runningTimers(at({ kind: "prime", atMost: 60 }));
    expect(sayReached(prime!, words)).toBe("No water yet: stop and look for air leaks.");
    expect(readRunning(prime!, Date.parse(STARTED) + 61_000)).toMatchObject({ reached: true, over: 1 });
  });

  it("says what is left and how far over", () => {
    expect(sayLeft({ seconds: 10, left: 110, reached: false, over: 0 }, words)).toBe("1\u00a0min 50\u00a0s left");
    expect(sayLeft({ seconds: 120, left: 0, reached: true, over: 0 }, words)).toBe("reached");
    expect(sayLeft({ seconds: 325, left: 0, reached: true, over: 205 }, words)).toBe("3\u00a0min 25\u00a0s over");
  });
});

describe("pulls", () => {
  it("counts down to the pulls allowed, then says the engine needs service", () => {
    expect(sayPulls(2, { kind: "pulls", atMost: 6 }, words)).toBe(
      "4 more allowed. Once it runs, tap the pull it ran on.",
    );
    expect(sayPulls(6, { kind: "pulls", atMost: 6 }, words)).toContain("needs service");
    expect(sayPulls(0, { kind: "pulls", atMost: 6 }, words)).toBe("Tap every pull, then the one it ran on.");
  });
});
