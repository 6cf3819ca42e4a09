import { normalQuantile, sobolPoints } from "#numerics";

/** Points of a round that answers, and of one that only searches where the answer lies. */
export const ROUND = 8192;
const SEARCH_ROUND = 2048;
/** Rounds of either kind at most. */
const MOST_SEARCHES = 9;
const MOST_ANSWERS = 5;
/** Enough: so large an effective share of the points and the answer stands. */
const ENOUGH = 0.1;
/** While the soundings are let in by degrees, each round keeps at least this effective share. */
const KEPT = 0.12;
/**
 * The first quarter of the points is drawn from a proposal this much wider, so that no tail is left out. A quarter in
 * one block: every fourth point of a Sobol set lies in one corner.
 */
const WIDE = 3;
const WIDE_SHARE = 1 / 4;
const NARROW = 1.2;

/** Weighted points standing for what is believed. */
export interface Belief {
  readonly points: Float64Array;
  readonly weights: Float64Array;
  readonly dimensions: number;
  readonly effective: number;
  readonly rounds: number;
  /** Number of the likeliest point, prior included. */
  readonly best: number;
}

/** log-likelihood of the point whose coordinates start at `at` in `z`. */
export type LogLikelihood = (z: Float64Array, at: number) => number;

/**
 * Writes the point that a straightened point stands for, from `at` on in both. It must keep volumes (a shear does), so
 * that densities carry over unchanged.
 */
export type Unbend = (straight: Float64Array, at: number, plain: Float64Array) => void;

/** A normal: lower triangle L of the covariance L·Lᵀ, row by row. */
interface Normal {
  readonly root: Float64Array;
  readonly logDet: number;
}

/** Two normals about one mean: one that fits, one that leaves no tail out. */
interface Proposal {
  readonly mean: Float64Array;
  readonly narrow: Normal;
  readonly wide: Normal;
}

/**
 * Posterior of unknowns that are standard normal beforehand, by importance sampling in rounds: each round's points are
 * a Sobol set laid over the normal mixture fitted to the round before; the likelihood is let in by degrees until it
 * counts in full. Nothing random: same data, same answer.
 *
 * @param target - what is sought
 * @returns weighted points
 * @source Cappé, Guillin, Marin, Robert, Population Monte Carlo, 2004; Owen & Zhou, Safe and effective importance
 *   sampling, 2000 (FROM MEMORY); composition DERIVED, tested by simulation-based calibration
 */
export function sampleBelief(target: Target): Belief {
  const { dimensions } = target;
  const base = sobolPoints(ROUND, dimensions, SEED).map(normalQuantile);
  const search = { ...target, likelihood: target.quickly ?? target.likelihood };
  const found = searchOut(base.subarray(0, SEARCH_ROUND * dimensions), search);
  let { proposal } = found;
  let belief: Belief | undefined;
  for (let round = 1; round <= MOST_ANSWERS; round += 1) {
    const cloud = layOut(base, proposal, dimensions);
    const logs = weigh(cloud, target);
    belief = beliefAt(logs, { dimensions, rounds: found.rounds + round });
    if (belief.effective >= ENOUGH * ROUND) break;
    proposal = fitProposal(cloud.points, belief.weights, target);
  }
  return belief!;
}

/** Which Sobol shift: any would do, and it never changes. */
const SEED = 1;

/** What a belief is sought of. */
export interface Target {
  /** Log-likelihood of one point. */
  readonly likelihood: LogLikelihood;
  /** A quicker, rougher one for the search. */
  readonly quickly?: LogLikelihood;
  /** Number of unknowns, at most 10. */
  readonly dimensions: number;
  /** Straightens a curved ridge, so that a normal fits it. */
  readonly unbend: Unbend;
  /** Unknowns that may have more than one answer: the wide proposal keeps the whole of their first spread. */
  readonly loose: readonly number[];
}

