import type { Entry } from "#log";
import type { StepAnswer } from "../kinds/kit-parts.ts";

/** An answer as it was given, with its entry. */
export interface GivenAnswer {
  readonly entry: Entry;
  readonly answer: StepAnswer;
}

/** Every answer given at one line of a turnaround, oldest first: a later one replaces an earlier one and hides none. */
export function answersAt(
  entries: readonly Entry[],
  at: { readonly turnaround: string; readonly step: string; readonly check?: string },
): readonly GivenAnswer[] {
  return entries
    .filter(({ kind }) => kind === "step-answered")
    .map((entry) => ({ entry, answer: entry.body as StepAnswer }))
    .filter(
      ({ answer }) => answer.turnaround === at.turnaround && answer.step === at.step && answer.check === at.check,
    );
}
