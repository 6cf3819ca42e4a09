import { sum } from "#base";
import type { CardLine, CardSection, CardWarning, ShownCard, Worded } from "#station";
import { lineHeight, wrapText } from "./card-text.ts";

/*
 * How a card fills one page: five pictures a row, as large as the words leave them, the words as large as go with
 * pictures that can still be read.
 */

/** The page, A4, and what is left free at its edges [pt]. */
export const PAGE = { width: 595.28, height: 841.89, edge: 18 } as const;
export const COLUMNS = 5;
export const GAP = 5;
/** Between rows [pt]. */
export const ROW_GAP = 4;
export const COLUMN = (PAGE.width - 2 * PAGE.edge - (COLUMNS - 1) * GAP) / COLUMNS;
export const WARNING_COLUMNS = 3;
export const WARNING_COLUMN = (PAGE.width - 2 * PAGE.edge - (WARNING_COLUMNS - 1) * GAP) / WARNING_COLUMNS;
export const TITLE = 13;
export const HEADING = 17;
export const FOOT = 8;
/** Height of the signal word at a picture [pt]. */
export const SIGNAL_STRIP = 8.5;
/** Words in one language are never smaller than this [pt]. */
export const READABLE = 9;
/**
 * What is tried in turn: words as large as leave pictures of a good size, then words that can be read beside pictures
 * somewhat smaller, then, for two languages, what can just be read and told apart in the hand [pt].
 */
const TRIES = [
  { picture: 66, sizes: [10, 9.5, READABLE] },
  { picture: 54, sizes: [READABLE, 8.5, 8] },
  { picture: 48, sizes: [8, 7.5, 7] },
] as const;

/** One row of pictures, with the headings above it. */
export interface CardRow {
  readonly cells: readonly { readonly line: CardLine; readonly column: number }[];
  readonly headings: readonly { readonly section: CardSection; readonly column: number; readonly span: number }[];
}

/** A layout that fills the page. */
export interface CardLayout {
  readonly size: number;
  /** Height of every picture [pt]. */
  readonly picture: number;
  readonly rows: readonly CardRow[];
  /** Height of the words under each row [pt]. */
  readonly words: readonly number[];
  /** Height of each row of warnings [pt]. */
  readonly warnings: readonly number[];
}

/** The first layout of those tried that leaves pictures large enough; undefined where none does. */
export function layoutCard(pdf: PDFKit.PDFDocument, card: ShownCard): CardLayout | undefined {
  const rows = rowsOf(card.sections);
  for (const { picture, sizes } of TRIES)
    for (const size of sizes) {
      const layout = layoutAt(pdf, { card, rows, size });
      if (layout.picture >= picture) return layout;
    }
  return undefined;
}

interface Wanted {
  readonly card: ShownCard;
  readonly rows: readonly CardRow[];
  readonly size: number;
}

function layoutAt(pdf: PDFKit.PDFDocument, { card, rows, size }: Wanted): CardLayout {
  const words = rows.map(({ cells }) => Math.max(...cells.map(({ line }) => lineBelow(pdf, line, size))));
  const warnings = warningRows(card.warnings).map((row) =>
    Math.max(...row.map((one) => warningHeight(pdf, one, warningSize(size)))),
  );
  const headings = rows.filter((row) => row.headings.length > 0).length * HEADING;
  const foot = footLines(card) * lineHeight(FOOT);
  const taken =
    headHeight(card) + headings + foot + sum(words) + sum(warnings) + (rows.length + warnings.length) * ROW_GAP;
  const left = PAGE.height - 2 * PAGE.edge - taken;
  return { size, rows, words, warnings, picture: Math.min(left / rows.length, (COLUMN * 3) / 4) };
}

/** The title in each language, and the line with kit and channel. */
function headHeight({ title }: ShownCard): number {
  return (title.length + 1) * lineHeight(TITLE) + ROW_GAP;
}

/** Lines below the pictures: what comes first and what has not been read, by language, and where it was printed. */
export function footLines({ first }: ShownCard): number {
  return first.length + 1;
}

/** Size of the words of warnings beside pictures of this size of words [pt]: half a point less, where it can be read. */
export function warningSize(size: number): number {
  return size < READABLE ? size - 0.5 : Math.max(READABLE, size - 0.5);
}

/** Warnings in rows, gravest first. */
export function warningRows(warnings: readonly CardWarning[]): readonly (readonly CardWarning[])[] {
  const rows = Math.ceil(warnings.length / WARNING_COLUMNS);
  return Array.from({ length: rows }, (_, row) => warnings.slice(row * WARNING_COLUMNS, (row + 1) * WARNING_COLUMNS));
}

function warningHeight(pdf: PDFKit.PDFDocument, { words }: CardWarning, size: number): number {
  return lineHeight(size) + 3 + heightOf(pdf, words, WARNING_COLUMN - 6, size) + 2;
}

/** What stands below a picture: the signal word where a warning belongs to it, and what to do. */
function lineBelow(pdf: PDFKit.PDFDocument, { cautions, words }: CardLine, size: number): number {
  return (cautions.length > 0 ? SIGNAL_STRIP : 0) + heightOf(pdf, words, COLUMN, size);
}

function heightOf(pdf: PDFKit.PDFDocument, words: readonly Worded[], width: number, size: number): number {
  const lines = words.map(({ text, language }) => wrapText(pdf, text, width, { size, language }).length);
  return sum(lines) * lineHeight(size);
}

/** The pictures in rows of five; parts that follow share a row where they fit in one. */
function rowsOf(sections: readonly CardSection[]): readonly CardRow[] {
  const [go, ...after] = sections.filter(({ lines }) => lines.length > 0);
  const together = sum(after.map(({ lines }) => lines.length)) <= COLUMNS;
  return [...(go ? rowsOfSection(go) : []), ...(together ? [sharedRow(after)] : after.flatMap(rowsOfSection))].filter(
    ({ cells }) => cells.length > 0,
  );
}

function rowsOfSection(section: CardSection): readonly CardRow[] {
  const count = Math.ceil(section.lines.length / COLUMNS);
  return Array.from({ length: count }, (_, row) => ({
    cells: section.lines.slice(row * COLUMNS, (row + 1) * COLUMNS).map((line, column) => ({ line, column })),
    headings: row === 0 && section.heading.length > 0 ? [{ section, column: 0, span: COLUMNS }] : [],
  }));
}

function sharedRow(sections: readonly CardSection[]): CardRow {
  const starts = sections.map((_, index) => sum(sections.slice(0, index).map(({ lines }) => lines.length)));
  return {
    cells: sections.flatMap(({ lines }, index) => lines.map((line, at) => ({ line, column: starts[index]! + at }))),
    headings: sections.map((section, index) => ({ section, column: starts[index]!, span: section.lines.length })),
  };
}
