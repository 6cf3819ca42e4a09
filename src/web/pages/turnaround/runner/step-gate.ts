import type { Step } from "#kit";
import { clockAt, isToMeasure, readingGate, seenGate, type AtWork, type Gate, type TimerState } from "#readiness";
import { sayDuration, type Words } from "#words";

/** What a step with a clock is asked at, and the words of its line. */
interface Asked {
  /** [ms since 1970-01-01 UTC] */
  readonly now: number;
  readonly words: Words["turnaroundLine"];
}

/**
 * Why a step cannot yet be answered as seen, in words: its clock has not run out, no pull or prime has been recorded.
 */
export function whyNotYet(step: Step, timer: TimerState | undefined, { now, words }: Asked): string | undefined {
  const gate = seenGate(step, timer, new Date(now).toISOString());
  return gate.open ? undefined : sayGate(gate, words);
}

/** The same at a step of a turnaround: a clock that a finding ended does not count, and a delivery is measured first. */
export function whyNotAnswered(at: AtWork, step: Step, asked: Asked): string | undefined {
  return isToMeasure(at, step.id) ? asked.words.measureFirst() : whyNotYet(step, clockAt(at, step.id), asked);
}

/** Why what is asked at a step cannot yet be read, in words: the reading is the one at the end of its wait. */
export function whyNotReadYet(step: Step, timer: TimerState | undefined, { now, words }: Asked): string | undefined {
  const gate = readingGate(step, timer, new Date(now).toISOString());
  return gate.open ? undefined : sayGate(gate, words);
}

function sayGate(gate: Extract<Gate, { readonly open: false }>, words: Words["turnaroundLine"]): string {
  switch (gate.because) {
    case "count-pulls":
      return words.countPullsFirst();
    case "no-start":
      return words.sayWhichPull();
    case "time-prime":
      return words.timePrimeFirst();
    case "not-started":
      return words.startFirst({ what: gate.what });
    case "stopped-early":
      return words.stoppedEarly({ what: gate.what });
    case "not-over":
      return words.notOver({ what: gate.what, left: sayDuration(Math.ceil(gate.left)) });
  }
}
