import type { Bar } from "#readiness";
import type { Position } from "#web/act/position.ts";

/**
 * Where what bars a step was found: the very answer, by itself. What else is open at its line may be barred as well,
 * and a look at all of it would hide the one that was answered.
 *
 * @param bar - with the step and, where one found it, the check
 * @param line - number of that step's line
 */
export function whereFound({ step, check }: Pick<Bar, "step" | "check">, line: number): Position {
  const ask = check === undefined ? step : `${step}/${check}`;
  return { line, ...(ask !== undefined && { ask }), isAlone: true };
}
