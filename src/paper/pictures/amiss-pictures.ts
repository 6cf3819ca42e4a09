import { pictureAt, type Picture } from "#kit";
import { recordOf } from "#readiness";
import { findingsOf, isAmiss, labelOf, labelsOf } from "#station";
import { printable } from "../printable.ts";
import type { TurnaroundRecord } from "../record/record.ts";
import { MARGIN, type Sheet } from "../sheet.ts";
import { drawLit, widthOf } from "./lit-drawing.ts";

const ROW = { columns: 5, height: 70, words: 24, gap: 8 } as const;
/** More than this many are a book: the lines themselves are told all the same. */
const MOST = 10;

interface Placed {
  readonly picture: Picture;
  readonly caption: string;
}

/** The place of each finding, and of each line found wrong, lit in its drawing; nothing where nothing was amiss. */
export function writeAmissPictures(sheet: Sheet, record: TurnaroundRecord): void {
  const placed = amissPictures(record).slice(0, MOST);
  if (placed.length === 0) return;
  sheet.gap(6);
  for (let first = 0; first < placed.length; first += ROW.columns) {
    sheet.need(ROW.height + ROW.words + ROW.gap);
    const top = sheet.pdf.y;
    for (const [at, one] of placed.slice(first, first + ROW.columns).entries()) writeOne(sheet, one, at, top);
    sheet.pdf.x = MARGIN;
    sheet.pdf.y = top + ROW.height + ROW.words + ROW.gap;
  }
}

/** Lines where a finding was raised or that were found wrong, each once, as they stand in the record. */
export function amissPictures(record: TurnaroundRecord): readonly Placed[] {
  const { pattern, turnaround } = record;
  const labels = labelsOf(pattern);
  const found = new Set(findingsOf(record).map(({ step, check }) => `${step}/${check}`));
  const lines = recordOf(turnaround, pattern).filter(
    (line) => found.has(`${line.step}/${line.check}`) || (line.answer !== undefined && isAmiss(record, line)),
  );
  return lines.flatMap((line) => {
    const picture = pictureAt(pattern, line.step, line.check);
    return picture ? [{ picture, caption: `Line ${labelOf(labels, line)}: ${picture.names.join(", ")}` }] : [];
  });
}

function writeOne({ pdf, width }: Sheet, { picture, caption }: Placed, at: number, top: number): void {
  const left = MARGIN + (at * width) / ROW.columns;
  drawLit(pdf, picture.drawing, picture.lit, { left, top, height: ROW.height });
  const words = { width: widthOf(ROW.height), height: ROW.words, ellipsis: true };
  pdf.font("regular").fontSize(8).fillColor("#000");
  pdf.text(printable(caption), left, top + ROW.height + 3, words);
}
