import { qrcode, type DrawingContext, type RenderOptions } from "bwip-js/browser";

/** The dark fields of a code as one SVG path, and how many fields a side has. */
export interface QrPath {
  readonly path: string;
  readonly fields: number;
}

/** So many units of the library's own to one field. */
const UNITS = 2;

/**
 * Draws a text as a QR code.
 *
 * @source ISO/IEC 18004:2015, level L: a screen is whole, and fewer fields are read from further off
 */
export function qrPathOf(text: string): QrPath {
  const options: RenderOptions & { readonly eclevel: string } = { bcid: "qrcode", text, eclevel: "L", scale: 1 };
  return qrcode(options, new PathDrawing());
}

type Point = readonly [number, number];

/** Gathers the outlines that the library draws; a code has no lines, ellipses or words. */
class PathDrawing implements DrawingContext<QrPath> {
  #side = 0;
  #path = "";

  scale(): [number, number] {
    return [UNITS, UNITS];
  }

  measure() {
    return { width: 0, ascent: 0, descent: 0 };
  }

  init(width: number): void {
    this.#side = width;
  }

  polygon(points: readonly Point[]): void {
    const [first, ...rest] = points.map(([x, y]) => `${x / UNITS} ${y / UNITS}`);
    this.#path += `M${first}${rest.map((point) => `L${point}`).join("")}Z`;
  }

  line(): void {}
  hexagon(): void {}
  ellipse(): void {}
  fill(): void {}
  text(): void {}

  end(): QrPath {
    return { path: this.#path, fields: this.#side / UNITS };
  }
}
