import { writeTable } from "../rows.ts";
import type { Sheet } from "../sheet.ts";
import type { TurnaroundRecord } from "./record.ts";
import { nameOf, secondPerson } from "#station";

const COLUMNS = [
  { name: "", part: 0.22 },
  { name: "Name", part: 0.28 },
  { name: "Signature", part: 0.32 },
  { name: "Date", part: 0.18 },
];

/** Lines to sign on paper: who did it, and the second person who saw it closed. */
export function writeSignatures(sheet: Sheet, record: TurnaroundRecord): void {
  const { closed, opened } = record.turnaround;
  const done = nameOf(record, (closed ?? opened).by);
  sheet.heading("Signatures");
  sheet.need(90);
  writeTable(sheet, COLUMNS, [
    { cells: ["Done and closed by", done], height: 24 },
    { cells: ["Second person", secondPerson(record) ?? ""], height: 24 },
  ]);
}
