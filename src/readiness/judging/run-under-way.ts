import { allSteps, stepNamed, type Step } from "#kit";
import { clockAt, type AtClock } from "./clock.ts";
import { stepGate } from "./step-gate.ts";

/**
 * The other run of the turnaround that goes on and has not reached its time: one engine runs one way at a time. A wait,
 * or what hangs, goes on beside a run.
 *
 * @param id - step whose clock is to begin
 * @param now - RFC 3339; where it is not known, a run that was started and not stopped goes on
 * @returns undefined where the step has no run, or no other goes on
 */
export function runUnderWay(at: AtClock, id: string, now?: string): Step | undefined {
  if (!isRun(stepNamed(at.pattern, id))) return undefined;
  return allSteps(at.pattern).find((step) => {
    if (step.id === id || !isRun(step)) return false;
    const gate = stepGate(step, clockAt(at, step.id), now);
    return !gate.open && gate.because === "not-over";
  });
}

function isRun(step: Step | undefined): boolean {
  return step?.timer?.kind === "run";
}
