import { allSteps } from "../look-ups.ts";
import type { Pattern, Step } from "../pattern.ts";
import type { Met } from "./after-use.ts";

/** True for a step of every turnaround, and for one that belongs to what the kit met. */
export function isCalledFor({ after }: Pick<Step, "after">, met: readonly Met[]): boolean {
  return after === undefined || after.some((what) => met.includes(what));
}

/**
 * The pattern as a turnaround after a certain use goes through it: without the steps that belong to what the kit has not
 * met. Steps keep their line numbers, so that screen and card agree.
 *
 * @param met - what the kit met
 * @param answered - ids of steps answered already: those stay
 */
export function patternAfter(pattern: Pattern, met: readonly Met[], answered: ReadonlySet<string>): Pattern {
  const isIn = (step: Step) => isCalledFor(step, met) || answered.has(step.id);
  if (allSteps(pattern).every(isIn)) return pattern;
  const stages = pattern.stages.map((stage) => ({ ...stage, steps: stage.steps.filter(isIn) }));
  return { ...pattern, stages: stages.filter(({ steps }) => steps.length > 0) };
}
