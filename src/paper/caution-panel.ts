import { cautionNamed, type Caution, type CautionId, type SignalWord } from "#base";
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
  const order: readonly SignalWord[] = ["DANGER", "WARNING", "CAUTION", "NOTICE"];
  const cautions = [...new Set(ids)].map((id) => cautionNamed(id as CautionId));
  for (const signal of order) for (const one of cautions) if (one.signal === signal) writePanel(sheet, one);
}

/** The signal word on its ground, and the three sentences beside it. */
function writePanel(sheet: Sheet, caution: Caution): void {
  const { pdf, width } = sheet;
  const { ground, letters } = SIGNAL_COLOURS[caution.signal];
  const text = `${caution.what} ${caution.consequence} ${caution.avoid}`;
  const inner = width - WORD_WIDTH - 2 * PAD;
  pdf.font("regular").fontSize(8);
  const height = pdf.heightOfString(text, { width: inner }) + 2 * PAD;
  sheet.need(height + 2);
  const top = pdf.y;
  pdf.rect(MARGIN, top, WORD_WIDTH, height).fill(ground);
  pdf
    .font("bold")
    .fontSize(9.5)
    .fillColor(letters)
    .text(caution.signal, MARGIN + PAD, top + PAD, { width: WORD_WIDTH - 2 * PAD });
  pdf
    .font("regular")
    .fontSize(8)
    .fillColor("#000")
    .text(text, MARGIN + WORD_WIDTH + PAD, top + PAD, { width: inner });
  pdf.lineWidth(0.6).strokeColor("#000").rect(MARGIN, top, width, height).stroke();
  pdf.x = MARGIN;
  pdf.y = top + height + 2;
}
