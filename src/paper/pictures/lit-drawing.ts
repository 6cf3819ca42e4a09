import { DRAWING_FIELD, litShapes, type Drawing, type LitShape, type Shape } from "#kit";
import { drawShape } from "../card-drawing.ts";

/** Hatching of what is lit: lines so far apart, and so wide, in the field of a drawing. */
const HATCH = { apart: 8, width: 2.4 } as const;
const OUTLINE = 6;
const HEAVY = 5;

/** Where a drawing stands on the page: left top corner and height of its field [pt]. */
export interface DrawingBox {
  readonly left: number;
  readonly top: number;
  readonly height: number;
}

/** Width of a drawing so high [pt]. */
export function widthOf(height: number): number {
  return (height * DRAWING_FIELD.width) / DRAWING_FIELD.height;
}

/** Draws a drawing with these parts outlined and hatched, in a thin frame: told by form, so in black and white too. */
export function drawLit(pdf: PDFKit.PDFDocument, drawing: Drawing, lit: readonly string[], box: DrawingBox): void {
  const { width, height } = DRAWING_FIELD;
  pdf.save();
  pdf.translate(box.left, box.top).scale(box.height / height);
  pdf.rect(0, 0, width, height).clip();
  for (const one of litShapes(drawing, lit)) drawOne(pdf, one);
  pdf.undash().lineWidth(1.5).strokeColor("#555").rect(0, 0, width, height).stroke();
  pdf.restore();
}

function drawOne(pdf: PDFKit.PDFDocument, { shape, lit }: LitShape): void {
  if (lit === "plain") drawShape(pdf, shape);
  else if (lit === "line") outline(pdf, shape, HEAVY).stroke("#000");
  else drawArea(pdf, shape);
}

function drawArea(pdf: PDFKit.PDFDocument, shape: Shape): void {
  outline(pdf, shape, OUTLINE).fillAndStroke("#fff", "#000");
  pdf.save();
  pdf.path(shape.d).clip();
  const { width, height } = DRAWING_FIELD;
  for (let x = -height; x < width; x += HATCH.apart * Math.SQRT2) pdf.moveTo(x, height).lineTo(x + height, 0);
  pdf.lineWidth(HATCH.width).stroke("#000");
  pdf.restore();
  outline(pdf, shape, OUTLINE).stroke("#000");
}

function outline(pdf: PDFKit.PDFDocument, { d }: Shape, width: number): PDFKit.PDFDocument {
  return pdf.undash().lineWidth(width).lineCap("round").lineJoin("round").path(d);
}
