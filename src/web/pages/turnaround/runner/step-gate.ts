import type { Step } from "#kit";
import { readingGate, stepGate, type Gate, type TimerState } from "#readiness";
import { sayDuration } from "#words";

/**
 * Why a step cannot yet be answered as seen, in words: its clock has not run out, no pull or prime has been recorded.
 *
 * @param now - milliseconds since 1970-01-01 UTC
 */
export function whyNotYet(step: Step, timer: TimerState | undefined, now: number): string | undefined {
  const gate = stepGate(step, timer, new Date(now).toISOString());
  return gate.open ? undefined : sayGate(gate);
}

/** Why what is asked at a step cannot yet be read, in words: the reading is the one at the end of its wait. */
export function whyNotReadYet(step: Step, timer: TimerState | undefined, now: number): string | undefined {
  const gate = readingGate(step, timer, new Date(now).toISOString());
  return gate.open ? undefined : sayGate(gate);
}

function sayGate(gate: Extract<Gate, { readonly open: false }>): string {
  switch (gate.because) {
    case "count-pulls":
      return "Count the pulls first.";
    case "time-prime":
      return "Time the prime first.";
    case "not-started":
      return `Start the ${gate.what} first.`;
    case "stopped-early":
      return `The ${gate.what} was stopped early. Start it again.`;
    case "not-over":
      return `The ${gate.what} is not over: ${sayDuration(Math.ceil(gate.left))} left.`;
  }
}