/** Lets the likelihood in by degrees until it counts in full; the normal fitted then is where to answer from. */
function searchOut(base: Float64Array, target: Target): { readonly proposal: Proposal; readonly rounds: number } {
  const { dimensions } = target;
  let proposal = priorProposal(dimensions);
  let share = 0;
  let rounds = 0;
  while (share < 1 && rounds < MOST_SEARCHES) {
    rounds += 1;
    const cloud = layOut(base, proposal, dimensions);
    const logs = weigh(cloud, target);
    share = nextShare(logs, share);
    proposal = fitProposal(cloud.points, weightsAt(logs, share), target);
  }
  return { proposal, rounds };
}

function priorProposal(dimensions: number): Proposal {
  const root = new Float64Array(dimensions * dimensions);
  for (let i = 0; i < dimensions; i += 1) root[i * dimensions + i] = 1;
  const whole = { root, logDet: 0 };
  return { mean: new Float64Array(dimensions), narrow: whole, wide: whole };
}

interface Cloud {
  readonly points: Float64Array;
  /** Log density of the mixture at each point. */
  readonly logDensity: Float64Array;
}

function layOut(base: Float64Array, proposal: Proposal, dimensions: number): Cloud {
  const count = base.length / dimensions;
  const points = new Float64Array(base.length);
  const logDensity = new Float64Array(count);
  const work = new Float64Array(dimensions);
  for (let n = 0; n < count; n += 1) {
    const at = n * dimensions;
    const isWide = n < WIDE_SHARE * count;
    const own = placePoint(base, at, proposal.mean, isWide ? proposal.wide : proposal.narrow, points);
    const other = distanceFrom(points, at, proposal.mean, isWide ? proposal.narrow : proposal.wide, work);
    logDensity[n] = mixtureLog(proposal, isWide ? other : own, isWide ? own : other);
  }
  return { points, logDensity };
}

/** Writes mean + L·b; returns |b|². */
function placePoint(
  base: Float64Array,
  at: number,
  mean: Float64Array,
  { root }: Normal,
  points: Float64Array,
): number {
  const size = mean.length;
  let distance = 0;
  for (let i = 0; i < size; i += 1) {
    let sum = mean[i]!;
    for (let j = 0; j <= i; j += 1) sum += root[i * size + j]! * base[at + j]!;
    points[at + i] = sum;
    distance += base[at + i]! ** 2;
  }
  return distance;
}

