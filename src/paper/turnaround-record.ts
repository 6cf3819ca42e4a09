import { formatDate } from "#base";
import type { StandingInWords } from "#readiness";
import { writeLateLines } from "./late-lines.ts";
import { writePhotos } from "./photos.ts";
import { writeAmissPictures } from "./pictures/amiss-pictures.ts";
import { photosOf, writeLines } from "./record/every-line.ts";
import { nameOf, summaryOf } from "#station";
import { writeExceptions, writeRenewals, writeRuns } from "./record/tables.ts";
import type { TurnaroundRecord } from "./record/record.ts";
import { writeSignatures } from "./record/signatures.ts";
import { writeTable, type Row } from "./rows.ts";
import { writeProof } from "./record-proof.ts";
import { createSheet, writeToFit, type Sheet } from "./sheet.ts";

/** A clean turnaround is on no more pages. */
const MOST_PAGES = 4;
/** Sizes of the letters of its lines [pt]; the smaller one where that saves a page. 7 pt is 2.5 mm. */
const SIZES = [7.5, 7] as const;

/**
 * The record of one turnaround: who, when, what was amiss first, then what was renewed, every clock and run, each line in
 * the words of the screen with its readings and limits, signatures, photos and proof.
 *
 * @returns a PDF
 */
export async function renderTurnaroundRecord(record: TurnaroundRecord): Promise<Uint8Array> {
  const fitting = writeToFit(SIZES, MOST_PAGES, (size) => written(record, size));
  return (fitting?.sheet ?? written(record, SIZES[0])).finish();
}

function written(record: TurnaroundRecord, size: number): Sheet {
  const { kit, turnaround, stationName, now } = record;
  const footer = `${stationName}   ${kit.serial}   turnaround ${turnaround.id}`;
  const sheet = createSheet({ title: titleOf(record), now, footer });
  writeTurnaround(sheet, record, size);
  return sheet;
}

function titleOf({ kit, turnaround }: TurnaroundRecord): string {
  return `${kit.name}, serial ${kit.serial}: turnaround of ${turnaround.opened.at.slice(0, 10)}`;
}

/** Writes all of it from where the pen is; other papers append it. */
export function writeTurnaround(sheet: Sheet, record: TurnaroundRecord, size: number = SIZES[0]): void {
  const { kit, stationName } = record;
  sheet.title(titleOf(record));
  sheet.paragraph(`${stationName}, ${record.placeName}. Pattern ${kit.pattern}.`);
  writeSummary(sheet, record);
  writeExceptions(sheet, record);
  writeAmissPictures(sheet, record);
  writeLateLines(sheet, record.late, (person) => nameOf(record, person));
  writeRenewals(sheet, record, size);
  writeRuns(sheet, record, size);
  writeLines(sheet, record, size);
  writeSignatures(sheet, record);
  writePhotos(sheet, photosOf(record), record.photos);
  writeProof(sheet, record.proofs);
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

function standingWords({ standing, lapse, limits }: StandingInWords): string {
  const until = lapse ? `, until ${formatDate(lapse.day)} (${lapse.what})` : "";
  const limited = limits.length > 0 ? `. Limits: ${limits.join("; ")}` : "";
  return `${standing.replaceAll("-", " ")}${until}${limited}`;
}
