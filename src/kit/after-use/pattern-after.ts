import { allSteps } from "../look-ups.ts";
import type { Pattern, Step } from "../pattern.ts";
import type { Met } from "./after-use.ts";

/** How a turnaround was begun, as far as it decides which of the pattern's steps it asks. */
export interface Begun {
  /** What the kit met in use since it was last sealed. */
  readonly met?: readonly Met[] | undefined;
  /** The seal as it was read, empty where there was none, and as it stood on record, if one did. */
  readonly opened?: { readonly sealSeen: string; readonly sealOnRecord?: string };
}

/** True for a step of every turnaround, and for one that belongs to what the kit met. */
export function isCalledFor({ after }: Pick<Step, "after">, met: readonly Met[]): boolean {
  return after === undefined || after.some((what) => met.includes(what));
}

/**
 * The steps that a turnaround asks: without those that belong to what the kit has not met, and without the looks at a
 * seal where there was none and none was on record. After a use it was broken long ago, and nobody can look at it; a
 * seal that is missing and should be there is asked for.
 */
export function stepsAsked(pattern: Pattern, begun: Begun): (step: Step) => boolean {
  const { met = [] } = begun;
  const seals = cameUnsealed(begun) ? sealChecks(pattern) : undefined;
  return (step) => isCalledFor(step, met) && !(seals !== undefined && isOfSeal(step, seals));
}

/** True where no seal was on it, and none was on record: it was broken before, and that is known. */
export function cameUnsealed({ opened }: Begun): boolean {
  return opened?.sealSeen === "" && opened.sealOnRecord === undefined;
}

/** The checks of what is read against the seal on record, the other looks at it among them. */
function sealChecks({ checks }: Pattern): ReadonlySet<string> {
  const seals = new Set(
    checks.flatMap((check) => (check.kind === "match" && check.against === "recorded-seal" ? [check.item] : [])),
  );
  return new Set(checks.flatMap(({ id, item }) => (seals.has(item) ? [id] : [])));
}

function isOfSeal({ checks }: Step, seals: ReadonlySet<string>): boolean {
  return checks.length > 0 && checks.every((check) => seals.has(check));
}

/**
 * The pattern as a turnaround goes through it: with the steps that {@link stepsAsked} leaves in. Steps keep their line
 * numbers, so that screen and card agree.
 *
 * @param answered - ids of steps answered already: those stay
 */
export function patternAfter(pattern: Pattern, begun: Begun, answered: ReadonlySet<string>): Pattern {
  const isAsked = stepsAsked(pattern, begun);
  const isIn = (step: Step) => isAsked(step) || answered.has(step.id);
  if (allSteps(pattern).every(isIn)) return pattern;
  const stages = pattern.stages.map((stage) => ({ ...stage, steps: stage.steps.filter(isIn) }));
  return { ...pattern, stages: stages.filter(({ steps }) => steps.length > 0) };
}
