import { patternKey, type CardLanguage, type Pattern } from "#kit";
import { PART_SIGNS, showCard, type CardLine, type CardWarning, type ShownCard } from "#station";
import PdfKit from "pdfkit";
import { drawShapes } from "./card-drawing.ts";
import {
  COLUMN,
  FOOT,
  GAP,
  HEADING,
  layoutCard,
  PAGE,
  TITLE,
  WARNING_COLUMN,
  warningRows,
  warningSize,
  type CardLayout,
  type CardRow,
} from "./card-layout.ts";
import { lineHeight, textWidth, wrapText, writeLine, type Setting } from "./card-text.ts";
import { SIGNAL_COLOURS } from "./caution-panel.ts";
import { registerCardFonts } from "./fonts.ts";
import { collectPdf } from "./sheet.ts";
import { instantWords } from "#station";

/** What a card is printed from. */
export interface ReadDoCard {
  readonly stationName: string;
  /** RFC 3339 */
  readonly now: string;
  readonly pattern: Pattern;
  /** One or two; the second is left out, and that is said, where the two do not fit on one page. */
  readonly languages: readonly [CardLanguage, ...CardLanguage[]];
  /** Number or name of the kit; a line to write it on where absent. */
  readonly kit?: string;
  /** Radio channel; a line to write it on where absent. */
  readonly channel?: string;
}

const ENGLISH = { language: "en" } as const;
const BLANK = "____________";

/**
 * The card for people who have never seen the kit, on one page, to laminate.
 *
 * @returns a PDF of one A4 page; undefined where the pattern has no card, or one too long for a page
 */
export async function renderReadDoCard(card: ReadDoCard): Promise<Uint8Array | undefined> {
  const { stranger } = card.pattern;
  if (stranger === undefined) return undefined;
  const pdf = new PdfKit({
    size: "A4",
    margin: 0,
    info: { Title: `${card.pattern.name}: card for a stranger`, Creator: "Drykeel", CreationDate: new Date(card.now) },
  });
  registerCardFonts(pdf);
  const bytes = collectPdf(pdf);
  const fitting = fit(pdf, card);
  if (fitting !== undefined) writeCard(pdf, card, fitting);
  pdf.end();
  const whole = await bytes;
  return fitting && whole;
}

interface Fitting {
  readonly shown: ShownCard;
  readonly layout: CardLayout;
  /** A language that was asked for and had to be left out. */
  readonly leftOut: boolean;
}

function fit(pdf: PDFKit.PDFDocument, { pattern, languages }: ReadDoCard): Fitting | undefined {
  const { stranger } = pattern;
  if (stranger === undefined) return undefined;
  const tries = languages.length > 1 ? [languages.slice(0, 2), languages.slice(0, 1)] : [languages];
  for (const asked of tries) {
    const shown = showCard(stranger, asked);
    const layout = layoutCard(pdf, shown);
    if (layout !== undefined) return { shown, layout, leftOut: asked.length < languages.length };
  }
  return undefined;
}

function writeCard(pdf: PDFKit.PDFDocument, card: ReadDoCard, fitting: Fitting): void {
  const { shown, layout } = fitting;
  let top: number = PAGE.edge;
  for (const { text, language } of shown.title) {
    writeLine(pdf, text, [PAGE.edge, top], { size: TITLE, language, bold: true });
    top += lineHeight(TITLE);
  }
  writeKit(pdf, card, shown, top);
  top = writeWarnings(pdf, fitting, top + lineHeight(TITLE) + GAP);
  layout.rows.forEach((row, index) => {
    top = writeRow(pdf, row, { layout, top, words: layout.words[index] ?? 0 });
  });
  writeFoot(pdf, card, fitting, top);
}

/** Which kit it is and how to call whoever sent it. */
function writeKit(pdf: PDFKit.PDFDocument, card: ReadDoCard, shown: ShownCard, top: number): void {
  const language =
    [shown.title[1]?.language, shown.title[0]?.language].find((one) => one === "ru" || one === "vi") ?? "en";
  const setting: Setting = { size: 12, language, bold: true };
  const right = `${shown.channel}: ${card.channel ?? BLANK}`;
  writeLine(pdf, `${shown.kit}: ${card.kit ?? BLANK}`, [PAGE.edge, top], setting);
  writeLine(pdf, right, [PAGE.width - PAGE.edge - textWidth(pdf, right, setting), top], setting);
}

function writeWarnings(pdf: PDFKit.PDFDocument, { shown, layout }: Fitting, from: number): number {
  let top = from;
  warningRows(shown.warnings).forEach((row, index) => {
    const height = layout.warnings[index] ?? 0;
    row.forEach((one, column) =>
      writeWarning(pdf, one, {
        left: PAGE.edge + column * (WARNING_COLUMN + GAP),
        top,
        height,
        size: warningSize(layout.size),
      }),
    );
    top += height + GAP;
  });
  return top;
}

interface Panel {
  readonly left: number;
  readonly top: number;
  readonly height: number;
  readonly size: number;
}

