import { cautionNamed, gravestFirst, type Caution, type CautionId, type SignalWord } from "#base";
import type { Piece } from "./flow/flow.ts";
import { MARGIN, type Sheet } from "./sheet.ts";

/**
 * Ground and letter colour of each signal word.
 *
 * @source ISO 3864-2 and ANSI Z535.4: danger white on red, warning black on orange, caution black on yellow, notice
 *   white on blue; the shades are those of ANSI Z535.1, FROM MEMORY
 */
export const SIGNAL_COLOURS: Readonly<Record<SignalWord, { readonly ground: string; readonly letters: string }>> = {
  DANGER: { ground: "#c8102e", letters: "#fff" },
  WARNING: { ground: "#ff8200", letters: "#000" },
  CAUTION: { ground: "#ffd100", letters: "#000" },
  NOTICE: { ground: "#003da5", letters: "#fff" },
};
const WORD_WIDTH = 62;
const PAD = 3;

/** Cautions by id, gravest first, each once. */
export function writeCautions(sheet: Sheet, ids: readonly string[]): void {
  for (const caution of inOrder(ids)) {
    const piece = cautionPiece(caution, 8);
    sheet.need(piece.height(sheet.pdf, sheet.width));
    piece.draw(sheet.pdf, MARGIN, sheet.width);
    sheet.pdf.x = MARGIN;
  }
}

/** The same in a column, at a size of letters [pt]. */
export function cautionPieces(ids: readonly string[], size: number): readonly Piece[] {
  return inOrder(ids).map((caution) => cautionPiece(caution, size));
}

function inOrder(ids: readonly string[]): readonly Caution[] {
  return gravestFirst([...new Set(ids)]).map((id) => cautionNamed(id as CautionId));
}

/** The signal word on its ground, and the three sentences beside it. */
function cautionPiece({ signal, what, consequence, avoid }: Caution, size: number): Piece {
  const { ground, letters } = SIGNAL_COLOURS[signal];
  const text = `${what} ${consequence} ${avoid}`;
  const height = (pdf: PDFKit.PDFDocument, width: number) =>
    pdf
      .font("regular")
      .fontSize(size)
      .heightOfString(text, { width: width - WORD_WIDTH - 2 * PAD }) +
    2 * PAD +
    2;
  const draw = (pdf: PDFKit.PDFDocument, left: number, width: number) => {
    const [top, tall] = [pdf.y, height(pdf, width) - 2];
    pdf.rect(left, top, WORD_WIDTH, tall).fill(ground);
    const word = { width: WORD_WIDTH - 2 * PAD };
    pdf
      .font("bold")
      .fontSize(9.5)
      .fillColor(letters)
      .text(signal, left + PAD, top + PAD, word);
    const sentences = { width: width - WORD_WIDTH - 2 * PAD };
    pdf
      .font("regular")
      .fontSize(size)
      .fillColor("#000")
      .text(text, left + WORD_WIDTH + PAD, top + PAD, sentences);
    pdf.lineWidth(0.6).strokeColor("#000").rect(left, top, width, tall).stroke();
    pdf.y = top + tall + 2;
  };
  return { height, draw };
}
