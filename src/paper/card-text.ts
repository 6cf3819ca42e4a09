import type { CardLanguage } from "#kit";
import { printable } from "./printable.ts";

/*
 * Text in any language of a card. A typeface comes in one file per set of letters, so that a line is written in runs.
 */

/** How text is set. */
export interface Setting {
  readonly size: number;
  readonly language: CardLanguage;
  readonly bold?: boolean;
  readonly colour?: string;
}

interface Run {
  readonly font: string;
  readonly text: string;
}

const LEADING = 1.16;
const CYRILLIC = /[\u0400-\u052f]/;
const VIETNAMESE = /[\u0102\u0103\u0110\u0111\u0128\u0129\u0168\u0169\u01a0\u01a1\u01af\u01b0\u1ea0-\u1ef9]/;
const LATIN_EXTENDED = /[\u0100-\u0130\u0132-\u0151\u0154-\u02c5]/;
/** Languages whose letters our own typeface lacks. */
const NEEDS_WIDE: readonly CardLanguage[] = ["ru", "vi"];

/** Height of one line [pt]. */
export function lineHeight(size: number): number {
  return size * LEADING;
}

/** The text broken into lines no wider than this [pt]; a word that is wider than a line stands alone. */
export function wrapText(pdf: PDFKit.PDFDocument, text: string, width: number, setting: Setting): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(/ +/)) {
    const last = lines.at(-1);
    const longer = last === undefined ? word : `${last} ${word}`;
    if (last === undefined || textWidth(pdf, longer, setting) > width) lines.push(word);
    else lines[lines.length - 1] = longer;
  }
  return lines;
}

/** Widths of lines set at 1 pt, by the document whose typefaces they were measured with: a card is laid out in many sizes. */
const measured = new WeakMap<PDFKit.PDFDocument, Map<string, number>>();

/** Width of a line [pt]. */
export function textWidth(pdf: PDFKit.PDFDocument, line: string, setting: Setting): number {
  const known = measured.get(pdf) ?? new Map<string, number>();
  measured.set(pdf, known);
  const key = `${setting.language} ${setting.bold === true ? "bold" : "plain"} ${line}`;
  const width = known.get(key) ?? measure(pdf, line, setting);
  known.set(key, width);
  return width * setting.size;
}

/** Width of a line set at 1 pt [pt]. */
function measure(pdf: PDFKit.PDFDocument, line: string, setting: Setting): number {
  return runsOf(line, setting).reduce((sum, run) => sum + pdf.font(run.font).fontSize(1).widthOfString(run.text), 0);
}

/** Writes one line with its top at y. */
export function writeLine(
  pdf: PDFKit.PDFDocument,
  line: string,
  at: readonly [number, number],
  setting: Setting,
): void {
  const [left, top] = at;
  const baseline = top + setting.size * 0.86;
  runsOf(line, setting).reduce((x, { font, text }) => {
    pdf
      .font(font)
      .fontSize(setting.size)
      .fillColor(setting.colour ?? "#000")
      .text(text, x, baseline, { lineBreak: false, baseline: "alphabetic" });
    return x + pdf.widthOfString(text);
  }, left);
}

/** Runs of letters that one font file has. */
export function runsOf(line: string, { language, bold = false }: Setting): readonly Run[] {
  const face = NEEDS_WIDE.includes(language) ? "wide" : "narrow";
  const runs: Run[] = [];
  for (const sign of line) {
    const [letters, text] = lettersOf(sign, face);
    const font = `${face}-${letters}-${bold ? "700" : "400"}`;
    const last = runs.at(-1);
    if (last?.font === font) runs[runs.length - 1] = { font, text: last.text + text };
    else runs.push({ font, text });
  }
  return runs;
}

/** Which file has the sign, and the sign as it is written there. */
function lettersOf(sign: string, face: "narrow" | "wide"): readonly [string, string] {
  if (face === "wide" && CYRILLIC.test(sign)) return ["cyrillic", sign];
  if (face === "wide" && VIETNAMESE.test(sign)) return ["vietnamese", sign];
  return LATIN_EXTENDED.test(sign) ? ["latin-ext", sign] : ["latin", printable(sign)];
}
