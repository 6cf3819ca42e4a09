import type { Step } from "#kit";
import type { TimerState } from "#readiness";
import { readTimer, sayDuration } from "../../timing/index.ts";

/**
 * Why a step cannot yet be answered as seen: its clock has not run out, no pull or prime has been recorded.
 * "Not possible", with its why, is always open instead.
 */
export function whyNotYet(step: Step, timer: TimerState | undefined, now: number): string | undefined {
  const wanted = step.timer;
  if (!wanted) return undefined;
  if (wanted.kind === "pulls") return timer?.pulls === undefined ? "Count the pulls first." : undefined;
  if (wanted.kind === "prime") return timer?.seconds === undefined ? "Time the prime first." : undefined;
  return clockNotOver(wanted.atLeast, wanted.kind, timer, now);
}

function clockNotOver(
  limit: number,
  what: "wait" | "run",
  timer: TimerState | undefined,
  now: number,
): string | undefined {
  if (timer?.seconds !== undefined) {
    return timer.seconds >= limit ? undefined : `The ${what} was stopped early. Start it again.`;
  }
  if (timer?.started === undefined) return `Start the ${what} first.`;
  const { reached, left } = readTimer(timer.started, now, limit);
  return reached ? undefined : `The ${what} is not over: ${sayDuration(left)} left.`;
}
