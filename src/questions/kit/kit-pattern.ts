import { InputError, printGiven } from "#base";
import type { Hose } from "#hydraulics";
import type { HoseRun, Pattern } from "#kit";
import { z } from "zod";
import type { QuestionContext } from "../question.ts";

/** A pattern's id in a question, where it stands for what the pattern knows. */
export const kitIn = z
  .string()
  .min(1)
  .max(100)
  .describe("Id of a kit's pattern; its pump, hoses, primer and engine stand where none are given");

/**
 * The pattern a question names, if it names one.
 *
 * @throws InputError QU-107 where it is not known here
 */
export function resolveKit(
  kit: string | undefined,
  context: QuestionContext,
  field: string = "kit",
): Pattern | undefined {
  if (kit === undefined) return undefined;
  const pattern = context.patterns?.(kit);
  if (pattern) return pattern;
  const remedy = "Check the id, or give pump and hoses instead.";
  const allowed = "the id of a pattern known here";
  throw new InputError([{ code: "QU-107", field, got: printGiven(kit), allowed, remedy }]);
}

/** A pattern's hose as hydraulics needs it. */
export function hoseOf(run: HoseRun): Hose {
  const resistance =
    run.hazenWilliams === undefined
      ? ({ kind: "roughness", roughness: run.roughness ?? 0 } as const)
      : ({ kind: "hazen-williams", coefficient: run.hazenWilliams } as const);
  return { bore: run.bore, length: run.length, resistance, fittings: run.fittings };
}
