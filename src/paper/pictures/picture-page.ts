import { linesOf, pictureAt, type LineDrawing, type Pattern, type PatternLine } from "#kit";
import { MARGIN, type Sheet } from "../sheet.ts";
import { drawLit, widthOf } from "./lit-drawing.ts";

/** Drawings beside each other at the end of a card. */
export const PICTURES_IN_A_ROW = 7;
/** Height of one, and what parts two rows [pt]. */
const ROWS = { columns: PICTURES_IN_A_ROW, height: 50, gap: 5 } as const;
/** What the heading takes above them [pt]. */
const HEADING = 36;

/** Number of each drawing on the card, by its id. */
export type PictureNumbers = ReadonlyMap<string, number>;

/**
 * Numbers for the drawings that a card has room for, in the order in which its lines first show them. Where not all find
 * room the layers come first, then those that most lines point at.
 *
 * @param most - room for so many
 */
export function pictureNumbers(pattern: Pattern, most: number): PictureNumbers {
  const shown = linesOf(pattern).flatMap((line) => drawingOf(pattern, line) ?? []);
  const ids = [...new Set(shown)];
  const layers = new Set(pattern.pictures?.drawings.flatMap(({ id, layer }) => (layer ? [id] : [])));
  const weight = (id: string) => (layers.has(id) ? shown.length : 0) + shown.filter((one) => one === id).length;
  const kept = new Set(ids.toSorted((one, other) => weight(other) - weight(one)).slice(0, most));
  return new Map(ids.filter((id) => kept.has(id)).map((id, at) => [id, at + 1]));
}

/** Number of the drawing to look at for a line; absent where it is the one of the line before, or has none. */
export function pictureNumber(
  pattern: Pattern,
  numbers: PictureNumbers,
  line: PatternLine,
  before?: PatternLine,
): number | undefined {
  const own = drawingOf(pattern, line);
  if (own === undefined || (before && drawingOf(pattern, before) === own)) return undefined;
  return numbers.get(own);
}

function drawingOf(pattern: Pattern, { step, check }: PatternLine): string | undefined {
  return pictureAt(pattern, step.id, check?.id)?.id;
}

/** How many drawings find room below what is written, on this page and so many more. */
export function roomForPictures({ pdf }: Sheet, pagesMore: number): number {
  const { height, margins } = pdf.page;
  const end = height - margins.bottom;
  const onPage = (top: number) => Math.max(0, Math.floor((end - top - HEADING) / (ROWS.height + ROWS.gap)));
  return ROWS.columns * (onPage(pdf.y) + Math.max(0, pagesMore) * onPage(margins.top));
}

/** The numbered drawings, in rows. */
export function writePictures(sheet: Sheet, pattern: Pattern, numbers: PictureNumbers): void {
  const drawings = [...numbers.keys()].flatMap((id) => pattern.pictures?.drawings.find((one) => one.id === id) ?? []);
  if (drawings.length === 0) return;
  sheet.need(HEADING + ROWS.height + ROWS.gap);
  sheet.heading("Drawings");
  for (let first = 0; first < drawings.length; first += ROWS.columns) {
    sheet.need(ROWS.height + ROWS.gap);
    const top = sheet.pdf.y;
    for (const [column, one] of drawings.slice(first, first + ROWS.columns).entries()) {
      writeOne(sheet, one, numbers.get(one.id) ?? 0, { column, top });
    }
    sheet.pdf.x = MARGIN;
    sheet.pdf.y = top + ROWS.height + ROWS.gap;
  }
}

interface Place {
  readonly column: number;
  readonly top: number;
}

function writeOne({ pdf, width }: Sheet, one: LineDrawing, number: number, { column, top }: Place): void {
  if (one.drawing === undefined) return;
  const left = MARGIN + (column * (width - widthOf(ROWS.height))) / (ROWS.columns - 1);
  drawLit(pdf, one.drawing, [], { left, top, height: ROWS.height });
  pdf.rect(left, top, 13, 10).fill("#000");
  pdf.font("bold").fontSize(7.5).fillColor("#fff");
  pdf.text(String(number), left, top + 1, { width: 13, align: "center", lineBreak: false });
  pdf.fillColor("#000");
}
