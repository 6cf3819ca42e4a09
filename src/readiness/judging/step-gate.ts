import type { Step, StepTimer } from "#kit";
import type { TimerState } from "../state.ts";

/** Whether a step may be answered as seen yet, and what it waits for. */
export type Gate =
  | { readonly open: true }
  | { readonly open: false; readonly because: "count-pulls" | "time-prime" | "no-start" }
  | { readonly open: false; readonly because: "not-started" | "stopped-early"; readonly what: "wait" | "run" }
  /** `left` [s], not rounded. */
  | { readonly open: false; readonly because: "not-over"; readonly what: "wait" | "run"; readonly left: number };

const OPEN: Gate = { open: true };

/**
 * Whether a step may be answered as seen: its wait or run is over, its pulls or its prime are recorded. A clock that
 * still runs counts by the instant of its start. "Wrong" and "not possible" never wait.
 *
 * @param step - with or without a clock
 * @param timer - what the turnaround holds of its clock
 * @param now - RFC 3339; where it is not known, a clock that still runs is not over
 */
export function stepGate({ timer: wanted }: Pick<Step, "timer">, timer: TimerState | undefined, now?: string): Gate {
  if (!wanted) return OPEN;
  if (wanted.kind === "pulls") return timer?.pulls === undefined ? { open: false, because: "count-pulls" } : OPEN;
  if (wanted.kind === "prime") return timer?.seconds === undefined ? { open: false, because: "time-prime" } : OPEN;
  return clockGate(wanted, timer, now);
}

/**
 * Whether a step may be answered as seen: as `stepGate`; and pulls that were counted are seen to have done it only once
 * somebody said on which of them it ran.
 *
 * @param now - RFC 3339, as for `stepGate`
 */
export function seenGate(step: Pick<Step, "timer">, timer: TimerState | undefined, now?: string): Gate {
  const isUntold = step.timer?.kind === "pulls" && timer?.pulls !== undefined && timer.reached !== true;
  return isUntold ? { open: false, because: "no-start" } : stepGate(step, timer, now);
}

/**
 * Whether what is read at a step may be read yet: where the step waits, the reading is the one at the end of the wait,
 * whatever the answer. During a run, and where pulls or a prime are counted, it may be read at any time.
 *
 * @param now - RFC 3339, as for `stepGate`
 */
export function readingGate(step: Pick<Step, "timer">, timer: TimerState | undefined, now?: string): Gate {
  return step.timer?.kind === "wait" ? stepGate(step, timer, now) : OPEN;
}

type Clock = Extract<StepTimer, { readonly kind: "wait" | "run" }>;

function clockGate({ kind: what, atLeast }: Clock, timer: TimerState | undefined, now: string | undefined): Gate {
  if (timer?.seconds !== undefined) {
    return timer.seconds >= atLeast ? OPEN : { open: false, because: "stopped-early", what };
  }
  if (timer?.started === undefined) return { open: false, because: "not-started", what };
  const ran = now === undefined ? 0 : Math.max(0, (Date.parse(now) - Date.parse(timer.started)) / 1000);
  return ran >= atLeast ? OPEN : { open: false, because: "not-over", what, left: atLeast - ran };
}
