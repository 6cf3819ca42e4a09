import { allSteps, isCalledFor, isLeftAlone, type Pattern, type Step } from "#kit";
import type { Turnaround } from "../state.ts";

/** What hangs, or is to be hung up, in a turnaround: nothing of a later line is done before that line is answered. */
export interface Hanging {
  readonly step: Step;
  /** When it has hung long enough [ms since 1970-01-01 UTC]; absent where its clock does not run. */
  readonly until?: number;
  /** Its clock ran and was stopped: before its time, or once that was over. */
  readonly stopped?: "early" | "over";
}

/**
 * The first line that hangs something up and leaves it, and is not answered yet.
 *
 * @param turnaround - with its answers and clocks
 * @param pattern - of the kit, with the steps for what it met
 * @returns undefined where nothing of this turnaround hangs, or it has been answered as seen, or as not possible
 */
export function hangingOf({ answers, timers, met = [] }: Turnaround, pattern: Pattern): Hanging | undefined {
  const hung = allSteps(pattern).filter((one) => isLeftAlone(one) && !one.optional && isCalledFor(one, met));
  const step = hung.find(({ id }) => !isSettled(answers, id));
  if (!step || step.timer?.kind !== "wait") return undefined;
  const { started, reached } = timers[step.id] ?? {};
  if (started !== undefined) return { step, until: Date.parse(started) + 1000 * step.timer.atLeast };
  return { step, ...(reached !== undefined && { stopped: reached ? "over" : "early" }) };
}

function isSettled(answers: Turnaround["answers"], step: string): boolean {
  const given = answers[step]?.answer;
  return given === "seen" || given === "not-possible";
}
