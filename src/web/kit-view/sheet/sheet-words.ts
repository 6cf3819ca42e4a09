import type { FromSheet } from "#readiness";

/** Where a line came from: "told by kits.csv, row 4"; undefined where somebody typed it. */
export function saySheet(sheet: FromSheet | undefined): string | undefined {
  return sheet && `told by ${sheet.file}, row ${sheet.row}`;
}
