import type { CardLanguage } from "#kit";
import type { CardWarning } from "#station";
import { COLUMN, SIGNAL_STRIP } from "./card-layout.ts";
import { textWidth, writeLine, type Setting } from "./card-text.ts";
import { SIGNAL_COLOURS } from "./caution-panel.ts";

/** The gravest signal word of a picture right under it, on its ground, as large as it fits in every language. */
export function writeSignal(
  pdf: PDFKit.PDFDocument,
  { signal, signalWords, words }: CardWarning,
  [left, top]: readonly [number, number],
): void {
  const { ground, letters } = SIGNAL_COLOURS[signal];
  const text = signalWords.join(" / ");
  const setting = (size: number): Setting => ({ size, language: languageOfHead(words), bold: true, colour: letters });
  const room = COLUMN - SIGNAL_STRIP - 4;
  const size = [7.5, 7, 6.5, 6, 5.5].find((one) => textWidth(pdf, text, setting(one)) <= room) ?? 5;
  pdf.rect(left, top, COLUMN, SIGNAL_STRIP).fill(ground);
  drawTriangle(pdf, [left + 2.5, top + 1.5], SIGNAL_STRIP - 3, letters);
  writeLine(pdf, text, [left + SIGNAL_STRIP + 2, top + (SIGNAL_STRIP - size) / 2], setting(size));
}

/** A language whose typeface has the letters of all of them. */
export function languageOfHead(words: CardWarning["words"]): CardLanguage {
  return words.find(({ language }) => language === "ru")?.language ?? words.at(-1)?.language ?? "en";
}

/** The safety alert sign: a triangle with its mark. */
export function drawTriangle(
  pdf: PDFKit.PDFDocument,
  [left, top]: readonly [number, number],
  side: number,
  colour: string,
): void {
  const middle = left + side / 2;
  pdf.undash().lineWidth(0.9).lineJoin("round");
  pdf.polygon([left, top + side], [middle, top], [left + side, top + side]).stroke(colour);
  pdf
    .moveTo(middle, top + side * 0.4)
    .lineTo(middle, top + side * 0.7)
    .stroke(colour);
  pdf.circle(middle, top + side * 0.85, 0.6).fill(colour);
}
