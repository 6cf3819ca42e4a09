import type { FromSheet } from "#readiness";
import type { Words } from "#words";

/** Where a line came from: "told by kits.csv, row 4"; undefined where somebody typed it. */
export function saySheet(sheet: FromSheet | undefined, words: Words["telling"]): string | undefined {
  return sheet && words.fromSheet({ file: sheet.file, row: sheet.row });
}
