import { allSteps, heldByHalfDone, type Pattern, type Step, type Work } from "#kit";
import type { Saying } from "#words";
import { lineKeys } from "../kit/life.ts";
import type { Turnaround } from "../state.ts";

/** A line half done that keeps another from being done. */
export interface HalfDone {
  /** "Line 26 is only half done" */
  readonly said: Saying<"held">;
  /** Work of the later step that must not meet it. */
  readonly works: readonly Work[];
  readonly step: string;
  /** The first of its checks that is still open. */
  readonly open: string;
}

/**
 * Earlier lines of which some checks are answered and others are not, and whose hazard the work of this step must not
 * meet: a coupling that is parted until both are answered, before a cock is opened. Common practice.
 *
 * @param step - id of the step that is asked about
 * @param work - what it does
 */
export function halfDoneBefore(
  { turnaround, pattern }: { readonly turnaround: Turnaround; readonly pattern: Pattern },
  step: string,
  work: readonly Work[],
): readonly HalfDone[] {
  const steps = allSteps(pattern);
  const before = steps.slice(
    0,
    steps.findIndex(({ id }) => id === step),
  );
  return before.flatMap((one) => {
    const open = halfDone(turnaround, one);
    const works = work.filter((kind) => heldByHalfDone(one).includes(kind));
    if (open === undefined || works.length === 0) return [];
    return [{ said: { say: "halfDone", of: { line: one.line } }, works, step: one.id, open }];
  });
}

/** The first check still open of a step with another answered; undefined where none or all are. */
function halfDone({ answers }: Turnaround, step: Step): string | undefined {
  if (lineKeys(step).every((key) => !answers[key])) return undefined;
  return step.checks.find((check) => !answers[`${step.id}/${check}`]);
}
