import { InputError, isInputError } from "#base";
import type { Words } from "#words";

/** What stands against one field of what was entered, in a sentence for beside it; undefined where nothing does. */
export function faultAt(error: unknown, field: string, words: Words["parts"]): string | undefined {
  if (!isInputError(error)) return undefined;
  const fault = error.faults.find((one) => one.field === field);
  return fault && words.wanted(fault);
}

/** The same error without the faults that are said beside their fields; undefined where none is left. */
export function faultsElsewhere(error: unknown, fields: readonly string[]): unknown {
  if (!isInputError(error)) return error;
  const left = error.faults.filter(({ field }) => !fields.includes(field));
  return left.length === 0 ? undefined : new InputError(left);
}
