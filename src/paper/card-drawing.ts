import { DRAWING_FIELD, type Look, type Shape } from "#kit";

interface Ink {
  readonly fill?: string;
  readonly stroke?: string;
  readonly width?: number;
  readonly dash?: number;
}

const BLACK = "#000";
const WATER = "#cfe3ec";
const WATER_LINE = "#2b6a86";

/** Each look in ink. What must be told apart is told apart by form too, so that a black-and-white print says the same. */
const INKS: Readonly<Record<Look, Ink>> = {
  line: { stroke: BLACK, width: 3 },
  thin: { stroke: BLACK, width: 1.8 },
  bold: { stroke: BLACK, width: 6 },
  firm: { stroke: BLACK, width: 4 },
  thick: { stroke: BLACK, width: 9 },
  stout: { stroke: BLACK, width: 14 },
  ghost: { stroke: BLACK, width: 1.8, dash: 5 },
  body: { fill: "#fff", stroke: BLACK, width: 3 },
  tint: { fill: "#d4d4d4", stroke: BLACK, width: 3 },
  dark: { fill: "#555", stroke: BLACK, width: 3 },
  solid: { fill: BLACK, stroke: BLACK, width: 1 },
  paper: { fill: "#fff" },
  live: { fill: "#ffd100", stroke: BLACK, width: 3 },
  wet: { fill: WATER, stroke: WATER_LINE, width: 2 },
  act: { fill: BLACK, stroke: "#fff", width: 2 },
  water: { fill: WATER },
  wave: { stroke: WATER_LINE, width: 2.4 },
  jet: { stroke: WATER_LINE, width: 5 },
  no: { stroke: "#c8102e", width: 9 },
  yes: { stroke: "#007a33", width: 9 },
};

/** Draws shapes with the field's left top corner here and its height so high [pt]. */
export function drawShapes(
  pdf: PDFKit.PDFDocument,
  shapes: readonly Shape[],
  [left, top]: readonly [number, number],
  height: number,
): void {
  pdf.save();
  pdf.translate(left, top).scale(height / DRAWING_FIELD.height);
  pdf.rect(0, 0, DRAWING_FIELD.width, DRAWING_FIELD.height).clip();
  for (const shape of shapes) drawShape(pdf, shape);
  pdf.restore();
}

/** One shape in its ink. */
export function drawShape(pdf: PDFKit.PDFDocument, { d, as }: Shape): void {
  const { fill, stroke, width = 1, dash } = INKS[as];
  pdf.lineWidth(width).lineCap("round").lineJoin("round");
  if (dash === undefined) pdf.undash();
  else pdf.dash(dash, { space: dash });
  const path = pdf.path(d);
  if (fill !== undefined && stroke !== undefined) path.fillAndStroke(fill, stroke);
  else if (fill === undefined) path.stroke(stroke);
  else path.fill(fill);
}
