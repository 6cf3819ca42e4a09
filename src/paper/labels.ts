import { LABEL_SHEETS, type LabelSheet, type LabelSheetId } from "#station";
import PdfKit from "pdfkit";
import { registerFonts } from "./fonts.ts";
import { printable } from "./printable.ts";
import { drawQr } from "./qr.ts";
import { collectPdf } from "./sheet.ts";

/** One label: what a person reads, and the text of its code. */
export interface Label {
  readonly title: string;
  /** Below the title: a serial, a place. Typed by hand where the camera does not read. */
  readonly line: string;
  readonly code: string;
}

/** Labels for a sheet that some may have been taken off. */
export interface Labels {
  readonly labels: readonly Label[];
  readonly sheet: LabelSheetId;
  /** Labels at the beginning of the first sheet that are used up. */
  readonly skip: number;
  /** RFC 3339: kept as the file's date. */
  readonly now: string;
}

const MM = 72 / 25.4;
/** Kept clear at each edge of a label [pt]: printers pull paper in by as much. */
const EDGE = 2.5 * MM;
/** From this height on it is a card: the code stands below the words [mm]. */
const CARD_HEIGHT = 100;

/**
 * Labels as PDF, for sheets of a common size: to be printed at 100 %, without fitting to the page.
 *
 * @returns a PDF of as many sheets as are needed; one empty sheet for no labels
 */
export async function renderLabels({ labels, sheet: wanted, skip, now }: Labels): Promise<Uint8Array> {
  const sheet: LabelSheet = LABEL_SHEETS.find(({ id }) => id === wanted)!;
  const info = { Title: "Labels", Creator: "Drykeel", CreationDate: new Date(now) };
  const pdf = new PdfKit({ size: sheet.paper, margin: 0, info });
  registerFonts(pdf);
  const bytes = collectPdf(pdf);
  const each = sheet.columns * sheet.rows;
  for (const [index, label] of labels.entries()) {
    const at = index + (skip % each);
    if (index > 0 && at % each === 0) pdf.addPage();
    writeLabel(pdf, sheet, label, boxOf(pdf, sheet, at % each));
  }
  pdf.end();
  return bytes;
}

interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

function boxOf({ page }: PDFKit.PDFDocument, sheet: LabelSheet, at: number): Box {
  const [width, height, gap] = [sheet.width * MM, sheet.height * MM, sheet.gap * MM];
  const left = (page.width - sheet.columns * width - (sheet.columns - 1) * gap) / 2;
  const top = (page.height - sheet.rows * height) / 2;
  const [column, row] = [at % sheet.columns, Math.floor(at / sheet.columns)];
  return { x: left + column * (width + gap), y: top + row * height, width, height };
}

function writeLabel(pdf: PDFKit.PDFDocument, sheet: LabelSheet, label: Label, box: Box): void {
  if (sheet.height >= CARD_HEIGHT) return writeCard(pdf, label, box);
  const side = Math.min(box.height - 2 * EDGE, box.width * 0.42);
  drawQr(pdf, label.code, { x: box.x + EDGE, y: box.y + (box.height - side) / 2, side });
  const [x, width] = [box.x + EDGE + side + EDGE / 2, box.width - side - 2.5 * EDGE];
  writeWords(pdf, label, { x, y: box.y + EDGE, width, height: box.height - 2 * EDGE }, 15);
}

/** For the lid: lines to cut along, large words, the code below them. */
function writeCard(pdf: PDFKit.PDFDocument, label: Label, box: Box): void {
  pdf.lineWidth(0.4).strokeColor("#555").rect(box.x, box.y, box.width, box.height).stroke();
  const side = box.width - 8 * EDGE;
  const words = box.height - side - 4 * EDGE;
  writeWords(pdf, label, { x: box.x + 2 * EDGE, y: box.y + 2 * EDGE, width: box.width - 4 * EDGE, height: words }, 30);
  drawQr(pdf, label.code, { x: box.x + 4 * EDGE, y: box.y + box.height - side - EDGE, side });
}

/** As large as fits: a long name gets smaller before it gets cut off. */
function writeWords(pdf: PDFKit.PDFDocument, { title, line }: Label, box: Box, largest: number): void {
  const [name, below] = [printable(title), printable(line)];
  const heightAt = (size: number) => {
    const first = pdf.font("bold").fontSize(size).heightOfString(name, { width: box.width });
    return (
      first +
      pdf
        .font("regular")
        .fontSize(size * 0.75)
        .heightOfString(below, { width: box.width })
    );
  };
  let size = largest;
  while (size > 5 && heightAt(size) > box.height) size -= 0.5;
  const top = box.y + Math.max(0, (box.height - heightAt(size)) / 2);
  pdf.fillColor("#000").font("bold").fontSize(size).text(name, box.x, top, { width: box.width });
  const room = Math.max(1, box.y + box.height - pdf.y);
  pdf
    .font("regular")
    .fontSize(size * 0.75)
    .text(below, box.x, pdf.y, { width: box.width, height: room, ellipsis: true });
}
