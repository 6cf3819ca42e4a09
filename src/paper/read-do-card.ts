import { patternKey, type CardLanguage, type Pattern, type StrangerCard } from "#kit";
import {
  CARD_WORDS,
  PART_SIGNS,
  showCard,
  type CardLine,
  type CardWarning,
  type ShownCard,
  type Worded,
} from "#station";
import PdfKit from "pdfkit";
import { drawShapes } from "./card-drawing.ts";
import {
  COLUMN,
  FOOT,
  GAP,
  HEADING,
  layoutCard,
  PAGE,
  ROW_GAP,
  SIGNAL_STRIP,
  TITLE,
  WARNING_COLUMN,
  warningRows,
  warningSize,
  type CardLayout,
  type CardRow,
} from "./card-layout.ts";
import { lineHeight, textWidth, wrapText, writeLine, type Setting } from "./card-text.ts";
import { drawTriangle, languageOfHead, writeSignal } from "./card-signal.ts";
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
  /** One or two; a page for each, front and back, where the two do not fit on one. */
  readonly languages: readonly [CardLanguage, ...CardLanguage[]];
  /** Number or name of the kit; a line to write it on where absent. */
  readonly kit?: string;
  /** Radio channel; a line to write it on where absent. */
  readonly channel?: string;
}

const ENGLISH = { language: "en" } as const;
const BLANK = "____________";

/**
 * The card for people who have never seen the kit, on one sheet, to laminate.
 *
 * @returns a PDF of one A4 page, or of front and back; undefined where the pattern has no card, or one too long for a page
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
  const fittings = fit(pdf, stranger, card.languages.slice(0, 2));
  fittings.forEach((fitting, page) => {
    if (page > 0) pdf.addPage();
    writeCard(pdf, card, fitting);
  });
  pdf.end();
  const whole = await bytes;
  return fittings.length === 0 ? undefined : whole;
}

interface Fitting {
  readonly shown: ShownCard;
  readonly layout: CardLayout;
  /** Of the other language that was asked for: on the other side, or on none. */
  readonly other?: { readonly language: CardLanguage; readonly isOverleaf: boolean };
}

/** Both languages on one page where they fit, else a page for each; empty where not even the first fits. */
function fit(pdf: PDFKit.PDFDocument, card: StrangerCard, asked: readonly CardLanguage[]): readonly Fitting[] {
  const together = fitOn(pdf, card, asked);
  if (together !== undefined) return [together];
  const pages = asked.map((language) => fitOn(pdf, card, [language]));
  if (asked.length < 2 || pages[0] === undefined) return [];
  const isOverleaf = pages[1] !== undefined;
  return pages.flatMap((page, at) => (page ? [{ ...page, other: { language: asked[1 - at]!, isOverleaf } }] : []));
}

function fitOn(pdf: PDFKit.PDFDocument, card: StrangerCard, languages: readonly CardLanguage[]): Fitting | undefined {
  const shown = showCard(card, languages);
  const layout = layoutCard(pdf, shown);
  return layout && { shown, layout };
}

function writeCard(pdf: PDFKit.PDFDocument, card: ReadDoCard, fitting: Fitting): void {
  const { shown, layout } = fitting;
  let top: number = PAGE.edge;
  for (const { text, language } of shown.title) {
    writeLine(pdf, text, [PAGE.edge, top], { size: TITLE, language, bold: true });
    top += lineHeight(TITLE);
  }
  writeKit(pdf, card, shown, top);
  top = writeWarnings(pdf, fitting, top + lineHeight(TITLE) + ROW_GAP);
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
    top += height + ROW_GAP;
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
  const heads = languageOfHead(warning.words);
  const head = `${warning.signalWords.join(" / ")}   ${warning.at.join(", ")}`;
  drawTriangle(pdf, [left + 4, top + 2], strip - 4, letters);
  writeLine(pdf, head, [left + strip + 3, top + 1], { size, language: heads, bold: true, colour: letters });
  let y = top + strip + 1;
  for (const { text, language } of warning.words)
    for (const line of wrapText(pdf, text, WARNING_COLUMN - 6, { size, language })) {
      writeLine(pdf, line, [left + 3, y], { size, language });
      y += lineHeight(size);
    }
  pdf.undash().lineWidth(0.6).rect(left, top, WARNING_COLUMN, height).stroke("#000");
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
  return under + layout.picture + words + ROW_GAP;
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
  const [gravest] = line.cautions;
  if (gravest) writeSignal(pdf, gravest, [left, top + picture]);
  let y = top + picture + 1 + (gravest ? SIGNAL_STRIP : 0);
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
function writeFoot(pdf: PDFKit.PDFDocument, card: ReadDoCard, { shown, other }: Fitting, from: number): void {
  let top = from;
  const write = (parts: readonly Worded[]) => {
    parts.reduce((x, { text, language }) => {
      writeLine(pdf, text, [x, top], { size: FOOT - 1, language });
      return x + textWidth(pdf, `${text}    `, { size: FOOT - 1, language });
    }, PAGE.edge as number);
    top += lineHeight(FOOT);
  };
  for (const one of shown.first) write([one, ...shown.notRead.filter(({ language }) => language === one.language)]);
  const text = `${card.stationName}   ${patternKey(card.pattern)}   printed ${instantWords(card.now)} UTC`;
  write([{ ...ENGLISH, text }, ...(other ? sayOther(other) : [])]);
}

function sayOther({ language, isOverleaf }: NonNullable<Fitting["other"]>): readonly Worded[] {
  const { name } = CARD_WORDS[language];
  const said = isOverleaf ? "Overleaf:" : "Did not fit on one page:";
  return [
    { ...ENGLISH, text: said },
    { language, text: name },
  ];
}
