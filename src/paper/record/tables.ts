import { exceptionsOf, NO_EXCEPTIONS, renewalsOf, runsOf, type RecordTable } from "#station";
import { writeTable } from "../rows.ts";
import type { Sheet } from "../sheet.ts";
import type { TurnaroundRecord } from "./record.ts";

/** What was not seen right at once, first; said also where there is nothing of it. */
export function writeExceptions(sheet: Sheet, record: TurnaroundRecord): void {
  const { findings, amiss } = exceptionsOf(record);
  sheet.heading("Exceptions");
  if (findings.rows.length + amiss.rows.length === 0) {
    sheet.paragraph(NO_EXCEPTIONS);
    return;
  }
  if (findings.rows.length > 0) writeTable(sheet, findings.columns, findings.rows);
  if (amiss.rows.length === 0) return;
  sheet.gap(4);
  writeTable(sheet, amiss.columns, amiss.rows);
}

/** What was renewed and what dates were read, where there is any. */
export function writeRenewals(sheet: Sheet, record: TurnaroundRecord): void {
  writePart(sheet, "Renewed, and dates read", renewalsOf(record));
}

/** Clocks, pulls, primes and delivery, where there is any. */
export function writeRuns(sheet: Sheet, record: TurnaroundRecord): void {
  writePart(sheet, "Clocks, pulls, primes and delivery", runsOf(record));
}

function writePart(sheet: Sheet, heading: string, { columns, rows }: RecordTable): void {
  if (rows.length === 0) return;
  sheet.heading(heading);
  writeTable(sheet, columns, rows);
}
