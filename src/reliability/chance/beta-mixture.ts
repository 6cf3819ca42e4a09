import { betaChance, betaQuantile, logBeta, quantileInLogs } from "#numerics";
import type { Belief } from "./belief.ts";

/** A beta distribution and how much of the belief it carries. */
export interface BetaPiece {
  readonly a: number;
  readonly b: number;
  readonly weight: number;
}

/**
 * Mean and percentiles of a mixture of beta distributions.
 *
 * @param pieces - weights adding up to 1; a and b > 0
 * @returns mean, 5th, 50th and 95th percentile [1]
 * @source DERIVED
 */
export function betaBelief(pieces: readonly BetaPiece[]): Belief {
  const mean = meanOfBetas(pieces);
  const [p05, p50, p95] = [0.05, 0.5, 0.95].map((chance) => mixtureQuantile(pieces, chance));
  return { mean, p05: p05!, p50: p50!, p95: p95! };
}

/**
 * Mean of a mixture of beta distributions.
 *
 * @param pieces - weights adding up to 1; a and b > 0
 * @returns mean [1]
 * @source DERIVED: a / (a + b) of each
 */
export function meanOfBetas(pieces: readonly BetaPiece[]): number {
  return pieces.reduce((sum, { a, b, weight }) => sum + (weight * a) / (a + b), 0);
}

/** How near, in ln odds, a percentile of a mixture is sought. */
const MIXED = 1e-9;

function mixtureQuantile(pieces: readonly BetaPiece[], chance: number): number {
  const [only] = pieces;
  if (only && pieces.length === 1) return betaQuantile(chance, only.a, only.b);
  const mean = meanOfBetas(pieces);
  const below = (odds: number) =>
    pieces.reduce((sum, { a, b, weight }) => sum + weight * betaChance(odds / (1 + odds), a, b), 0);
  const odds = quantileInLogs(below, chance, mean / (1 - mean), MIXED);
  return odds / (1 + odds);
}

/**
 * Chance that at least so many of a number start, all having the same unknown chance of failing.
 *
 * Sum over the failures allowed of C(n, x) B(a + x, b + n − x) / B(a, b)
 *
 * @param pieces - belief about the chance of failing
 * @param least - how many must start, 0 to `of`
 * @param of - how many there are
 * @returns chance [1]
 * @source DERIVED: beta-binomial
 */
export function chanceOfEnough(pieces: readonly BetaPiece[], least: number, of: number): number {
  const allowed = Array.from({ length: of - least + 1 }, (_, failed) => failed);
  const one = ({ a, b }: BetaPiece, x: number) =>
    Math.exp(logChoose(of, x) + logBeta(a + x, b + of - x) - logBeta(a, b));
  const sum = pieces.reduce(
    (total, piece) => total + piece.weight * allowed.reduce((part, x) => part + one(piece, x), 0),
    0,
  );
  return Math.min(1, sum);
}

/** ln of the number of ways to choose k of n. */
export function logChoose(n: number, k: number): number {
  return -Math.log(n + 1) - logBeta(n - k + 1, k + 1);
}
