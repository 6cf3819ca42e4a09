import type { BareRows } from "../sheet-table.ts";
import { readRows } from "./read-rows.ts";
import { readDayStyles, readSharedStrings } from "./shared-parts.ts";
import { openPackage } from "./unpack.ts";
import { readWorkbook } from "./workbook.ts";

/** One sheet of a workbook, and the names of all. */
export interface ReadWorkbook {
  readonly rows: BareRows;
  readonly sheets: readonly string[];
  readonly sheet: string;
  readonly serials: 1900 | 1904;
}

/** Reads one sheet of an XLSX workbook; the first where none is named, or none is called so. */
export function readXlsx(bytes: Uint8Array, wanted?: string): ReadWorkbook {
  const pack = openPackage(bytes);
  const { sheets, serials, strings, styles } = readWorkbook(pack);
  const chosen = sheets.find(({ name }) => name === wanted) ?? sheets[0]!;
  const part = (name: string | undefined) => (name === undefined ? undefined : pack.text(name));
  const rows = readRows(part(chosen.part) ?? "<none/>", {
    strings: readSharedStrings(part(strings) ?? "<none/>"),
    days: readDayStyles(part(styles) ?? "<none/>"),
    serials,
  });
  return { rows, sheets: sheets.map(({ name }) => name), sheet: chosen.name, serials };
}
