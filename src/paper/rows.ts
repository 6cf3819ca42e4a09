import { printable } from "./printable.ts";
import { MARGIN, type Sheet } from "./sheet.ts";

/** One column: what stands above it and how much of the width it takes. */
export interface Column {
  readonly name: string;
  /** Part of the sheet's width; the parts of a table add up to 1. */
  readonly part: number;
}

export interface Row {
  readonly cells: readonly string[];
  readonly bold?: boolean;
  /** Least height [pt], for cells that are written in by hand. */
  readonly height?: number;
}

const PAD = 2.5;
const SIZE = 8.5;

/** A table whose rows keep together, with its heading again on each page. */
export function writeTable(sheet: Sheet, columns: readonly Column[], rows: readonly Row[]): void {
  const heading: Row = { cells: columns.map(({ name }) => name), bold: true };
  writeRow(sheet, columns, heading);
  for (const row of rows) {
    const page = sheet.pdf.bufferedPageRange().count;
    sheet.need(heightOf(sheet, columns, row));
    if (sheet.pdf.bufferedPageRange().count > page) writeRow(sheet, columns, heading);
    writeRow(sheet, columns, row);
  }
}

function writeRow(sheet: Sheet, columns: readonly Column[], row: Row): void {
  const height = heightOf(sheet, columns, row);
  sheet.need(height);
  const { pdf } = sheet;
  const top = pdf.y;
  let left = MARGIN;
  for (const [index, { part }] of columns.entries()) {
    const width = part * sheet.width;
    pdf
      .font(row.bold ? "bold" : "regular")
      .fontSize(SIZE)
      .fillColor("#000");
    pdf.text(printable(row.cells[index] ?? ""), left + PAD, top + PAD, { width: width - 2 * PAD });
    pdf.lineWidth(0.4).strokeColor("#555").rect(left, top, width, height).stroke();
    left += width;
  }
  pdf.x = MARGIN;
  pdf.y = top + height;
}

function heightOf({ pdf, width }: Sheet, columns: readonly Column[], { cells, bold, height = 0 }: Row): number {
  pdf.font(bold ? "bold" : "regular").fontSize(SIZE);
  const heights = columns.map(({ part }, index) =>
    pdf.heightOfString(printable(cells[index] || " "), { width: part * width - 2 * PAD }),
  );
  return Math.max(height, ...heights) + 2 * PAD;
}
