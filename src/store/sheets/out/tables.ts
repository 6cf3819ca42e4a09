import { csvLines } from "#base";
import { drillRows, visitRows } from "./check-tables.ts";
import { contentRows, findingRows, kitRows, turnaroundRows } from "./kit-tables.ts";
import { casualtyRows, lineRows, peopleRows, qualificationRows, workRows } from "./people-tables.ts";
import { orderRows, partRows } from "./stock-tables.ts";
import type { OutRow, TableSource } from "./table-source.ts";

/** A table that can be written out. */
export interface OutTable {
  readonly id: string;
  readonly name: string;
  readonly note: string;
  readonly rows: (source: TableSource) => Iterable<OutRow>;
}

/** Every table there is, in the order in which they are shown. */
export const TABLES = [
  { id: "kits", name: "Kits", note: "With seal, dates and standing. Comes back in from a sheet.", rows: kitRows },
  { id: "contents", name: "Contents", note: "Every item of every kit, with its dates.", rows: contentRows },
  { id: "findings", name: "Findings", note: "Open and closed.", rows: findingRows },
  {
    id: "turnarounds",
    name: "Turnarounds",
    note: "Done here, and told of from before. Comes back in from a sheet as told of.",
    rows: turnaroundRows,
  },
  { id: "people", name: "People", note: "Who is here, and as what. Comes back in from a sheet.", rows: peopleRows },
  { id: "qualifications", name: "Qualifications", note: "Who holds which, until when.", rows: qualificationRows },
  { id: "parts", name: "Parts and stock", note: "By place and lot. Comes back in from a sheet.", rows: partRows },
  { id: "orders", name: "Order list", note: "What to order by which day.", rows: orderRows },
  { id: "work", name: "Work due", note: "Within a month.", rows: workRows },
  { id: "casualties", name: "Casualties", note: "Each with when it was opened and closed.", rows: casualtyRows },
  { id: "drills", name: "Drills", note: "Every planted fault, and whether it was found.", rows: drillRows },
  {
    id: "visits",
    name: "Visits",
    note: "Every line an assessor looked at again, and what both said.",
    rows: visitRows,
  },
  { id: "lines", name: "Lines of the log", note: "Every line, struck ones too.", rows: lineRows },
] as const satisfies readonly OutTable[];

export type TableId = (typeof TABLES)[number]["id"];

/** Ids of the tables. */
export const TABLE_IDS: readonly TableId[] = TABLES.map(({ id }) => id);

/**
 * A table as comma-separated values, headings first.
 *
 * @returns one piece of text for each row
 * @source RFC 4180
 */
export function tableCsv(id: TableId, source: TableSource): Generator<string> {
  const table: OutTable | undefined = TABLES.find((one) => one.id === id);
  return csvLines(table?.rows(source) ?? []);
}
