/** One cell of a sheet as it was read. */
export interface SheetCell {
  /** As text; a number with a point, a day as "2026-03-04". */
  readonly text: string;
  /** Where it is a number and no day: a bare one may still be the serial number of a day. */
  readonly number?: number;
  /** `kept`: the result that was kept with a formula. `lost`: a formula whose result was not kept. */
  readonly formula?: "kept" | "lost";
  /** What the spreadsheet could not compute: "#REF!". */
  readonly broken?: string;
  /** What the file says, where the cell was changed since. */
  readonly was?: string;
}

/** One row below the headings. */
export interface SheetRow {
  /** As the spreadsheet shows it, from 1. */
  readonly number: number;
  readonly cells: readonly SheetCell[];
}

/** A sheet as it was read: nothing in it is judged yet. */
export interface SheetTable {
  /** Name of the file, with the sheet where there are several. */
  readonly file: string;
  readonly heads: readonly string[];
  readonly rows: readonly SheetRow[];
  /** Sheets of the workbook; empty for a file that is one table. */
  readonly sheets: readonly string[];
  /** Which of them this is. */
  readonly sheet?: string;
  /** 1904 where its serial numbers count from then. */
  readonly serials: 1900 | 1904;
  /** What whoever takes it in should know: how it was read. */
  readonly notices: readonly string[];
}

/** Rows of a file with their numbers, headings among them. */
export type BareRows = readonly SheetRow[];
