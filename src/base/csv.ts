/* Comma-separated values. A spreadsheet runs what looks like a formula: such a cell is led by an apostrophe. */

/** A cell: text, or a number that is written bare, since no number is a formula. */
export type CsvCell = string | number;

/** What spreadsheets take for a formula at the start of a cell, in narrow and in wide letters. */
const STARTS_FORMULA = /^'*[=+\-@\t\r\n＝＋－＠]/;
const MADE_HARMLESS = /^'+[=+\-@\t\r\n＝＋－＠]/;
const WANTS_QUOTES = /[",;\t\r\n]|^\s|\s$/;

/**
 * Rows as comma-separated values, each line ended by CR LF.
 *
 * @param rows - the heads first
 * @returns one piece of text for each row, so that a long table need not be held whole
 * @source RFC 4180, section 2; OWASP, CSV Injection (a cell that begins with = + - @, tab or return)
 * @example [...csvLines([["name", "count"], ["Hose, 8 ft", 2]])].join("") // "name,count\r\n\"Hose, 8 ft\",2\r\n"
 */
export function* csvLines(rows: Iterable<readonly CsvCell[]>): Generator<string> {
  for (const row of rows) yield `${row.map(csvCell).join(",")}\r\n`;
}

/**
 * One cell as it stands in the file: harmless, and quoted where it must be.
 *
 * @example csvCell("=1+1") // "'=1+1"
 */
export function csvCell(cell: CsvCell): string {
  if (typeof cell === "number") return String(cell);
  const plain = STARTS_FORMULA.test(cell) ? `'${cell}` : cell;
  return WANTS_QUOTES.test(plain) ? `"${plain.replaceAll('"', '""')}"` : plain;
}

/**
 * What a cell said before it was made harmless.
 *
 * @param text - the cell as a reader of the file gives it, its quotes gone
 * @example readCsvCell("'=1+1") // "=1+1"
 */
export function readCsvCell(text: string): string {
  return MADE_HARMLESS.test(text) ? text.slice(1) : text;
}
