import { dateOfSerial, isDate } from "#base";
import { SHEET_LIMITS } from "../limits.ts";
import { sheetError, tooManyRows } from "../sheet-faults.ts";
import type { BareRows, SheetCell, SheetRow } from "../sheet-table.ts";
import { unescapeText } from "./shared-parts.ts";
import { walkXml } from "./walk-xml.ts";

/** What cells of a sheet point to. */
export interface Beside {
  readonly strings: readonly string[];
  readonly days: ReadonlySet<number>;
  readonly serials: 1900 | 1904;
}

/** Rows of a sheet that hold anything. Nothing is read beyond the limits. @throws InputError ST-213, ST-215 */
export function readRows(xml: string, beside: Beside): BareRows {
  const reader = new RowReader(beside);
  walkXml(xml, reader);
  if (reader.isTooLong) throw tooManyRows();
  if (reader.isTooWide) throw tooWide();
  return reader.rows;
}

class RowReader {
  readonly rows: SheetRow[] = [];
  isTooLong = false;
  isTooWide = false;
  readonly #beside: Beside;
  #row = 0;
  #cells: SheetCell[] = [];
  #column = -1;
  #cell: RawCell = blank();
  #into: "value" | "inline" | undefined;

  constructor(beside: Beside) {
    this.#beside = beside;
  }

  readonly isDone = () => this.isTooLong || this.isTooWide;

  open(name: string, attributes: () => Readonly<Record<string, string>>): void {
    if (name === "row") this.#openRow(attributes()["r"]);
    else if (name === "c") this.#openCell(attributes());
    else if (name === "f") this.#cell.isFormula = true;
    else if (name === "v") this.#into = "value";
    else if (name === "t") this.#into = "inline";
    else if (name === "rPh") this.#into = undefined;
  }

  close(name: string): void {
    this.#into = undefined;
    if (name === "c") this.#closeCell();
    if (name === "row") this.#closeRow();
  }

  text(text: string): void {
    if (this.#into === "value") this.#cell.value = (this.#cell.value ?? "") + text;
    if (this.#into === "inline") this.#cell.inline += text;
  }

  #openRow(number: string | undefined): void {
    this.#row = number === undefined ? this.#row + 1 : Number(number);
    this.#cells = [];
    this.#column = -1;
  }

  #openCell({ r, t = "n", s = "0" }: Readonly<Record<string, string>>): void {
    this.#column = r === undefined ? this.#column + 1 : columnOf(r);
    this.#cell = { ...blank(), type: t, style: Number(s) };
  }

  #closeCell(): void {
    const cell = readCell(this.#cell, this.#beside);
    if (cell === undefined) return;
    if (this.#column >= SHEET_LIMITS.columns) this.isTooWide = true;
    else this.#cells[this.#column] = cell;
  }

  #closeRow(): void {
    if (this.#cells.length === 0) return;
    const cells = Array.from(this.#cells, (cell) => cell ?? { text: "" });
    this.rows.push({ number: this.#row, cells });
    this.isTooLong = this.rows.length > SHEET_LIMITS.rows + MOST_ABOVE;
  }
}

/** The headings, and so many rows above them. */
const MOST_ABOVE = 10;

interface RawCell {
  readonly type: string;
  readonly style: number;
  isFormula: boolean;
  value: string | undefined;
  inline: string;
}

function blank(): RawCell {
  return { type: "n", style: 0, isFormula: false, value: undefined, inline: "" };
}

/** "BC12" is column 54, from 0. */
function columnOf(reference: string): number {
  const letters = reference.replace(/\d+$/, "").toUpperCase();
  return [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
}

function readCell(raw: RawCell, beside: Beside): SheetCell | undefined {
  const isEmpty = raw.value === undefined && raw.inline === "";
  if (isEmpty) return raw.isFormula ? { text: "", formula: "lost" } : undefined;
  const cell = readValue(raw, beside);
  return raw.isFormula ? { ...cell, formula: "kept" } : cell;
}

function readValue({ type, style, value = "", inline }: RawCell, { strings, days, serials }: Beside): SheetCell {
  if (type === "s") return { text: strings[Number(value)] ?? "" };
  if (type === "inlineStr") return { text: unescapeText(inline) };
  if (type === "str") return { text: unescapeText(value) };
  if (type === "e") return { text: value, broken: value };
  if (type === "b") return { text: value === "1" ? "yes" : "no" };
  if (type === "d") return { text: isDate(value.slice(0, 10)) ? value.slice(0, 10) : value };
  const number = Number(value);
  const day = days.has(style) ? dateOfSerial(number, serials) : undefined;
  return day === undefined ? { text: plainNumber(number), number } : { text: day };
}

/** 0.1 + 0.2 was kept as 0.30000000000000004: fifteen figures are all that a spreadsheet shows. */
function plainNumber(number: number): string {
  return Number.isFinite(number) ? String(Number(number.toPrecision(15))) : "";
}

function tooWide(): Error {
  const allowed = `at most ${SHEET_LIMITS.columns} columns`;
  return sheetError("ST-215", "more columns", allowed, "Take out what is not wanted. Nothing was taken in.");
}
