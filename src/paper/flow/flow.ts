import { MARGIN, type Sheet } from "../sheet.ts";

/** Something set in a column: it knows its height at a width, and leaves the pen below itself. */
export interface Piece {
  readonly height: (pdf: PDFKit.PDFDocument, width: number) => number;
  /** Draws itself with its top at the pen. */
  readonly draw: (pdf: PDFKit.PDFDocument, left: number, width: number) => void;
  /** Never stands last in a column: what follows is kept with it. */
  readonly isHead?: boolean;
}

const GAP = 14;

/** Sets pieces down one column and then the next, page after page; none is broken, the last page is levelled. */
export function writeFlow(sheet: Sheet, pieces: readonly Piece[]): void {
  const { pdf } = sheet;
  const width = (sheet.width - GAP) / 2;
  const heights = pieces.map((piece) => piece.height(pdf, width));
  let [top, column, low] = [pdf.y, 0, pdf.y];
  let end = endOf(sheet, top, heights);
  for (const [at, piece] of pieces.entries()) {
    const wanted = heights[at]! + (piece.isHead ? (heights[at + 1] ?? 0) : 0);
    if (pdf.y + wanted > end) {
      if (column === 1) {
        pdf.addPage();
        top = low = pdf.y;
        end = endOf(sheet, top, heights.slice(at));
      }
      column = 1 - column;
      pdf.y = top;
    }
    piece.draw(pdf, MARGIN + column * (width + GAP), width);
    low = Math.max(low, pdf.y);
  }
  pdf.x = MARGIN;
  pdf.y = low;
}

/** Where the columns of a page end: at its foot, or half way through what is left where that is higher. */
function endOf({ pdf }: Sheet, top: number, heights: readonly number[]): number {
  const foot = pdf.page.height - pdf.page.margins.bottom;
  const half = heights.reduce((sum, height) => sum + height, 0) / 2 + Math.max(0, ...heights) * 2;
  return Math.min(foot, top + half);
}
