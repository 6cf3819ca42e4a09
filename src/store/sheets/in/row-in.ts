import {
  dateOfSerial,
  formatDate,
  formatMonth,
  isMonth,
  printGiven,
  readWrittenDate,
  type DateOrder,
  type Fault,
  type WrittenDate,
  plainName,
} from "#base";
import type { FromSheet } from "#readiness";
import type { Act, Draft } from "#station";
import type { SheetCell, SheetRow, SheetTable } from "../file/sheet-table.ts";
import type { Mapping, SheetField } from "./fields.ts";
import { readCount } from "./read-count.ts";

/** What is wrong with a row, named as the spreadsheet shows it. */
export interface RowFault {
  readonly row: number;
  /** Heading of its column, where it is of one. */
  readonly column?: string;
  /** Which column that is, from 0. */
  readonly at?: number;
  readonly fault: Fault;
}

/** How a table is to be read. */
export interface Reading {
  readonly table: SheetTable;
  readonly fields: readonly SheetField[];
  readonly mapping: Mapping;
  readonly order?: DateOrder;
}

const EMPTY: SheetCell = { text: "" };
const YES = new Set(["yes", "y", "true", "1", "x", "ja", "oui", "si"]);
const NO = new Set(["no", "n", "false", "0", "", "nei", "nein", "non"]);

/** One row while it is read: what each cell says, how it was understood, and every fault of it. */
export class RowIn {
  readonly faults: RowFault[] = [];
  readonly notes: string[] = [];
  /** As it was understood, by field. */
  readonly read: Record<string, string> = {};
  /** Dates that may be two days, until somebody says which comes first. */
  readonly either: (WrittenDate & { readonly kind: "either" })[] = [];
  readonly #reading: Reading;
  readonly #row: SheetRow;

  constructor(reading: Reading, row: SheetRow) {
    this.#reading = reading;
    this.#row = row;
  }

  get number(): number {
    return this.#row.number;
  }

