import bwip from "bwip-js/node";

/** Dark and light fields of a QR code, row by row. */
interface Fields {
  readonly pixs: ArrayLike<number>;
  readonly pixx: number;
  readonly pixy: number;
}

/**
 * Draws a QR code with its quiet zone, as squares: sharp at every size.
 *
 * @param at - upper left corner and side of the whole [pt]
 * @source ISO/IEC 18004:2015, quiet zone of four fields, section 9.1
 */
export function drawQr(pdf: PDFKit.PDFDocument, text: string, at: { x: number; y: number; side: number }): void {
  const [fields] = bwip.raw("qrcode", text, "eclevel=M") as unknown as readonly Fields[];
  const { pixs, pixx, pixy } = fields!;
  const field = at.side / (pixx + 8);
  for (let index = 0; index < pixx * pixy; index += 1) {
    if (pixs[index] !== 1) continue;
    const [column, row] = [(index % pixx) + 4, Math.floor(index / pixx) + 4];
    pdf.rect(at.x + column * field, at.y + row * field, field, field);
  }
  pdf.fill("#000");
}
