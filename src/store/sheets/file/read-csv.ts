import { readCsvCell } from "#base";
import type { ParseResult } from "papaparse";
import { decodeText } from "./decode.ts";
import { sheetError } from "./sheet-faults.ts";
import type { BareRows } from "./sheet-table.ts";

const NAMED: Readonly<Record<string, string>> = { ",": "commas", ";": "semicolons", "\t": "tabs" };
const SAYS_DELIMITER = /^sep=(.)\r?\n/i;

/** Rows of comma-separated values: the delimiter is guessed among comma, semicolon and tab. */
export async function readCsv(
  bytes: Uint8Array,
): Promise<{ readonly rows: BareRows; readonly notices: readonly string[] }> {
  const { text, notice } = decodeText(bytes);
  if (text.includes("\0")) throw noSpreadsheet("signs that no text has");
  const said = SAYS_DELIMITER.exec(text);
  const { default: Papa } = await import("papaparse");
  const bare = said ? text.slice(said[0].length) : text;
  const parse = (delimiter: string, preview = 0) => Papa.parse<string[]>(bare, { delimiter, preview });
  const parsed = parse(said?.[1] ?? guessDelimiter(parse));
  const open = parsed.errors.find(({ type }) => type === "Quotes");
  if (open) throw openQuotes((open.row ?? 0) + (said ? 2 : 1));
  return {
    rows: rowsOf(parsed, said ? 2 : 1),
    notices: [...readBy(parsed), ...(notice === undefined ? [] : [notice])],
  };
}

/** Rows by which the delimiter is guessed. */
const LOOKED_AT = 50;

/** The delimiter under which no quote is left open and most rows have as many cells as the first; of those the widest. */
function guessDelimiter(parse: (delimiter: string, preview: number) => ParseResult<string[]>): string {
  const tried = Object.keys(NAMED).map((delimiter) => {
    const { data, errors } = parse(delimiter, LOOKED_AT);
    const wide = data[0]?.length ?? 0;
    const alike = wide > 1 ? data.filter((row) => row.length === wide).length : 0;
    const isWhole = errors.every(({ type }) => type !== "Quotes");
    return { delimiter, rank: [isWhole ? 1 : 0, alike, wide] };
  });
  return tried.toSorted((one, other) => compareRanks(other.rank, one.rank))[0]?.delimiter ?? ",";
}

function compareRanks(one: readonly number[], other: readonly number[]): number {
  const at = one.findIndex((rank, index) => rank !== other[index]);
  return at < 0 ? 0 : (one[at] ?? 0) - (other[at] ?? 0);
}

export function noSpreadsheet(got: string): Error {
  const remedy = "Choose a CSV file, or an XLSX workbook. From another program, save it as one of these first.";
  return sheetError("ST-211", got, "a table: CSV, or an XLSX workbook", remedy);
}

function rowsOf({ data }: ParseResult<string[]>, first: number): BareRows {
  return data.map((cells, at) => ({ number: at + first, cells: cells.map((cell) => ({ text: readCsvCell(cell) })) }));
}

function readBy({ meta, data }: ParseResult<string[]>): readonly string[] {
  const isTable = data.some((row) => row.length > 1);
  return isTable ? [`Read as divided by ${NAMED[meta.delimiter] ?? meta.delimiter}.`] : [];
}

function openQuotes(row: number): Error {
  const remedy = "Look for a quote that is not closed, or that should be written twice.";
  return sheetError("ST-216", `a quote in row ${row}`, "each quote closed", remedy);
}