  /** The row, as a line of the log names it. */
  get sheet(): FromSheet {
    return { file: this.#reading.table.file, row: this.number };
  }

  /** The text of a field; "" where it is empty. */
  text(key: string): string {
    const cell = this.#cell(key);
    if (cell.formula === "lost" || cell.broken !== undefined) {
      const got = cell.broken ?? "a formula without a kept result";
      this.fault(
        "ST-224",
        key,
        got,
        "what it comes to",
        "Open the sheet, save it once more, or write the value itself.",
      );
      return "";
    }
    const text = cell.text.trim();
    if (cell.formula === "kept") this.notes.push(`${this.#label(key)}: result of a formula, as it was kept`);
    if (cell.was !== undefined)
      this.notes.push(`${this.#label(key)}: changed here; the sheet says ${sayWas(cell.was)}`);
    if (text !== "") this.read[key] = text;
    return text;
  }

  /** The text of a field that every row must have. */
  needed(key: string): string {
    const before = this.faults.length;
    const text = this.text(key);
    if (text === "" && this.faults.length === before) {
      this.fault("ST-221", key, undefined, "some words", "Fill it in, or take the row out.");
    }
    return text;
  }

  /** One of what there is, by any of its names; undefined where it is none, or empty. */
  oneOf<T>(
    key: string,
    all: readonly T[],
    namesOf: (one: T) => readonly string[],
    text = this.needed(key),
  ): T | undefined {
    if (text === "") return undefined;
    const found = all.find((one) => namesOf(one).some((name) => plainName(name) === plainName(text)));
    if (found === undefined) {
      const names = all.map((one) => namesOf(one)[0]).slice(0, 12);
      this.fault(
        "ST-222",
        key,
        text,
        names.join(", ") || "none there yet",
        names.length > 0 ? "Write one of these." : "Make it here first.",
      );
    } else this.read[key] = namesOf(found)[0] ?? text;
    return found;
  }

  /** A day, or a month; undefined where it is empty or wrong. */
  date(key: string): string | undefined {
    const { number } = this.#cell(key);
    const text = this.text(key);
    if (text === "") return undefined;
    const serial = number ?? (/^\d{5}$/.test(text) ? Number(text) : undefined);
    const day = serial === undefined ? undefined : dateOfSerial(serial, this.#reading.table.serials);
    if (day !== undefined) this.notes.push(`${this.#label(key)}: ${text} is the serial number of a day`);
    const read: WrittenDate =
      day === undefined ? readWrittenDate(text, this.#reading.order, key) : { kind: "date", date: day };
    if (read.kind === "date") {
      this.read[key] = isMonth(read.date) ? formatMonth(read.date) : formatDate(read.date);
      return read.date;
    }
    if (read.kind === "either") this.either.push(read);
    this.#push(key, read.fault);
    return undefined;
  }

  /** A whole number, with its unit or without; undefined where it is empty or wrong. */
  count(key: string, unit: string): number | undefined {
    const text = this.text(key);
    if (text === "") return undefined;
    const read = readCount(text, unit);
    if (read.kind === "count") {
      this.read[key] = unit === "" ? String(read.count) : `${read.count} ${unit}`;
      return read.count;
    }
    this.fault("ST-223", key, text, read.allowed, "Write how many there are, as a whole number.");
    return undefined;
  }

  /** An amount without a unit; undefined where it is empty or wrong. */
  amount(key: string): number | undefined {
    const text = this.text(key);
    if (text === "") return undefined;
    const amount = /^\d+([.,]\d+)?$/.test(text) ? Number(text.replace(",", ".")) : Number.NaN;
    if (Number.isFinite(amount)) return amount;
    this.fault(
      "ST-229",
      key,
      text,
      "a number without signs, such as 12.50",
      "Leave the currency and the thousands' sign out.",
    );
    return undefined;
  }

  /** Yes or no; undefined where it is empty. */
  yesOrNo(key: string): boolean | undefined {
    const text = this.text(key);
    const word = text.toLowerCase();
    if (text === "" || YES.has(word) || NO.has(word)) return text === "" ? undefined : YES.has(word);
    this.fault("ST-222", key, text, "yes or no", "Write one of these.");
    return undefined;
  }

  fault(code: string, key: string, got: unknown, allowed: string, remedy: string): void {
    this.#push(key, { code, field: key, got: printGiven(got), allowed, remedy });
  }

  /**
   * What the station's rules say of a line.
   *
   * @param keys - the field of each part of the line that they may speak of
   */
  take(act: Act, keys: Readonly<Record<string, string>> = {}): readonly Draft[] {
    if (act.kind === "entry") return [act.draft];
    this.say(act.because, keys);
    return [];
  }

  /** Faults of a line that is not made, under the fields of its parts. */
  say(faults: readonly Fault[], keys: Readonly<Record<string, string>>): void {
    for (const fault of faults) this.#push(keys[fault.field] ?? "", fault);
  }

  #push(key: string, fault: Fault): void {
    if (this.faults.some((one) => one.fault.code === fault.code && one.fault.field === fault.field)) return;
    const column = this.#reading.mapping.columns.indexOf(key);
    const head = column < 0 ? undefined : this.#reading.table.heads[column];
    this.faults.push({ row: this.number, ...(head !== undefined && { column: head, at: column }), fault });
  }

  #cell(key: string): SheetCell {
    const { columns, fixed } = this.#reading.mapping;
    const column = columns.indexOf(key);
    if (column < 0) return fixed[key] === undefined ? EMPTY : { text: fixed[key] };
    return this.#row.cells[column] ?? EMPTY;
  }

  #label(key: string): string {
    return this.#reading.fields.find((field) => field.key === key)?.label ?? key;
  }
}

function sayWas(was: string): string {
  return was.trim() === "" ? "nothing" : `"${was.trim()}"`;
}
