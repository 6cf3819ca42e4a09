// How a boat lies with so much water in her: sinkage and trim free, heel held. Buoyancy, weight and the water in her
// balance in force and in moment about the transverse axis; all surfaces are level.
import { EMPTY, heightOf, under, type Columns, type FilledTo, type Plane, type Shape } from "./columns.ts";

export interface Space {
  readonly columns: Columns;
  readonly filled: FilledTo;
}

export interface Boat {
  readonly shape: Shape;
  readonly hull: Columns;
  readonly space: Space;
  /** Her weight as a volume of water [m³], and where it acts [m]. */
  readonly weight: number;
  readonly gravity: { readonly x: number; readonly z: number };
  /** Tangent of the heel she is held at, to starboard. */
  readonly across: number;
}

export interface Lie {
  readonly flood: number;
  readonly sea: Plane;
  readonly inside: Plane;
  /** Height of the lowest deck edge over the water [m]. */
  readonly freeboard: number;
}

type Unknowns = readonly [sea: number, slope: number, inside: number];

const MOST_ITERATIONS = 80;
const SHORTEST_SHARE = 1 / 64;
const NUDGE = 1e-6;
/** Longest step of one iteration [m], [1]. */
const LONGEST = [0.25, 0.05, 0.25] as const;

/**
 * How she lies with this much water in her.
 *
 * @param boat - dry weight and hull
 * @param flood - water in the space [m³]
 * @param start - a lie near it
 * @returns undefined where nothing balances: she founders
 */
export function lieWith(boat: Boat, flood: number, start: Lie): Lie | undefined {
  let at: Unknowns = [start.sea.middle, start.sea.slope, start.inside.middle];
  let off = imbalance(boat, flood, at);
  for (let n = 0; n < MOST_ITERATIONS; n += 1) {
    if (largest(off) < 1e-9 * boat.weight) return lieAt(boat, flood, at);
    const step = solveThree(slopesAt(boat, flood, at, off), off);
    if (step === undefined) return undefined;
    ({ at, off } = stepDown(boat, flood, { at, off }, step));
  }
  return undefined;
}

interface Point {
  readonly at: Unknowns;
  readonly off: Unknowns;
}

/** The whole step, or the half, the quarter and so on, until it brings her nearer to balance; else the shortest. */
function stepDown(boat: Boat, flood: number, { at, off }: Point, step: readonly number[]): Point {
  for (let share = 1; ; share /= 2) {
    const next = at.map((value, i) => value - share * clamp(step[i]!, LONGEST[i]!)) as unknown as Unknowns;
    const left = imbalance(boat, flood, next);
    if (largest(left) < largest(off) || share < SHORTEST_SHARE) return { at: next, off: left };
  }
}

function largest(off: Unknowns): number {
  return Math.max(...off.map(Math.abs));
}

/** How she lies dry, the water's surface laid through the lowest corner of the space. */
export function lieDry(boat: Boat, draught: number): Lie | undefined {
  const start = lieAt(boat, 0, [draught, 0, -1e3]);
  const dry = lieWith(boat, 0, start);
  return dry && lieAt(boat, 0, [dry.sea.middle, dry.sea.slope, lowestIn(boat, dry.sea.slope)]);
}

function lowestIn({ space: { columns }, across }: Boat, slope: number): number {
  return columns.x.reduce(
    (low, x, n) => Math.min(low, columns.bottom[n]! - slope * x - across * columns.y[n]!),
    Number.POSITIVE_INFINITY,
  );
}

function lieAt(boat: Boat, flood: number, [sea, slope, inside]: Unknowns): Lie {
  const { across } = boat;
  const plane = { middle: sea, slope, across };
  return { flood, sea: plane, inside: { middle: inside, slope, across }, freeboard: freeboardOf(boat.shape, plane) };
}

/** Least height of the deck edge over the sea, both sides, all along [m]. */
export function freeboardOf(shape: Shape, sea: Plane): number {
  let least = Number.POSITIVE_INFINITY;
  for (let n = 0; n <= 80; n += 1) {
    const x = shape.length * (n / 80 - 0.5);
    const half = shape.halfBreadth(x);
    const sides = Math.max(heightOf(sea, x, half), heightOf(sea, x, -half));
    least = Math.min(least, shape.deck(x) - sides);
  }
  return least;
}

/** Volume floating less volume weighing; its moment along; water in the space less the water she has. */
function imbalance(boat: Boat, flood: number, [sea, slope, inside]: Unknowns): Unknowns {
  const { weight, gravity, across, space } = boat;
  const afloat = under(boat.hull, { middle: sea, slope, across }, EMPTY);
  const water = under(space.columns, { middle: inside, slope, across }, space.filled);
  const moment = (along: number, height: number): number => along + slope * height;
  return [
    afloat.volume - flood - weight,
    moment(afloat.alongMoment, afloat.heightMoment) -
      moment(water.alongMoment, water.heightMoment) -
      weight * moment(gravity.x, gravity.z),
    flood === 0 ? 0 : water.volume - flood,
  ];
}

/** By rows the balances, by columns the unknowns; a dry space leaves the last of them alone. */
function slopesAt(boat: Boat, flood: number, at: Unknowns, off: Unknowns): readonly (readonly number[])[] {
  const moved = at.map((_, k) => {
    const nudged = at.map((value, i) => (i === k ? value + NUDGE : value)) as unknown as Unknowns;
    return imbalance(boat, flood, nudged).map((value, i) => (value - off[i]!) / NUDGE);
  });
  const isDry = flood === 0;
  return [0, 1, 2].map((row) =>
    moved.map((column, k) => (isDry && (row === 2 || k === 2) ? +(row === k) : column[row]!)),
  );
}

/** Three equations by Cramer's rule. */
function solveThree(rows: readonly (readonly number[])[], right: readonly number[]): readonly number[] | undefined {
  const whole = determinant(rows);
  if (!(Math.abs(whole) > 1e-12)) return undefined;
  return [0, 1, 2].map(
    (k) => determinant(rows.map((row, r) => row.map((value, c) => (c === k ? right[r]! : value)))) / whole,
  );
}

function determinant(rows: readonly (readonly number[])[]): number {
  const [[a, b, c], [d, e, f], [g, h, i]] = rows as [number[], number[], number[]] as never as number[][] as [
    [number, number, number],
    [number, number, number],
    [number, number, number],
  ];
  return a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);
}

function clamp(value: number, most: number): number {
  return Math.max(-most, Math.min(most, value));
}
