import { startsWith } from "./decode.ts";
import { SHEET_LIMITS } from "./limits.ts";
import { noSpreadsheet, readCsv } from "./read-csv.ts";
import { sheetError, tooLongFile, tooManyRows } from "./sheet-faults.ts";
import type { BareRows, SheetRow, SheetTable } from "./sheet-table.ts";

/**
 * Reads a CSV file or one sheet of an XLSX workbook, told apart by what is in it and not by its name. Limits of size are
 * those of {@link SHEET_LIMITS}; beyond one of them nothing is read.
 *
 * @param bytes - the whole file
 * @param name - name of the file
 * @param sheet - which sheet of a workbook; the first where absent
 * @throws InputError ST-210 too long, ST-211 no table, ST-212 damaged, ST-213 rows, ST-214 unpacked, ST-215 columns or a cell,
 *   ST-216 quotes, ST-217 another kind of workbook, ST-218 nothing below the headings
 */
export async function readSheet(bytes: Uint8Array, name: string, sheet?: string): Promise<SheetTable> {
  if (bytes.length > SHEET_LIMITS.bytes) throw tooLongFile(bytes.length);
  if (bytes.length === 0) throw noSpreadsheet("an empty file");
  if (startsWith(bytes, 0xd0, 0xcf, 0x11, 0xe0)) throw otherWorkbook();
  if (!startsWith(bytes, 0x50, 0x4b)) {
    const { rows, notices } = await readCsv(bytes);
    return tableOf(rows, { file: cutName(name), sheets: [], serials: 1900, notices });
  }
  const { readXlsx } = await import("./xlsx/read-xlsx.ts");
  const { rows, ...book } = readXlsx(bytes, sheet);
  const file = cutName(book.sheets.length > 1 ? `${name}, ${book.sheet}` : name);
  return tableOf(rows, { file, ...book, notices: [] });
}

function tableOf(all: BareRows, about: Omit<SheetTable, "heads" | "rows">): SheetTable {
  const filled = all.filter(({ cells }) => cells.some((cell) => cell.text.trim() !== "" || cell.formula !== undefined));
  const at = Math.max(0, filled.findIndex(isHeading));
  const rows = filled.slice(at + 1);
  if (rows.length > SHEET_LIMITS.rows) throw tooManyRows();
  const heads = headsOf(filled[at]);
  if (rows.length === 0 || heads.length === 0) throw nothingBelow();
  for (const row of filled) needSize(row);
  const above = at === 0 ? [] : [`Rows above the headings were left out: ${at}.`];
  return { ...about, heads, rows, notices: [...about.notices, ...above] };
}

/** A title above the table stands alone in its row. */
function isHeading({ cells }: SheetRow): boolean {
  return cells.filter(({ text }) => text.trim() !== "").length > 1;
}

function headsOf(row: SheetRow | undefined): readonly string[] {
  return (row?.cells ?? []).map(({ text }, at) => text.trim() || `column ${at + 1}`);
}

function needSize({ number, cells }: SheetRow): void {
  const isLong = cells.some(({ text }) => text.length > SHEET_LIMITS.cell);
  if (!isLong && cells.length <= SHEET_LIMITS.columns) return;
  const allowed = `at most ${SHEET_LIMITS.columns} columns, and ${SHEET_LIMITS.cell} characters to a cell`;
  throw sheetError("ST-215", `row ${number}`, allowed, "Shorten it. Nothing was taken in.");
}

/** A line in the log keeps the name: at most so many characters. */
function cutName(name: string): string {
  const plain = name.trim() || "sheet";
  return plain.length > 120 ? plain.slice(0, 120).trim() : plain;
}

function otherWorkbook(): Error {
  const remedy = "Open it in a spreadsheet program, take its password off, and save it as XLSX or CSV.";
  return sheetError("ST-217", "an older or locked workbook", "CSV, or an XLSX workbook without a password", remedy);
}

function nothingBelow(): Error {
  const remedy = "Give it one row of headings and a row for each thing below.";
  return sheetError("ST-218", "headings alone", "headings and at least one row", remedy);
}
