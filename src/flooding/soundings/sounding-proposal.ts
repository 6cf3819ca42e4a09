/** Points come in 32 blocks of one sequence: whole blocks are even, every 32nd point would lie in one corner. */
const BLOCKS = 32;
/** Four blocks are drawn from a normal this much wider than what is left, so that no tail is left out. */
const WIDE_BLOCKS = 4;
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
 * One wide normal about all points, and close ones about the parts the points fall into: first on either side of the
 * target's split (a hole above the water and one below it leave the other unknowns along two different lines), then
 * each part cut in two across its longest direction, so that a curved ridge is followed piece by piece.
 */
export function fitProposal(
  points: Float64Array,
  weights: Float64Array,
  target: { readonly dimensions: number; readonly split: Split },
): Proposal {
  const { dimensions, split } = target;
  const cloud = { points, weights, dimensions };
  const members = Int32Array.from(weights.keys()).filter((n) => weights[n]! > 1e-12);
  const whole = { members, moments: momentsOf(cloud, members) };
  const parts = partsOf(cloud, whole, split);
  const shares = shareOut(
    parts.map(({ moments }) => moments.weight),
    BLOCKS - WIDE_BLOCKS,
  );
  const close = parts.map(({ moments }, k) => normalOf(moments, shares[k]!, NARROW));
  return [normalOf(whole.moments, WIDE_BLOCKS, WIDE, split.place), ...close];
}

function partsOf(cloud: WeightedPoints, whole: Part, split: Split): readonly Part[] {
  const isLow = (n: number): boolean => cloud.points[n * cloud.dimensions + split.place]! < split.at;
  let parts = partedBy(cloud, whole, isLow);
  for (let cut = 0; cut < CUTS; cut += 1) parts = parts.flatMap((part) => partedBy(cloud, part, acrossOf(cloud, part)));
  return parts;
}

/** A part with less than so many effective points has no shape of its own. */
const FEWEST = 30;
/** How often each side is cut in two. */
const CUTS = 3;

interface WeightedPoints {
  readonly points: Float64Array;
  readonly weights: Float64Array;
  readonly dimensions: number;
}

interface Part {
  readonly members: Int32Array;
  readonly moments: Moments;
}

/** The part in two, or whole where either would have too few points. */
function partedBy(cloud: WeightedPoints, part: Part, isFirst: (n: number) => boolean): Part[] {
  const both = [part.members.filter(isFirst), part.members.filter((n) => !isFirst(n))];
  const parts = both.map((members) => ({ members, moments: momentsOf(cloud, members) }));
  return parts.some(({ moments }) => moments.effective < FEWEST) ? [part] : parts;
}

/** True on one side of the plane through the part's mean across its longest direction. */
function acrossOf({ points, dimensions }: WeightedPoints, { moments }: Part): (n: number) => boolean {
  const along = longestOf(moments.spread, dimensions);
  return (n) => {
    let sum = 0;
    for (let i = 0; i < dimensions; i += 1) sum += along[i]! * (points[n * dimensions + i]! - moments.mean[i]!);
    return sum < 0;
  };
}

/** Longest direction of a covariance (lower triangle), by powers. */
function longestOf(spread: Float64Array, size: number): Float64Array {
  let along = Float64Array.from({ length: size }, (_, i) => spread[i * size + i]!);
  for (let turn = 0; turn < 20; turn += 1) {
    const next = along.map((_, i) => {
      let sum = 0;
      for (let j = 0; j < size; j += 1) sum += spread[Math.max(i, j) * size + Math.min(i, j)]! * along[j]!;
      return sum;
    });
    const length = Math.hypot(...next) || 1;
    along = next.map((value) => value / length);
  }
  return along;
}

/** Blocks by weight, at least one each. */
function shareOut(weights: readonly number[], blocks: number): number[] {
  const shares = weights.map(() => 1);
  const sum = weights.reduce((total, one) => total + one, 0);
  for (let left = blocks - shares.length; left > 0; left -= 1) {
    let most = 0;
    shares.forEach((share, k) => {
      if ((weights[k]! / sum) * blocks - share > (weights[most]! / sum) * blocks - shares[most]!) most = k;
    });
    shares[most]! += 1;
  }
  return shares;
}

interface Moments {
  readonly weight: number;
  readonly effective: number;
  readonly mean: Float64Array;
  readonly spread: Float64Array;
}

function momentsOf({ points, weights, dimensions }: WeightedPoints, members: Int32Array): Moments {
  const mean = new Float64Array(dimensions);
  const spread = new Float64Array(dimensions * dimensions);
  let [weight, squares] = [0, 0];
  for (const n of members) {
    weight += weights[n]!;
    squares += weights[n]! ** 2;
    for (let i = 0; i < dimensions; i += 1) mean[i]! += weights[n]! * points[n * dimensions + i]!;
  }
  for (let i = 0; i < dimensions; i += 1) mean[i]! /= weight || 1;
  for (const n of members) addSpread(points, n * dimensions, weights[n]! / weight, mean, spread);
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