/** Signal word on its ground with the numbers of its pictures, the words below. */
function writeWarning(pdf: PDFKit.PDFDocument, warning: CardWarning, { left, top, height, size }: Panel): void {
  const { ground, letters } = SIGNAL_COLOURS[warning.signal];
  const strip = lineHeight(size) + 2;
  pdf.rect(left, top, WARNING_COLUMN, strip).fill(ground);
  const last = warning.words.at(-1)?.language ?? "en";
  const heads = warning.words.some(({ language }) => language === "ru") ? "ru" : last;
  const head = `${warning.signalWords.join(" / ")}   ${warning.at.join(", ")}`;
  drawTriangle(pdf, [left + 4, top + 2], strip - 4, letters);
  writeLine(pdf, head, [left + strip + 3, top + 1], { size, language: heads, bold: true, colour: letters });
  let y = top + strip + 2;
  for (const { text, language } of warning.words)
    for (const line of wrapText(pdf, text, WARNING_COLUMN - 6, { size, language })) {
      writeLine(pdf, line, [left + 3, y], { size, language });
      y += lineHeight(size);
    }
  pdf.undash().lineWidth(0.6).rect(left, top, WARNING_COLUMN, height).stroke("#000");
}

/** The safety alert sign: a triangle with its mark. */
function drawTriangle(
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

interface RowPlace {
  readonly layout: CardLayout;
  readonly top: number;
  readonly words: number;
}

function writeRow(pdf: PDFKit.PDFDocument, row: CardRow, { layout, top, words }: RowPlace): number {
  for (const { section, column, span } of row.headings) {
    const left = PAGE.edge + column * (COLUMN + GAP);
    const width = span * COLUMN + (span - 1) * GAP;
    pdf
      .undash()
      .lineWidth(2.4)
      .moveTo(left, top)
      .lineTo(left + width, top)
      .stroke("#000");
    drawShapes(pdf, PART_SIGNS[section.part], [left, top + 2.5], HEADING - 5);
    writeHeading(pdf, section.heading, [left + HEADING + 3, top + 3], width - HEADING - 3);
  }
  const under = top + (row.headings.length > 0 ? HEADING : 0);
  for (const { line, column } of row.cells) writeCell(pdf, line, [PAGE.edge + column * (COLUMN + GAP), under], layout);
  return under + layout.picture + words + GAP;
}

/** The heading in each language, one after the other, as large as they fit. */
function writeHeading(
  pdf: PDFKit.PDFDocument,
  heading: ShownCard["sections"][number]["heading"],
  [left, top]: readonly [number, number],
  width: number,
): void {
  const setting = (size: number, at: number): Setting => ({
    size,
    language: heading[at]?.language ?? "en",
    bold: true,
  });
  const widthAt = (size: number) =>
    heading.reduce((sum, { text }, at) => sum + textWidth(pdf, `${text}    `, setting(size, at)), 0);
  const size = [10, 9, 8, 7, 6].find((one) => widthAt(one) <= width) ?? 5;
  heading.reduce((x, { text }, at) => {
    writeLine(pdf, text, [x, top], setting(size, at));
    return x + textWidth(pdf, `${text}    `, setting(size, at));
  }, left);
}

function writeCell(
  pdf: PDFKit.PDFDocument,
  line: CardLine,
  [left, top]: readonly [number, number],
  layout: CardLayout,
): void {
  const { picture, size } = layout;
  const width = (picture * 4) / 3;
  const inset = COLUMN - width;
  if (line.drawing) drawShapes(pdf, line.drawing.shapes, [left + inset, top], picture);
  pdf.undash().lineWidth(0.9).rect(left, top, COLUMN, picture).stroke("#000");
  writeNumber(pdf, line, [left, top]);
  let y = top + picture + 1;
  for (const { text, language } of line.words)
    for (const part of wrapText(pdf, text, COLUMN, { size, language })) {
      writeLine(pdf, part, [left, y], { size, language });
      y += lineHeight(size);
    }
}

/** The picture's number, with the alert sign where a warning belongs to it. */
function writeNumber(
  pdf: PDFKit.PDFDocument,
  { number, cautions }: CardLine,
  [left, top]: readonly [number, number],
): void {
  const width = cautions.length > 0 ? 27 : 15;
  pdf.rect(left, top, width, 11).fill("#000");
  writeLine(pdf, String(number), [left + 2.5, top + 1], { ...ENGLISH, size: 8.5, bold: true, colour: "#fff" });
  if (cautions.length > 0) drawTriangle(pdf, [left + 16, top + 1.5], 8, "#fff");
}

/** What comes before the card, what has not been read, and what this paper is. */
function writeFoot(pdf: PDFKit.PDFDocument, card: ReadDoCard, { shown, leftOut }: Fitting, from: number): void {
  let top = from;
  const write = (parts: readonly { readonly text: string; readonly language: CardLanguage }[]) => {
    parts.reduce((x, { text, language }) => {
      writeLine(pdf, text, [x, top], { size: FOOT - 1, language });
      return x + textWidth(pdf, `${text}    `, { size: FOOT - 1, language });
    }, PAGE.edge as number);
    top += lineHeight(FOOT);
  };
  for (const one of shown.first) write([one, ...shown.notRead.filter(({ language }) => language === one.language)]);
  const said = leftOut ? "   The second language did not fit on one page." : "";
  const text = `${card.stationName}   ${patternKey(card.pattern)}   printed ${instantWords(card.now)} UTC${said}`;
  write([{ ...ENGLISH, text }]);
}
