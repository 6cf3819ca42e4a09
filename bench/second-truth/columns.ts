// A body as upright columns, and what of it lies under a plane. x counts forward of the middle of the length, y to
// starboard, z up from the lowest point of the keel.

/** A level surface as the boat sees it: her own trim and heel tilt it. */
export interface Plane {
  /** Height at the middle of the boat [m]. */
  readonly middle: number;
  /** Rise for every metre forward. */
  readonly slope: number;
  /** Rise for every metre to starboard: the tangent of the heel. */
  readonly across: number;
}

/** A hull by formula. */
export interface Shape {
  readonly length: number;
  /** Half the breadth at the deck edge, x forward of the middle [m]. */
  readonly halfBreadth: (x: number) => number;
  readonly keel: (x: number) => number;
  readonly deck: (x: number) => number;
  /** Height of the shell, |y| up to the half breadth [m]. */
  readonly shell: (x: number, y: number) => number;
}

export interface Columns {
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly bottom: Float64Array;
  readonly top: Float64Array;
  readonly area: Float64Array;
}

/** How a body is cut up. */
export interface Cut {
  readonly from: number;
  readonly to: number;
  readonly stations: number;
  readonly across: number;
  /** Raises the floor above the shell [m]. */
  readonly floor: number;
}

/** Height of a plane at a place [m]. */
export function heightOf(plane: Plane, x: number, y: number): number {
  return plane.middle + plane.slope * x + plane.across * y;
}

/**
 * Cuts a shape into columns: stations evenly along, columns narrowing to the sides, where the shell is steep.
 *
 * @param shape - the hull
 * @param cut - from and to [m forward of the middle], how finely, how high the floor lies above the shell [m]
 */
export function columnsOf(shape: Shape, cut: Cut): Columns {
  const count = cut.stations * cut.across;
  const made = () => new Float64Array(count);
  const columns: Columns = { x: made(), y: made(), bottom: made(), top: made(), area: made() };
  const long = (cut.to - cut.from) / cut.stations;
  for (let n = 0; n < count; n += 1) setColumn(columns, n, shape, cut, long);
  return columns;
}

function setColumn(columns: Columns, n: number, shape: Shape, cut: Cut, long: number): void {
  const x = cut.from + (Math.floor(n / cut.across) + 0.5) * long;
  const half = shape.halfBreadth(x);
  const edge = (k: number): number => half * Math.sin(Math.PI * (k / cut.across - 0.5));
  const k = n % cut.across;
  const [port, starboard] = [edge(k), edge(k + 1)];
  const y = (port + starboard) / 2;
  const top = shape.deck(x);
  columns.x[n] = x;
  columns.y[n] = y;
  columns.bottom[n] = Math.min(top, shape.shell(x, y) + cut.floor);
  columns.top[n] = top;
  columns.area[n] = (starboard - port) * long;
}

/** What lies under a plane: volume, and its moments about the middle and the keel. */
export interface Under {
  readonly volume: number;
  readonly alongMoment: number;
  readonly heightMoment: number;
}

/** Share of the space that water can fill, added up from the keel to a height [m]. */
export type FilledTo = (height: number) => number;

/** Nothing stands in it. */
export const EMPTY: FilledTo = (height) => height;

/**
 * Volume and moments under a plane.
 *
 * @param columns - of the body
 * @param plane - the water's surface
 * @param filled - the share that can be filled, summed over height
 */
export function under(columns: Columns, plane: Plane, filled: FilledTo): Under {
  const { x, y, bottom, top, area } = columns;
  let [volume, alongMoment, heightMoment] = [0, 0, 0];
  for (let n = 0; n < x.length; n += 1) {
    const surface = Math.min(top[n]!, heightOf(plane, x[n]!, y[n]!));
    if (surface <= bottom[n]!) continue;
    const part = area[n]! * (filled(surface) - filled(bottom[n]!));
    volume += part;
    alongMoment += part * x[n]!;
    heightMoment += (part * (surface + bottom[n]!)) / 2;
  }
  return { volume, alongMoment, heightMoment };
}
