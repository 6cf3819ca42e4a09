import { plainName, printGiven, type DateOrder, type Fault, type PlainDate } from "#base";
import type { ActContext, Draft } from "#station";
import type { SheetTable } from "../file/sheet-table.ts";
import type { Mapping, SheetField } from "./fields.ts";
import { kitFields, readKit } from "./kits-in.ts";
import { PART_FIELDS, readParts } from "./parts-in.ts";
import { PEOPLE_FIELDS, readPerson } from "./people-in.ts";
import { readTurnaround, TURNAROUND_FIELDS } from "./turnarounds-in.ts";
import { RowIn, type Reading, type RowFault } from "./row-in.ts";

/** What a sheet may hold. */
export type SheetOf = "people" | "kits" | "parts" | "turnarounds";

/** Everything that is to be taken in, judged: either no row is bad, or nothing of it may be written. */
export interface SheetPlan {
  /** Every row as it was understood. */
  readonly rows: readonly PlannedRow[];
  readonly bad: readonly RowFault[];
  /** What is wrong with the columns, before any row is looked at. */
  readonly columns: readonly Fault[];
  /** The lines to be written, in order; none where anything is bad. */
  readonly drafts: readonly Draft[];
  /** A date whose day and month could be either way round. */
  readonly either?: { readonly dayFirst: PlainDate; readonly monthFirst: PlainDate; readonly text: string };
}

export interface PlannedRow {
  readonly number: number;
  /** By field. */
  readonly read: Readonly<Record<string, string>>;
  readonly notes: readonly string[];
}

/** What a person said of a sheet. */
export interface SheetSaid {
  readonly of: SheetOf;
  readonly table: SheetTable;
  readonly mapping: Mapping;
  /** Which comes first in 03/04/2026, once somebody said so. */
  readonly order?: DateOrder;
}

/** What the columns of such a sheet may be, at this station. */
export function fieldsOf(of: SheetOf, { patterns }: Pick<ActContext, "patterns">): readonly SheetField[] {
  if (of === "people") return PEOPLE_FIELDS;
  if (of === "parts") return PART_FIELDS;
  return of === "kits" ? kitFields(patterns.values()) : TURNAROUND_FIELDS;
}

/**
 * Judges a whole sheet and makes the lines of it. Nothing is written here.
 *
 * @param doing - the station as it stands, and who takes the sheet in
 * @param newId - an id for each new thing
 * @returns every row as it was read; ST-220 a column that is wanted or chosen twice; by row ST-221 empty, ST-222 not one of
 *   those there are, ST-223 count, ST-224 formula, ST-225 twice, ST-226 unlike an earlier row, ST-227 kit, ST-228 item,
 *   ST-229 amount, ST-230 a kit that is here and told of otherwise, ST-231 a turnaround told of before, BA-118 to BA-120 dates, and what the station's rules say
 */
export function planSheet(said: SheetSaid, doing: ActContext, newId: () => string): SheetPlan {
  const fields = fieldsOf(said.of, doing);
  const columns = judgeColumns(said.mapping, fields);
  if (columns.length > 0) return { rows: [], bad: [], columns, drafts: [] };
  const reading: Reading = { ...said, fields };
  const rows = said.table.rows.map((row) => new RowIn(reading, row));
  const drafts = draftsOf(said.of, rows, doing, newId);
  for (const key of ONCE[said.of]) needOnce(rows, key);
  if (said.of === "turnarounds") needEachOnce(rows);
  const bad = rows.flatMap(({ faults }) => faults);
  const either = eitherIn(rows, bad);
  const planned = rows.map(({ number, read, notes }) => ({ number, read, notes: [...new Set(notes)] }));
  return { rows: planned, bad, columns, drafts: bad.length > 0 ? [] : drafts, ...(either && { either }) };
}

function draftsOf(of: SheetOf, rows: readonly RowIn[], doing: ActContext, newId: () => string): readonly Draft[] {
  if (of === "people") return rows.flatMap((row) => readPerson(row, doing, newId));
  if (of === "parts") return readParts(rows, doing, newId);
  if (of === "turnarounds") return rows.flatMap((row) => readTurnaround(row, doing));
  return rows.flatMap((row) => readKit(row, doing, newId));
}

/** What no two rows of a sheet may share. */
const ONCE: Readonly<Record<SheetOf, readonly string[]>> = {
  people: ["name"],
  kits: ["name", "serial", "seal"],
  parts: [],
  turnarounds: [],
};

/** Two rows of one sheet that tell of the same turnaround. */
function needEachOnce(rows: readonly RowIn[]): void {
  const first = new Map<string, number>();
  for (const row of rows) {
    const { kit, day, doneBy = "", result = "" } = row.read;
    if (kit === undefined || day === undefined) continue;
    const said = JSON.stringify([kit, day, doneBy, result].map(plainName));
    const before = first.get(said);
    if (before === undefined) first.set(said, row.number);
    else row.fault("ST-225", "day", day, "each turnaround once", `It repeats row ${before}: take one of the two out.`);
  }
}

function needOnce(rows: readonly RowIn[], key: string): void {
  const first = new Map<string, number>();
  for (const row of rows) {
    const text = row.read[key];
    if (text === undefined) continue;
    const before = first.get(plainName(text));
    if (before === undefined) first.set(plainName(text), row.number);
    else
      row.fault(
        "ST-225",
        key,
        text,
        `one that row ${before} does not have`,
        "Take one of the two rows out, or correct it.",
      );
  }
}

function judgeColumns({ columns, fixed }: Mapping, fields: readonly SheetField[]): readonly Fault[] {
  const chosen = columns.filter((key) => key !== undefined);
  return fields.flatMap(({ key, label, isNeeded }): readonly Fault[] => {
    const times = chosen.filter((one) => one === key).length;
    const base = { code: "ST-220", field: key };
    if (times > 1) {
      return [
        {
          ...base,
          got: printGiven(`${times} columns`),
          allowed: `one column for ${label}`,
          remedy: "Leave the others out.",
        },
      ];
    }
    if (!isNeeded || times > 0 || fixed[key] !== undefined) return [];
    return [{ ...base, got: "no column", allowed: `a column for ${label}`, remedy: "Say which column it is." }];
  });
}

function eitherIn(rows: readonly RowIn[], bad: readonly RowFault[]): SheetPlan["either"] {
  const first = rows.flatMap(({ either }) => either)[0];
  if (first === undefined) return undefined;
  const text = bad.find(({ fault }) => fault.code === "BA-119")?.fault.got ?? "";
  return { dayFirst: first.dayFirst, monthFirst: first.monthFirst, text };
}
