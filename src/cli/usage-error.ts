import { InputError } from "#base";

/** A word or option that a command does not understand. */
export function usageError(field: string, got: string, allowed: string, remedy: string): InputError {
  return new InputError([{ code: "CL-101", field, got, allowed, remedy }]);
}
