import { firstOf, lastOf } from "#base";
import { integrate, straightSegments, type TablePoint } from "#numerics";

const FOOT = 0.3048;
const INCH = 0.0254;

/** Sharp-edged orifices by shape: coefficient against head [m]. */
const PRINTED = {
  circle: [
    { x: 1 * FOOT, y: 0.62 },
    { x: 4 * FOOT, y: 0.608 },
    { x: 10 * FOOT, y: 0.605 },
  ],
  square: [
    { x: 1 * FOOT, y: 0.627 },
    { x: 10 * FOOT, y: 0.612 },
  ],
  "upright slot 16:1": [{ x: 1 * FOOT, y: 0.663 }],
} as const;

/** Shapes with printed coefficients. */
export type OrificeShape = keyof typeof PRINTED;

/**
 * Printed discharge coefficient of a sharp-edged orifice, between printed heads by straight lines.
 *
 * @param shape - shape of the orifice (0.196 sq in; sides upright)
 * @param head - over its centre [m]
 * @returns coefficient [1]
 * @range heads of 1 to 10 ft; held at the nearest printed value outside
 * @source Encyclopaedia Britannica, 11th ed. (1911), vol. 14, Hydraulics (W. C. Unwin), table of coefficients
 * @example printedCoefficient("circle", 0.3048) // 0.62
 */
export function printedCoefficient(shape: OrificeShape, head: number): number {
  const rows: readonly TablePoint[] = PRINTED[shape];
  const [first, last] = [firstOf(rows), lastOf(rows)];
  if (head <= first.x) return first.y;
  if (head >= last.x) return last.y;
  return straightSegments(rows).value(head);
}

/**
 * Unwin's fit to Mair's measurements: c = 0.6075 + 0.0098/√h − 0.0037 d, h in feet, d in inches.
 *
 * @param head - over the centre [m]
 * @param diameter - of a sharp-edged circular hole [m]
 * @returns coefficient [1]
 * @range d 1 to 3 in, h 0.75 to 2 ft in the measurements
 * @source Encyclopaedia Britannica, 11th ed. (1911), vol. 14, Hydraulics (W. C. Unwin)
 * @example unwinCoefficient(0.3048, 0.0254) // 0.6136
 */
export function unwinCoefficient(head: number, diameter: number): number {
  return 0.6075 + 0.0098 / Math.sqrt(head / FOOT) - 0.0037 * (diameter / INCH);
}

/**
 * What the centre-head rule overstates by: exact over centre-head flow of a circular hole in an upright side.
 *
 * (2/π)∫√(1 − s²)·√(1 + k s) ds from −1 to 1, k = R/h
 *
 * @param radiusOverHead - hole's radius over the head at its centre, 0 to 1 (top edge at the surface) [1]
 * @returns ratio, 0.960 to 1 [1]
 * @source Encyclopaedia Britannica, 11th ed. (1911), vol. 14, Hydraulics, sec. 40 prints 0.96; integral DERIVED
 * @example circularHoleRatio(1) // 0.96034
 */
export function circularHoleRatio(radiusOverHead: number): number {
  const strip = (angle: number): number =>
    Math.cos(angle) ** 2 * Math.sqrt(Math.max(0, 1 + radiusOverHead * Math.sin(angle)));
  return (2 / Math.PI) * integrate(strip, -Math.PI / 2, Math.PI / 2).value;
}
