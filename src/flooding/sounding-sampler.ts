import { normalQuantile, sobolPoints } from "#numerics";

/** Points a round. */
export const ROUND = 8192;
/** Rounds at most. */
const MOST_ROUNDS = 9;
/** Enough: so large an effective share of the points and the search ends. */
const ENOUGH = 0.1;
/** While the soundings are let in by degrees, each round keeps at least this effective share. */
const KEPT = 0.12;
/**
 * The first quarter of the points is drawn from a proposal this much wider, so that no tail is left out. A quarter in
 * one block: every fourth point of a Sobol set lies in one corner.
 */
const WIDE = 2.2;
const WIDE_SHARE = 1 / 4;
const NARROW = 1.1;

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

interface Proposal {
  readonly mean: Float64Array;
  /** Lower triangle L of the covariance L·Lᵀ, row by row. */
  readonly root: Float64Array;
  readonly logDet: number;
}

/**
 * Posterior of unknowns that are standard normal beforehand, by importance sampling in rounds: each round's points are
 * a Sobol set laid over the normal mixture fitted to the round before; the likelihood is let in by degrees until it
 * counts in full. Nothing random: same data, same answer.
 *
 * @param likelihood - log-likelihood of one point
 * @param dimensions - number of unknowns, at most 10
 * @param seed - which Sobol shift
 * @returns weighted points
 * @source Cappé, Guillin, Marin, Robert, Population Monte Carlo, 2004; Owen & Zhou, Safe and effective importance
 *   sampling, 2000 (FROM MEMORY); composition DERIVED, tested by simulation-based calibration
 */
export function sampleBelief(likelihood: LogLikelihood, dimensions: number, seed = 1): Belief {
  const base = normalSet(dimensions, seed);
  let proposal = priorProposal(dimensions);
  let share = 0;
  let belief: Belief | undefined;
  for (let round = 1; round <= MOST_ROUNDS; round += 1) {
    const cloud = layOut(base, proposal, dimensions, round === 1);
    const logs = weigh(cloud, likelihood, dimensions);
    belief = beliefAt(cloud.points, logs, 1, { dimensions, round });
    if (belief.effective >= ENOUGH * ROUND) break;
    share = nextShare(logs, share);
    proposal = fitProposal(cloud.points, weightsAt(logs, share), dimensions);
  }
  return belief!;
}

function normalSet(dimensions: number, seed: number): Float64Array {
  return sobolPoints(ROUND, dimensions, seed).map(normalQuantile);
}

function priorProposal(dimensions: number): Proposal {
  const root = new Float64Array(dimensions * dimensions);
  for (let i = 0; i < dimensions; i += 1) root[i * dimensions + i] = 1;
  return { mean: new Float64Array(dimensions), root, logDet: 0 };
}

interface Cloud {
  readonly points: Float64Array;
  /** Log density of the mixture at each point. */
  readonly logDensity: Float64Array;
}

function layOut(base: Float64Array, proposal: Proposal, dimensions: number, isPrior: boolean): Cloud {
  const points = new Float64Array(base.length);
  const logDensity = new Float64Array(ROUND);
  for (let n = 0; n < ROUND; n += 1) {
    const at = n * dimensions;
    const scale = isPrior ? 1 : n < WIDE_SHARE * ROUND ? WIDE : NARROW;
    let distance = 0;
    for (let i = 0; i < dimensions; i += 1) {
      let sum = proposal.mean[i]!;
      for (let j = 0; j <= i; j += 1) sum += scale * proposal.root[i * dimensions + j]! * base[at + j]!;
      points[at + i] = sum;
      distance += (scale * base[at + i]!) ** 2;
    }
    logDensity[n] = (isPrior ? -distance / 2 : mixtureLog(distance, dimensions)) - proposal.logDet;
  }
  return { points, logDensity };
}

function mixtureLog(distance: number, dimensions: number): number {
  const narrow = ((1 - WIDE_SHARE) * Math.exp(-distance / (2 * NARROW * NARROW))) / NARROW ** dimensions;
  return Math.log(narrow + (WIDE_SHARE * Math.exp(-distance / (2 * WIDE * WIDE))) / WIDE ** dimensions);
}

