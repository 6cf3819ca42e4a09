import { STRANGER_CARD, type CardLine, type Stroke } from "#station";
import { writeCautions } from "./caution-panel.ts";
import { createSheet, MARGIN, type Sheet } from "./sheet.ts";

/** Field of a picture as drawn, and its width on paper [pt]. */
const FIELD = { width: 120, height: 96 };
const PICTURE_WIDTH = 92;
const SCALE = PICTURE_WIDTH / FIELD.width;
const ROW = FIELD.height * SCALE + 8;

/**
 * The card for strangers on one page, to laminate and keep inside the lid.
 *
 * @returns a PDF
 */
export async function renderReadDoCard(card: {
  readonly stationName: string;
  /** RFC 3339 */
  readonly now: string;
}): Promise<Uint8Array> {
  const title = "Pump: read a line, do it, read the next";
  const sheet = createSheet({ title, now: card.now, footer: `${card.stationName}   card for strangers` });
  sheet.title(title);
  sheet.gap(4);
  STRANGER_CARD.forEach((line, i) => writeLine(sheet, line, i + 1));
  writeCautions(sheet, ["unit-manual-first"]);
  return sheet.finish();
}

function writeLine(sheet: Sheet, line: CardLine, number: number): void {
  const { pdf, width } = sheet;
  sheet.need(ROW);
  const top = pdf.y;
  drawPicture(pdf, line.picture, top);
  const left = MARGIN + PICTURE_WIDTH + 12;
  const inner = width - PICTURE_WIDTH - 12;
  pdf.font("bold").fontSize(15).fillColor("#000").text(`${number}. ${line.do}`, left, top, { width: inner });
  pdf
    .font("regular")
    .fontSize(11.5)
    .text(line.why, left, pdf.y + 1, { width: inner });
  pdf.x = MARGIN;
  pdf.y = top + ROW;
}

function drawPicture(pdf: PDFKit.PDFDocument, picture: readonly Stroke[], top: number): void {
  pdf.save();
  pdf.translate(MARGIN, top).scale(SCALE);
  pdf.rect(0, 0, FIELD.width, FIELD.height).clip();
  for (const stroke of picture) drawStroke(pdf, stroke);
  pdf.restore();
  pdf
    .lineWidth(0.8)
    .strokeColor("#000")
    .rect(MARGIN, top, PICTURE_WIDTH, FIELD.height * SCALE)
    .stroke();
}

function drawStroke(pdf: PDFKit.PDFDocument, { d, as = "line" }: Stroke): void {
  const path = pdf.path(d);
  if (as === "water") path.fill("#9bbfd2");
  else
    path
      .lineWidth(as === "no" ? 6 : 3)
      .lineCap("round")
      .strokeColor(as === "no" ? "#c8102e" : "#000")
      .stroke();
}
