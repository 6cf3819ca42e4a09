import type { SheetCell, SheetRow, SheetTable } from "../file/sheet-table.ts";

/** What was changed of a sheet on the page, the file staying as it is. */
export interface Mends {
  readonly cells: readonly MendedCell[];
  /** Numbers of the rows that somebody left out. */
  readonly leftOut: readonly number[];
}

/** A cell as it was written anew: row as the spreadsheet numbers it, column from 0. */
export interface MendedCell {
  readonly row: number;
  readonly column: number;
  readonly text: string;
}

/** Nothing changed. */
export const NO_MENDS: Mends = { cells: [], leftOut: [] };

/** The same with cells of one row written anew, by column. */
export function withCells(mends: Mends, row: number, texts: ReadonlyMap<number, string>): Mends {
  const others = mends.cells.filter((one) => one.row !== row || !texts.has(one.column));
  return { ...mends, cells: [...others, ...[...texts].map(([column, text]) => ({ row, column, text }))] };
}

/** The sheet with what was changed of it; a cell remembers what the file says. */
export function mendTable(table: SheetTable, { cells, leftOut }: Mends): SheetTable {
  if (cells.length === 0 && leftOut.length === 0) return table;
  const rows = table.rows.filter(({ number }) => !leftOut.includes(number));
  const changed = new Set(cells.map(({ row }) => row));
  const ofRow = (number: number) => (changed.has(number) ? cells.filter(({ row }) => row === number) : []);
  return { ...table, rows: rows.map((row) => mendRow(row, ofRow(row.number))) };
}

function mendRow(row: SheetRow, cells: readonly MendedCell[]): SheetRow {
  if (cells.length === 0) return row;
  const mended: SheetCell[] = [...row.cells];
  for (const { column, text } of cells) {
    while (mended.length <= column) mended.push({ text: "" });
    const was = saidBy(mended[column]!);
    if (was.trim() !== text.trim()) mended[column] = { text, was };
  }
  return { ...row, cells: mended };
}

/** What the file says in a cell, for people. */
export function saidBy({ text, broken }: SheetCell): string {
  return broken ?? text;
}
