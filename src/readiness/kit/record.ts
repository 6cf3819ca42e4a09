import { patternAfter, type Check, type Pattern, type Stage, type Step } from "#kit";
import { answerKey } from "../turnaround/answer-key.ts";
import type { RecordLine, Turnaround } from "../state.ts";

/**
 * The lines of a turnaround in the pattern's order, each with what was seen, by whom and when. A step with checks gives
 * one line for each check, under the step's own line number.
 */
export function recordOf(turnaround: Turnaround | undefined, pattern: Pattern): readonly RecordLine[] {
  const checks = new Map(pattern.checks.map((check) => [check.id, check]));
  const answered = new Set(Object.values(turnaround?.answers ?? {}).map(({ step }) => step));
  return patternAfter(pattern, turnaround ?? {}, answered).stages.flatMap((stage) =>
    stage.steps.flatMap((step) => {
      if (step.checks.length === 0) return [recordLine(turnaround, stage, step, undefined)];
      return step.checks.map((id) => recordLine(turnaround, stage, step, checks.get(id)));
    }),
  );
}

function recordLine(
  turnaround: Turnaround | undefined,
  stage: Stage,
  step: Step,
  check: Check | undefined,
): RecordLine {
  const found = turnaround?.answers[answerKey(step.id, check?.id)];
  const line = { line: step.line, stage: stage.id, step: step.id, text: check?.ask ?? step.text };
  const isLast = check !== undefined && check.id === step.checks.at(-1);
  const of = {
    ...line,
    ...(check && { check: check.id }),
    ...(isLast && step.afterwards !== undefined && { afterwards: step.afterwards }),
  };
  if (!found) return of;
  const { answer, value, why, note, mark } = found;
  return {
    ...of,
    answer,
    mark,
    ...(value === undefined ? {} : { value }),
    ...(why === undefined ? {} : { why }),
    ...(note === undefined ? {} : { note }),
  };
}