/** |L⁻¹(x − mean)|². */
function distanceFrom(
  points: Float64Array,
  at: number,
  mean: Float64Array,
  { root }: Normal,
  work: Float64Array,
): number {
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

function mixtureLog({ narrow, wide }: Proposal, near: number, far: number): number {
  const [a, b] = [-near / 2 - narrow.logDet, -far / 2 - wide.logDet];
  const most = Math.max(a, b);
  return most + Math.log((1 - WIDE_SHARE) * Math.exp(a - most) + WIDE_SHARE * Math.exp(b - most));
}

interface Logs {
  /** The points, bent back. */
  readonly plain: Float64Array;
  /** log prior − log proposal. */
  readonly ratio: Float64Array;
  readonly likelihood: Float64Array;
}

function weigh(cloud: Cloud, { likelihood, dimensions, unbend }: Target): Logs {
  const count = cloud.logDensity.length;
  const plain = new Float64Array(cloud.points.length);
  const ratio = new Float64Array(count);
  const logs = new Float64Array(count);
  for (let n = 0; n < count; n += 1) {
    const at = n * dimensions;
    unbend(cloud.points, at, plain);
    let square = 0;
    for (let i = 0; i < dimensions; i += 1) square += plain[at + i]! ** 2;
    ratio[n] = -square / 2 - cloud.logDensity[n]!;
    logs[n] = likelihood(plain, at);
  }
  return { plain, ratio, likelihood: logs };
}

function weightsAt(logs: Logs, share: number): Float64Array {
  const count = logs.ratio.length;
  const weights = new Float64Array(count);
  let most = Number.NEGATIVE_INFINITY;
  for (let n = 0; n < count; n += 1) {
    weights[n] = logs.ratio[n]! + share * logs.likelihood[n]!;
    if (weights[n]! > most) most = weights[n]!;
  }
  let sum = 0;
  for (let n = 0; n < count; n += 1) {
    weights[n] = Math.exp(weights[n]! - most);
    sum += weights[n]!;
  }
  for (let n = 0; n < count; n += 1) weights[n]! /= sum;
  return weights;
}

function effectiveOf(weights: Float64Array): number {
  let squares = 0;
  for (const weight of weights) squares += weight * weight;
  return 1 / squares;
}

/** Largest share of the likelihood, at least the last one, that keeps enough points in play. */
function nextShare(logs: Logs, last: number): number {
  if (effectiveOf(weightsAt(logs, 1)) >= KEPT * logs.ratio.length) return 1;
  let [low, high] = [last, 1];
  for (let i = 0; i < 18; i += 1) {
    const middle = (low + high) / 2;
    if (effectiveOf(weightsAt(logs, middle)) >= KEPT * logs.ratio.length) low = middle;
    else high = middle;
  }
  return low > last ? low : Math.min(1, last + (high - last) / 2 + 1e-4);
}

function beliefAt(logs: Logs, more: { readonly dimensions: number; readonly rounds: number }): Belief {
  const weights = weightsAt(logs, 1);
  return {
    points: logs.plain,
    weights,
    dimensions: more.dimensions,
    effective: effectiveOf(weights),
    rounds: more.rounds,
    best: likeliest(logs, more.dimensions),
  };
}

function likeliest(logs: Logs, dimensions: number): number {
  let best = 0;
  let most = Number.NEGATIVE_INFINITY;
  for (let n = 0; n < logs.ratio.length; n += 1) {
    let square = 0;
    for (let i = 0; i < dimensions; i += 1) square += logs.plain[n * dimensions + i]! ** 2;
    const log = logs.likelihood[n]! - square / 2;
    if (log > most) [most, best] = [log, n];
  }
  return best;
}

function fitProposal(points: Float64Array, weights: Float64Array, target: Target): Proposal {
  const { dimensions } = target;
  const mean = new Float64Array(dimensions);
  for (let n = 0; n < weights.length; n += 1) {
    for (let i = 0; i < dimensions; i += 1) mean[i]! += weights[n]! * points[n * dimensions + i]!;
  }
  const spread = new Float64Array(dimensions * dimensions);
  for (let n = 0; n < weights.length; n += 1) {
    if (weights[n]! < 1e-12) continue;
    for (let i = 0; i < dimensions; i += 1) {
      const off = weights[n]! * (points[n * dimensions + i]! - mean[i]!);
      for (let j = 0; j <= i; j += 1) spread[i * dimensions + j]! += off * (points[n * dimensions + j]! - mean[j]!);
    }
  }
  const narrow = spread.map((value) => NARROW ** 2 * value);
  const wide = spread.map((value) => WIDE ** 2 * value);
  for (const place of target.loose) wide[place * dimensions + place]! += 1;
  return { mean, narrow: cholesky(narrow, dimensions), wide: cholesky(wide, dimensions) };
}

/** Lower triangle whose square is the covariance, kept a little away from flat. */
function cholesky(spread: Float64Array, size: number): Normal {
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

/**
 * Draws equally weighted points from a belief: evenly spaced picks along the summed weights.
 *
 * @returns numbers of the points picked
 */
export function pickEvenly(belief: Belief, count: number): Int32Array {
  const picks = new Int32Array(count);
  let n = 0;
  let sum = belief.weights[0]!;
  for (let k = 0; k < count; k += 1) {
    const target = (k + 0.5) / count;
    while (sum < target && n < belief.weights.length - 1) {
      n += 1;
      sum += belief.weights[n]!;
    }
    picks[k] = n;
  }
  return picks;
}
