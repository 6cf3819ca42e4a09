import { printable } from "../printable.ts";
import type { Piece } from "./flow.ts";

/** One short paragraph of a page set in two columns. */
export interface Block {
  readonly text: string;
  readonly bold?: boolean;
  /** Set larger, with room above, and kept with what follows. */
  readonly heading?: boolean;
}

/** A paragraph at a size of letters [pt], or a heading a little larger. */
export function textPiece({ text, bold = false, heading = false }: Block, size: number): Piece {
  const words = printable(text);
  const styled = (pdf: PDFKit.PDFDocument) =>
    pdf.font(bold || heading ? "bold" : "regular").fontSize(heading ? size + 2 : size);
  return {
    isHead: heading,
    height: (pdf, width) => styled(pdf).heightOfString(words, { width }) + (heading ? 8 : 2),
    draw: (pdf, left, width) => {
      if (heading) pdf.y += 5;
      styled(pdf).fillColor("#000").text(words, left, pdf.y, { width });
      pdf.y += heading ? 3 : 2;
    },
  };
}
