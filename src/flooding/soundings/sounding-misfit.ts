import { nth, numberAt } from "#base";
import { chiSquareTail, factorise, solveFactorised } from "#numerics";

/** Writes (reading − level)/σ for a point of unknowns. */
export type ResidualsAt = (z: Float64Array, out: Float64Array) => void;

/** How well one casualty can be made to fit the readings. */
export interface Misfit {
  /** Least Σ(r/σ)² + |z|² over the unknowns: the distance of the readings from what was expected of them. */
  readonly distance: number;
  /** Chance of readings so far off when the model and the stated noise are right. */
  readonly chance: number;
  /** True where that chance is below {@link FLAGGED_BELOW}, or where a change on the way explains much more. */
  readonly flagged: boolean;
  /** The change on the way that explains most, where it explains much more than a steady casualty does. */
  readonly change?: SoundingChange;
  /** Reading farthest off at the best fit, and by how many standard deviations. */
  readonly worst: { readonly reading: number; readonly deviations: number };
}

/** Readings less likely than this are flagged: the false alarms this makes are measured in docs/methods/soundings.md. */
export const FLAGGED_BELOW = 0.03;

/** A change on the way. */
export interface SoundingChange {
  readonly kind: "inflow" | "delivery";
  /** Reading after which it happens. */
  readonly after: number;
  /** Factor on hole or delivery from then on. */
  readonly factor: number;
  /** By how much it brings the readings nearer. */
  readonly gain: number;
}

const POLISHINGS = 8;

/**
 * Distance of the readings from the model. For a model straight in its unknowns the least penalised sum of squares is
 * χ² with one degree of freedom per reading.
 *
 * @param residualsAt - writes (reading − level)/σ for a point of unknowns
 * @param start - where to begin, the likeliest point sampled
 * @param readings - how many
 * @returns the misfit
 * @source DERIVED: docs/methods/soundings.md, "Does the model fit"
 */
export function measureMisfit(
  residualsAt: ResidualsAt,
  start: Float64Array,
  readings: number,
): Misfit & { readonly z: Float64Array } {
  const { distance, residuals, z } = closestFit(residualsAt, start, readings, POLISHINGS);
  const chance = chiSquareTail(distance, readings);
  return { distance, chance, flagged: chance < FLAGGED_BELOW, worst: worstOf(residuals), z };
}

/** Nearest a model comes to the readings from a starting point, and where. */
export function closestFit(
  residualsAt: ResidualsAt,
  start: Float64Array,
  readings: number,
  polishings: number,
): { readonly distance: number; readonly residuals: Float64Array; readonly z: Float64Array } {
  const z = Float64Array.from(start);
  const residuals = new Float64Array(readings);
  residualsAt(z, residuals);
  let distance = distanceOf(z, residuals);
  for (let i = 0; i < polishings; i += 1) {
    const better = polish(residualsAt, z, residuals, distance);
    if (better === undefined) break;
    const gain = distance - better;
    distance = better;
    if (gain < 1e-3) break;
  }
  return { distance, residuals, z };
}

function distanceOf(z: Float64Array, residuals: Float64Array): number {
  let sum = 0;
  for (const value of z) sum += value * value;
  for (const value of residuals) sum += value * value;
  return sum;
}

function worstOf(residuals: Float64Array): Misfit["worst"] {
  let reading = 0;
  residuals.forEach((value, i) => {
    if (Math.abs(value) > Math.abs(numberAt(residuals, reading))) reading = i;
  });
  return { reading, deviations: numberAt(residuals, reading) };
}

/** One Gauss-Newton step, halved until it helps; moves z and residuals, returns the new distance. */
function polish(
  residualsAt: ResidualsAt,
  z: Float64Array,
  residuals: Float64Array,
  distance: number,
): number | undefined {
  const step = gaussNewton(residualsAt, z, residuals);
  if (step === undefined) return undefined;
  const trial = new Float64Array(z.length);
  const found = new Float64Array(residuals.length);
  for (let share = 1; share > 1e-3; share /= 2) {
    for (let i = 0; i < z.length; i += 1) trial[i] = numberAt(z, i) + share * numberAt(step, i);
    residualsAt(trial, found);
    const now = distanceOf(trial, found);
    if (!(now < distance)) continue;
    z.set(trial);
    residuals.set(found);
    return now;
  }
  return undefined;
}

function gaussNewton(residualsAt: ResidualsAt, z: Float64Array, residuals: Float64Array): Float64Array | undefined {
  const size = z.length;
  const slopes = slopesOf(residualsAt, z, residuals);
  const matrix = new Float64Array(size * size);
  for (let i = 0; i < size; i += 1) {
    for (let j = 0; j < size; j += 1) matrix[i * size + j] = (i === j ? 1 : 0) + dot(nth(slopes, i), nth(slopes, j));
  }
  const factors = factorise(matrix, size);
  if (factors === undefined) return undefined;
  const step = new Float64Array(size);
  solveFactorised(factors, (i) => -(numberAt(z, i) + dot(nth(slopes, i), residuals)), step);
  return step;
}

function slopesOf(residualsAt: ResidualsAt, z: Float64Array, residuals: Float64Array): Float64Array[] {
  const moved = Float64Array.from(z);
  return Array.from(z, (value, i) => {
    const found = new Float64Array(residuals.length);
    moved[i] = value + 1e-4;
    residualsAt(moved, found);
    moved[i] = value;
    return found.map((there, k) => (there - numberAt(residuals, k)) / 1e-4);
  });
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i += 1) sum += numberAt(a, i) * numberAt(b, i);
  return sum;
}
