/** Points come in eight blocks of one sequence: whole blocks are even, every eighth point would lie in one corner. */
const BLOCKS = 8;
/** Two blocks are drawn from a normal this much wider than what is left, so that no tail is left out. */
const WIDE_BLOCKS = 2;
const WIDE = 2.5;
const NARROW = 1.2;

/** A normal with so many blocks of points: mean, and lower triangle L of the covariance L·Lᵀ, row by row. */
export interface Normal {
  readonly blocks: number;
  readonly mean: Float64Array;
  readonly root: Float64Array;
  readonly logDet: number;
}

export type Proposal = readonly Normal[];

/** Where the unknowns may behave differently on either side. */
export interface Split {
  readonly place: number;
  readonly at: number;
}

/** The standard normals everything begins with. */
export function priorProposal(dimensions: number): Proposal {
  const root = new Float64Array(dimensions * dimensions);
  for (let i = 0; i < dimensions; i += 1) root[i * dimensions + i] = 1;
  return [{ blocks: BLOCKS, mean: new Float64Array(dimensions), root, logDet: 0 }];
}

/** The normal each block of points is drawn from, in order. */
export function ownersOf(proposal: Proposal): readonly Normal[] {
  return proposal.flatMap((normal) => Array.from({ length: normal.blocks }, () => normal));
}

/** Writes mean + L·b. */
export function placePoint(base: Float64Array, at: number, { mean, root }: Normal, points: Float64Array): void {
  const size = mean.length;
  for (let i = 0; i < size; i += 1) {
    let sum = mean[i]!;
    for (let j = 0; j <= i; j += 1) sum += root[i * size + j]! * base[at + j]!;
    points[at + i] = sum;
  }
}

/** |L⁻¹(x − mean)|². */
function distanceFrom(points: Float64Array, at: number, { mean, root }: Normal, work: Float64Array): number {
  const size = mean.length;
  let distance = 0;
  for (let i = 0; i < size; i += 1) {
    let sum = points[at + i]! - mean[i]!;
    for (let j = 0; j < i; j += 1) sum -= root[i * size + j]! * work[j]!;
    work[i] = sum / root[i * size + i]!;
    distance += work[i]! ** 2;
  }
  return distance;
}

/** Log density of all normals together, each with its share of the blocks. */
export function mixtureLog(proposal: Proposal, points: Float64Array, at: number, work: Float64Array): number {
  let [most, sum] = [Number.NEGATIVE_INFINITY, 0];
  for (const normal of proposal) {
    const log = Math.log(normal.blocks / BLOCKS) - distanceFrom(points, at, normal, work) / 2 - normal.logDet;
    if (log > most) [most, sum] = [log, sum * Math.exp(most - log) + 1];
    else sum += Math.exp(log - most);
  }
  return most + Math.log(sum);
}

/**
 * One wide normal about all points, and a close one about those on either side of the target's split: a hole above the
 * water and one below it leave the other unknowns along two different lines.
 */
export function fitProposal(
  points: Float64Array,
  weights: Float64Array,
  target: { readonly dimensions: number; readonly split: Split },
): Proposal {
  const { dimensions, split } = target;
  const sideOf = (n: number): number => (points[n * dimensions + split.place]! < split.at ? 0 : 1);
  const whole = momentsOf(points, weights, dimensions, () => true);
  const sides = [0, 1].map((side) => momentsOf(points, weights, dimensions, (n) => sideOf(n) === side));
  const close = BLOCKS - WIDE_BLOCKS;
  const isOneSided = sides.some((side) => side.effective < FEWEST);
  const first = Math.min(close - 1, Math.max(1, Math.round(close * sides[0]!.weight)));
  const narrow = isOneSided
    ? [normalOf(whole, close, NARROW)]
    : [normalOf(sides[0]!, first, NARROW), normalOf(sides[1]!, close - first, NARROW)];
  return [normalOf(whole, WIDE_BLOCKS, WIDE, split.place), ...narrow];
}

/** A side with less than so many effective points has no shape of its own. */
const FEWEST = 20;

interface Moments {
  readonly weight: number;
  readonly effective: number;
  readonly mean: Float64Array;
  readonly spread: Float64Array;
}

function momentsOf(
  points: Float64Array,
  weights: Float64Array,
  dimensions: number,
  counts: (n: number) => boolean,
): Moments {
  const mean = new Float64Array(dimensions);
  const spread = new Float64Array(dimensions * dimensions);
  let [weight, squares] = [0, 0];
  for (let n = 0; n < weights.length; n += 1) {
    if (!counts(n)) continue;
    weight += weights[n]!;
    squares += weights[n]! ** 2;
    for (let i = 0; i < dimensions; i += 1) mean[i]! += weights[n]! * points[n * dimensions + i]!;
  }
  for (let i = 0; i < dimensions; i += 1) mean[i]! /= weight || 1;
  for (let n = 0; n < weights.length; n += 1) {
    if (weights[n]! < 1e-12 || !counts(n)) continue;
    addSpread(points, n * dimensions, weights[n]! / weight, mean, spread);
  }
  return { weight, effective: squares > 0 ? weight ** 2 / squares : 0, mean, spread };
}

function addSpread(points: Float64Array, at: number, weight: number, mean: Float64Array, spread: Float64Array): void {
  const size = mean.length;
  for (let i = 0; i < size; i += 1) {
    const off = weight * (points[at + i]! - mean[i]!);
    for (let j = 0; j <= i; j += 1) spread[i * size + j]! += off * (points[at + j]! - mean[j]!);
  }
}

/** A normal so many times wider than its moments; where a place is named, with the whole of its first spread there. */
function normalOf(moments: Moments, blocks: number, scale: number, loose?: number): Normal {
  const size = moments.mean.length;
  const spread = moments.spread.map((value) => scale ** 2 * value);
  if (loose !== undefined) spread[loose * size + loose]! += 1;
  return { blocks, mean: moments.mean, ...cholesky(spread, size) };
}

/** Lower triangle whose square is the covariance, kept a little away from flat. */
function cholesky(spread: Float64Array, size: number): Pick<Normal, "root" | "logDet"> {
  const root = new Float64Array(size * size);
  let logDet = 0;
  for (let i = 0; i < size; i += 1) {
    for (let j = 0; j <= i; j += 1) {
      let sum = spread[i * size + j]! + (i === j ? 1e-8 : 0);
      for (let k = 0; k < j; k += 1) sum -= root[i * size + k]! * root[j * size + k]!;
      root[i * size + j] = i === j ? Math.sqrt(Math.max(sum, 1e-10)) : sum / root[j * size + j]!;
    }
    logDet += Math.log(root[i * size + i]!);
  }
  return { root, logDet };
}
