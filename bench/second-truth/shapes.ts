// Hulls by formula: tapering, with rounded or hollow sections; and the two whose hydrostatics are known in closed form.
import type { Shape } from "./columns.ts";

/** What makes a tapering hull. */
export interface Lines {
  readonly length: number;
  readonly beam: number;
  readonly depth: number;
  /** Greatest breadth so far forward of the middle, as a share of the length. */
  readonly widest: number;
  /** Breadth of the transom over the beam. */
  readonly transom: number;
  /** How full she stays towards the stem: 1 a wedge, 3 a blunt bow. */
  readonly bluntness: number;
  /** How far the keel rises at the stern and at the stem, as a share of the depth. */
  readonly sternRise: number;
  readonly stemRise: number;
  /** The deck rises so much at the stem, as a share of the depth. */
  readonly sheer: number;
  /** Half breadth goes as (1 − (1 − ζ)^m)^(1/n), ζ from keel to deck: m = n = 2 an ellipse, m 2 and n 1 Wigley's. */
  readonly m: number;
  readonly n: number;
}

/**
 * A tapering hull.
 *
 * @param lines - its measures
 * @source sections: superellipse, with Wigley's parabola among them (Wigley 1934); taper, rise and sheer: this bench's own
 */
export function taperingHull(lines: Lines): Shape {
  const { length, beam, depth, m, n } = lines;
  const widest = lines.widest * length;
  const [aft, fore] = [widest + length / 2, length / 2 - widest];
  const forward = (x: number): number => Math.max(0, (x - widest) / fore);
  const behind = (x: number): number => Math.max(0, (widest - x) / aft);
  const halfBreadth = (x: number): number =>
    (beam / 2) * (1 - forward(x) ** lines.bluntness) * (1 - (1 - lines.transom) * behind(x) ** 2);
  const keel = (x: number): number => depth * (lines.stemRise * forward(x) ** 3 + lines.sternRise * behind(x) ** 2);
  const deck = (x: number): number => depth * (1 + lines.sheer * forward(x) ** 2);
  const shell = (x: number, y: number): number => {
    const out = Math.min(1, Math.abs(y) / Math.max(1e-9, halfBreadth(x)));
    return keel(x) + (deck(x) - keel(x)) * (1 - (1 - out ** n) ** (1 / m));
  };
  return { length, halfBreadth, keel, deck, shell };
}

/** A box: upright sides and ends, flat bottom. */
export function boxHull(length: number, beam: number, depth: number): Shape {
  return { length, halfBreadth: () => beam / 2, keel: () => 0, deck: () => depth, shell: () => 0 };
}

/** A wedge: triangular section, the same all along; full beam at the deck. */
export function wedgeHull(length: number, beam: number, depth: number): Shape {
  const shell = (_x: number, y: number): number => (2 * depth * Math.abs(y)) / beam;
  return { length, halfBreadth: () => beam / 2, keel: () => 0, deck: () => depth, shell };
}
