import { formatDate } from "#base";
import type { Standing } from "#readiness";
import { writeLateLines } from "./late-lines.ts";
import { writePhotos } from "./photos.ts";
import { photosOf, writeLines } from "./record/every-line.ts";
import { nameOf, summaryOf } from "#station";
import { writeExceptions, writeRenewals, writeRuns } from "./record/tables.ts";
import type { TurnaroundRecord } from "./record/record.ts";
import { writeSignatures } from "./record/signatures.ts";
import { writeTable, type Row } from "./rows.ts";
import { writeProof } from "./record-proof.ts";
import { createSheet, type Sheet } from "./sheet.ts";

/**
 * The record of one turnaround: who, when, what was amiss first, then what was renewed, every clock and run, each line in
 * the words of the screen with its readings and limits, signatures, photos and proof.
 *
 * @returns a PDF
 */
export async function renderTurnaroundRecord(record: TurnaroundRecord): Promise<Uint8Array> {
  const { kit, turnaround, stationName, now } = record;
  const title = `${kit.name}, serial ${kit.serial}: turnaround of ${turnaround.opened.at.slice(0, 10)}`;
  const sheet = createSheet({ title, now, footer: `${stationName}   ${kit.serial}   turnaround ${turnaround.id}` });
  sheet.title(title);
  sheet.paragraph(`${stationName}, ${record.placeName}. Pattern ${kit.pattern}.`);
  writeSummary(sheet, record);
  writeExceptions(sheet, record);
  writeLateLines(sheet, record.late, (person) => nameOf(record, person));
  writeRenewals(sheet, record);
  writeRuns(sheet, record);
  writeLines(sheet, record);
  writeSignatures(sheet, record);
  writePhotos(sheet, photosOf(record), record.photos);
  writeProof(sheet, record.proofs);
  return sheet.finish();
}

function writeSummary(sheet: Sheet, record: TurnaroundRecord): void {
  const columns = [
    { name: "What", part: 0.2 },
    { name: "Record", part: 0.8 },
  ];
  sheet.gap(6);
  writeTable(sheet, columns, summaryRows(record));
}

function summaryRows(record: TurnaroundRecord): readonly Row[] {
  const { standing, kit } = record;
  return [
    ...summaryOf(record),
    { cells: ["Standing now", standingWords(standing)], bold: true },
    { cells: ["Because", standing.because.map(({ text }) => text).join(" ")] },
    ...(kit.toSettle.length > 0 ? [{ cells: ["To settle", kit.toSettle.map(({ about }) => about).join(" ")] }] : []),
  ];
}

function standingWords({ standing, lapse, limits }: Standing): string {
  const until = lapse ? `, until ${formatDate(lapse.day)} (${lapse.what})` : "";
  const limited = limits.length > 0 ? `. Limits: ${limits.join("; ")}` : "";
  return `${standing.replaceAll("-", " ")}${until}${limited}`;
}
