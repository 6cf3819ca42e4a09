export { SHEET_LIMITS } from "./file/limits.ts";
export { readSheet } from "./file/read-sheet.ts";
export type { SheetCell, SheetRow, SheetTable } from "./file/sheet-table.ts";
export { tooLongFile, tooSlow } from "./file/sheet-faults.ts";
