import { assert } from "#base";
import { checkNamed } from "./look-ups.ts";
import type { Check, Pattern, Stage, StageId, Step } from "./pattern.ts";

/** One line of the card: a step, or one of the checks answered at it. Screen and paper number it alike. */
export interface PatternLine {
  /** "12" for a step; "12a", "12b" for its checks. */
  readonly label: string;
  readonly line: number;
  readonly stage: StageId;
  readonly stageName: string;
  readonly step: Step;
  readonly check?: Check;
  /** What is answered here: a step with checks is answered by them, line by line. */
  readonly answered: boolean;
  readonly text: string;
}

/** Every line of the pattern's card, in order: each step, and after it its checks. */
export function linesOf(pattern: Pattern): readonly PatternLine[] {
  return pattern.stages.flatMap((stage) => stage.steps.flatMap((step) => linesOfStep(pattern, stage, step)));
}

function linesOfStep(pattern: Pattern, stage: Stage, step: Step): readonly PatternLine[] {
  const common = { line: step.line, stage: stage.id, stageName: stage.name, step };
  const answered = step.checks.length === 0;
  const checks = step.checks.map((id, index): PatternLine => {
    const check = checkNamed(pattern, id);
    assert(check, `step ${step.id} asks check ${id}`);
    return { ...common, label: `${step.line}${letters(index)}`, check, answered: true, text: check.ask };
  });
  return [{ ...common, label: String(step.line), answered, text: step.text }, ...checks];
}

/** What card and screen call the line of a check: "12b" of a step with several, else "12". */
export function lineLabel({ line, checks }: Pick<Step, "line" | "checks">, check: string | undefined): string {
  const index = check === undefined ? -1 : checks.indexOf(check);
  return index < 0 || checks.length === 1 ? String(line) : `${line}${letters(index)}`;
}

/** a to z, then aa, ab and on. */
function letters(index: number): string {
  const last = String.fromCharCode("a".charCodeAt(0) + (index % 26));
  return index < 26 ? last : letters(Math.floor(index / 26) - 1) + last;
}
