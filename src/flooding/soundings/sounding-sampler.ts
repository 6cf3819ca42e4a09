import { normalQuantile, sobolPoints } from "#numerics";
import {
  fitProposal,
  mixtureLog,
  ownersOf,
  placePoint,
  priorProposal,
  type Proposal,
  type Split,
} from "./sounding-proposal.ts";

/** Points of a round that answers, and of one that only searches where the answer lies. */
export const ROUND = 8192;
const SEARCH_ROUND = 2048;
/** Rounds of either kind at most. */
const MOST_SEARCHES = 9;
const MOST_ANSWERS = 4;
/** Enough: so large an effective share of the points and the answer stands. */
const ENOUGH = 0.2;
/** While the soundings are let in by degrees, each round keeps at least this effective share. */
const KEPT = 0.12;
/** Weighted points standing for what is believed. */
export interface Posterior {
  readonly points: Float64Array;
  readonly weights: Float64Array;
  readonly dimensions: number;
  readonly effective: number;
  readonly rounds: number;
  /** Number of the likeliest point, prior included. */
  readonly best: number;
  /** Log of its likelihood and prior together. */
  readonly bestLog: number;
}

/** log-likelihood of the point whose coordinates start at `at` in `z`. */
export type LogLikelihood = (z: Float64Array, at: number) => number;

/**
 * Writes the point that a straightened point stands for, from `at` on in both. It must keep volumes (a shear does), so
 * that densities carry over unchanged.
 */
export type Unbend = (straight: Float64Array, at: number, plain: Float64Array) => void;

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
export function sampleBelief(target: Target): Posterior {
  const { dimensions } = target;
  const base = sobolPoints(ROUND, dimensions, SEED).map(normalQuantile);
  const search = { ...target, likelihood: target.quickly ?? target.likelihood };
  const found = searchOut(base.subarray(0, SEARCH_ROUND * dimensions), search);
  let { proposal } = found;
  let belief: Posterior | undefined;
  for (let round = 1; round <= MOST_ANSWERS; round += 1) {
    const cloud = layOut(base, proposal, dimensions);
    const answer = beliefAt(weigh(cloud, target), { dimensions, rounds: found.rounds + round });
    belief = belief === undefined ? answer : pooled(belief, answer);
    if (belief.effective >= ENOUGH * ROUND) break;
    proposal = fitProposal(cloud.points, capped(answer.weights), target);
  }
  return belief!;
}

/** Two rounds' points together, each round counting by its effective points. */
function pooled(one: Posterior, other: Posterior): Posterior {
  const share = one.effective / (one.effective + other.effective);
  const weights = joined(
    one.weights.map((weight) => share * weight),
    other.weights.map((weight) => (1 - share) * weight),
  );
  const isBetter = other.bestLog > one.bestLog;
  return {
    ...(isBetter ? other : one),
    points: joined(one.points, other.points),
    weights,
    effective: effectiveOf(weights),
    rounds: other.rounds,
    best: isBetter ? one.weights.length + other.best : one.best,
  };
}

function joined(one: Float64Array, other: Float64Array): Float64Array {
  const both = new Float64Array(one.length + other.length);
  both.set(one);
  both.set(other, one.length);
  return both;
}

/** Weights to fit by: no point counts more than 1/√n, so that one lucky point does not draw everything to itself. */
function capped(weights: Float64Array): Float64Array {
  const most = 1 / Math.sqrt(weights.length);
  const kept = weights.map((weight) => Math.min(weight, most));
  const sum = kept.reduce((total, one) => total + one, 0);
  return kept.map((weight) => weight / sum);
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
  /** The unknown, and its value, on either side of which the others may behave differently. */
  readonly split: Split;
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

interface Cloud {
  readonly points: Float64Array;
  /** Log density of the mixture at each point. */
  readonly logDensity: Float64Array;
}

function layOut(base: Float64Array, proposal: Proposal, dimensions: number): Cloud {
  const count = base.length / dimensions;
  const points = new Float64Array(base.length);
  const logDensity = new Float64Array(count);
  const owners = ownersOf(proposal);
  const work = new Float64Array(dimensions);
  for (let n = 0; n < count; n += 1) {
    const owner = owners[Math.floor((n * owners.length) / count)]!;
    placePoint(base, n * dimensions, owner, points);
    logDensity[n] = mixtureLog(proposal, points, n * dimensions, work);
  }
  return { points, logDensity };
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

function beliefAt(logs: Logs, more: { readonly dimensions: number; readonly rounds: number }): Posterior {
  const weights = weightsAt(logs, 1);
  return {
    points: logs.plain,
    weights,
    dimensions: more.dimensions,
    effective: effectiveOf(weights),
    rounds: more.rounds,
    ...likeliest(logs, more.dimensions),
  };
}

function likeliest(logs: Logs, dimensions: number): Pick<Posterior, "best" | "bestLog"> {
  let [best, bestLog] = [0, Number.NEGATIVE_INFINITY];
  for (let n = 0; n < logs.ratio.length; n += 1) {
    let square = 0;
    for (let i = 0; i < dimensions; i += 1) square += logs.plain[n * dimensions + i]! ** 2;
    const log = logs.likelihood[n]! - square / 2;
    if (log > bestLog) [bestLog, best] = [log, n];
  }
  return { best, bestLog };
}
