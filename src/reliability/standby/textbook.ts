import { findRoot } from "#numerics";
import type { StandbyCase } from "./standby-case.ts";

/** One term of the textbook sum: a · Tⁿ. */
export interface PowerTerm {
  readonly factor: number;
  readonly power: number;
}

/**
 * The textbook sum for rare failures, as terms in the interval T.
 *
 * q + λT/2 + τ/T + (q + λT) r/T for one; q² + qλT + (λT)²/3 together or 5/24 (λT)² staggered, with βλT/2 or βλT/4 for
 * shared failures and τ/T, for a pair; with harm h, h + (q + h + λT) r/T in place of (q + λT) r/T; where tests overlook, λT (1 − θ)/θ
 * more; θλT/2 + (1 − θ)λL/2 with an overhaul every L. A Weibull has (T/η)^β/(β + 1) for λT/2.
 *
 * @param given - the case; its interval is not looked at
 * @returns terms whose sum at T is the first-order unavailability [1]
 * @source Apostolakis & Chu, Nuclear Technology 50 (1980) 5-15; NUREG-0492; Rausand & Høyland (all FROM MEMORY)
 */
export function textbookTerms(given: Omit<StandbyCase, "interval">): readonly PowerTerm[] {
  const terms = given.pair ? pairTerms(given) : singleTerms(given);
  return terms.filter(({ factor }) => factor !== 0);
}

function singleTerms(given: Omit<StandbyCase, "interval">) {
  const { life, testTime, repairTime, demandFailure, coverage, harm = 0, missed = 0 } = given;
  const { shape, scale } = life;
  const share = coverage?.share ?? 1;
  const by = scale ** -shape;
  const unseen = coverage ? ((1 - share) * (coverage.overhaul / scale) ** shape) / (shape + 1) : 0;
  return [
    { factor: demandFailure + harm + unseen, power: 0 },
    { factor: (share * by) / (shape + 1), power: shape },
    { factor: (by * missed) / (1 - missed), power: shape },
    { factor: testTime + (demandFailure + harm) * repairTime, power: -1 },
    { factor: share * by * repairTime, power: shape - 1 },
  ];
}

function pairTerms({ life, testTime, demandFailure: q, pair }: Omit<StandbyCase, "interval">) {
  const { shape, scale } = life;
  const isStaggered = pair?.tested === "staggered";
  const shared = pair?.shared ?? 0;
  const own = (1 - shared) * scale ** -shape;
  const tied = shared * scale ** -shape;
  const square = isStaggered && shape === 1 ? 5 / 24 : 1 / (2 * shape + 1);
  return [
    { factor: q * q, power: 0 },
    { factor: (2 * q * own) / (shape + 1), power: shape },
    { factor: own * own * square, power: 2 * shape },
    { factor: tied / (shape + 1) / (isStaggered ? 2 ** shape : 1), power: shape },
    { factor: isStaggered ? 0 : testTime, power: -1 },
    { factor: isStaggered ? 2 * testTime * q : 0, power: -1 },
    { factor: isStaggered ? (2 * testTime * (own + tied)) / 2 ** shape : 0, power: shape - 1 },
  ];
}

/** The sum at one interval. */
export function sumAt(terms: readonly PowerTerm[], interval: number): number {
  return terms.reduce((sum, { factor, power }) => sum + factor * interval ** power, 0);
}

/** Where the sum is least, between two intervals; undefined where it has no least there. */
export function leastOfTerms(terms: readonly PowerTerm[], low: number, high: number): number | undefined {
  const slope = (t: number) => terms.reduce((sum, { factor, power }) => sum + factor * power * Math.exp(power * t), 0);
  const found = findRoot(slope, Math.log(low), Math.log(high), { rootTolerance: 1e-14 });
  return found.kind === "not-bracketed" ? undefined : Math.exp(found.root);
}
