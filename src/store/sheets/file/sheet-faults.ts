import { InputError, printGiven } from "#base";
import { SHEET_LIMITS } from "./limits.ts";

/** A sheet that cannot be taken as it is. */
export function sheetError(code: string, got: unknown, allowed: string, remedy: string): InputError {
  return new InputError([{ code, field: "file", got: printGiven(got), allowed, remedy }]);
}

export function tooManyRows(): InputError {
  const allowed = `at most ${SHEET_LIMITS.rows} rows below the headings`;
  return sheetError("ST-213", "too many rows", allowed, "Divide it into several files. Nothing was taken in.");
}

export function damaged(because: string): InputError {
  const remedy = "Open it in a spreadsheet program, save it anew as XLSX or CSV, and choose that file.";
  return sheetError("ST-212", because, "a workbook that can be unpacked", remedy);
}

/** Told before the file is read into the memory, too. */
export function tooLongFile(bytes: number): InputError {
  const allowed = `a file of at most ${SHEET_LIMITS.bytes / 1e6} MB`;
  const remedy = "Copy the one table that is wanted into a new file, without pictures. Nothing was taken in.";
  return sheetError("ST-210", `${(bytes / 1e6).toFixed(1)} MB`, allowed, remedy);
}

/** A file that takes its reader too long, or more memory than there is. */
export function tooSlow(name: string): InputError {
  const remedy = "Save it anew as CSV, with the one table that is wanted. Nothing was taken in.";
  return sheetError("ST-219", name, "a file that can be read within half a minute", remedy);
}