interface Logs {
  /** log prior − log proposal. */
  readonly ratio: Float64Array;
  readonly likelihood: Float64Array;
}

function weigh(cloud: Cloud, likelihood: LogLikelihood, dimensions: number): Logs {
  const ratio = new Float64Array(ROUND);
  const logs = new Float64Array(ROUND);
  for (let n = 0; n < ROUND; n += 1) {
    const at = n * dimensions;
    let square = 0;
    for (let i = 0; i < dimensions; i += 1) square += cloud.points[at + i]! ** 2;
    ratio[n] = -square / 2 - cloud.logDensity[n]!;
    logs[n] = likelihood(cloud.points, at);
  }
  return { ratio, likelihood: logs };
}

function weightsAt(logs: Logs, share: number): Float64Array {
  const weights = new Float64Array(ROUND);
  let most = Number.NEGATIVE_INFINITY;
  for (let n = 0; n < ROUND; n += 1) {
    weights[n] = logs.ratio[n]! + share * logs.likelihood[n]!;
    if (weights[n]! > most) most = weights[n]!;
  }
  let sum = 0;
  for (let n = 0; n < ROUND; n += 1) {
    weights[n] = Math.exp(weights[n]! - most);
    sum += weights[n]!;
  }
  for (let n = 0; n < ROUND; n += 1) weights[n]! /= sum;
  return weights;
}

function effectiveOf(weights: Float64Array): number {
  let squares = 0;
  for (const weight of weights) squares += weight * weight;
  return 1 / squares;
}

/** Largest share of the likelihood, at least the last one, that keeps enough points in play. */
function nextShare(logs: Logs, last: number): number {
  if (effectiveOf(weightsAt(logs, 1)) >= KEPT * ROUND) return 1;
  let [low, high] = [last, 1];
  for (let i = 0; i < 18; i += 1) {
    const middle = (low + high) / 2;
    if (effectiveOf(weightsAt(logs, middle)) >= KEPT * ROUND) low = middle;
    else high = middle;
  }
  return low > last ? low : Math.min(1, last + (high - last) / 2 + 1e-4);
}

function beliefAt(
  points: Float64Array,
  logs: Logs,
  share: number,
  more: { readonly dimensions: number; readonly round: number },
): Belief {
  const weights = weightsAt(logs, share);
  return {
    points,
    weights,
    dimensions: more.dimensions,
    effective: effectiveOf(weights),
    rounds: more.round,
    best: likeliest(points, logs, more.dimensions),
  };
}

function likeliest(points: Float64Array, logs: Logs, dimensions: number): number {
  let best = 0;
  let most = Number.NEGATIVE_INFINITY;
  for (let n = 0; n < ROUND; n += 1) {
    let square = 0;
    for (let i = 0; i < dimensions; i += 1) square += points[n * dimensions + i]! ** 2;
    const log = logs.likelihood[n]! - square / 2;
    if (log > most) [most, best] = [log, n];
  }
  return best;
}

function fitProposal(points: Float64Array, weights: Float64Array, dimensions: number): Proposal {
  const mean = new Float64Array(dimensions);
  for (let n = 0; n < ROUND; n += 1) {
    for (let i = 0; i < dimensions; i += 1) mean[i]! += weights[n]! * points[n * dimensions + i]!;
  }
  const spread = new Float64Array(dimensions * dimensions);
  for (let n = 0; n < ROUND; n += 1) {
    if (weights[n]! < 1e-12) continue;
    for (let i = 0; i < dimensions; i += 1) {
      const off = weights[n]! * (points[n * dimensions + i]! - mean[i]!);
      for (let j = 0; j <= i; j += 1) spread[i * dimensions + j]! += off * (points[n * dimensions + j]! - mean[j]!);
    }
  }
  return { mean, ...cholesky(spread, dimensions) };
}

/** Lower triangle whose square is the covariance, kept a little away from flat. */
function cholesky(spread: Float64Array, size: number): { root: Float64Array; logDet: number } {
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
    while (sum < target && n < ROUND - 1) {
      n += 1;
      sum += belief.weights[n]!;
    }
    picks[k] = n;
  }
  return picks;
}
