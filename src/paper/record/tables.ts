import { exceptionsOf, NO_EXCEPTIONS, renewalsOf, runsOf, type RecordTable } from "#station";
import { writeFlow } from "../flow/flow.ts";
import { textPiece } from "../flow/text-piece.ts";
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

/** What was renewed and what dates were read, where there is any: a new kit has many. In letters of this size [pt]. */
export function writeRenewals(sheet: Sheet, record: TurnaroundRecord, size: number): void {
  writePart(sheet, "Renewed, and dates read", renewalsOf(record), size);
}

/** Clocks, pulls, primes and delivery, where there is any, in letters of this size [pt]. */
export function writeRuns(sheet: Sheet, record: TurnaroundRecord, size: number): void {
  writePart(sheet, "Clocks, pulls, primes and delivery", runsOf(record), size);
}

/** Rows of line, what, how it was found, who and when, in two columns. */
function writePart(sheet: Sheet, heading: string, { rows }: RecordTable, size: number): void {
  if (rows.length === 0) return;
  sheet.heading(heading);
  writeFlow(
    sheet,
    rows.map(({ cells: [line, what, found, writer] }) =>
      textPiece({ text: `${line}  ${what}: ${found}  [${writer}]`.replace(".:", ":").trim() }, size),
    ),
  );
}
