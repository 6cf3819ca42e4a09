import { printable } from "../printable.ts";
import { MARGIN, type Sheet } from "../sheet.ts";

/** One short paragraph of a page set in two columns. */
export interface Block {
  readonly text: string;
  readonly bold?: boolean;
  /** Set larger, with room above, and kept with what follows. */
  readonly heading?: boolean;
}

const GAP = 14;
const SIZE = 7.5;
const HEADING_SIZE = 9.5;

/** Sets blocks down one column and then the next, page after page; a block is never broken, the last page is levelled. */
export function writeColumns(sheet: Sheet, blocks: readonly Block[]): void {
  const { pdf } = sheet;
  const width = (sheet.width - GAP) / 2;
  const heights = blocks.map((block) => heightOf(pdf, block, width));
  let [top, column, low] = [pdf.y, 0, pdf.y];
  let end = endOf(sheet, top, heights);
  for (const [at, block] of blocks.entries()) {
    const wanted = heights[at]! + (block.heading ? (heights[at + 1] ?? 0) : 0);
    if (pdf.y + wanted > end) {
      if (column === 1) {
        pdf.addPage();
        top = low = pdf.y;
        end = endOf(sheet, top, heights.slice(at));
      }
      column = 1 - column;
      pdf.y = top;
    }
    writeBlock(pdf, block, MARGIN + column * (width + GAP), width);
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

function styled(pdf: PDFKit.PDFDocument, { bold = false, heading = false }: Block): PDFKit.PDFDocument {
  return pdf.font(bold || heading ? "bold" : "regular").fontSize(heading ? HEADING_SIZE : SIZE);
}

function heightOf(pdf: PDFKit.PDFDocument, block: Block, width: number): number {
  return styled(pdf, block).heightOfString(printable(block.text), { width }) + (block.heading ? 8 : 2);
}

function writeBlock(pdf: PDFKit.PDFDocument, block: Block, left: number, width: number): void {
  if (block.heading) pdf.y += 5;
  styled(pdf, block).fillColor("#000").text(printable(block.text), left, pdf.y, { width });
  pdf.y += block.heading ? 3 : 2;
}
