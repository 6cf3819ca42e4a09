import { gammaChance, gammaQuantile, normalQuantile, quantileInLogs } from "#numerics";
import { beliefOnGrid, fromLogs, type Belief } from "./belief.ts";
import { fitFleetOfRates, type Exposure, type FleetFit } from "./fleet.ts";
import type { Pooling } from "./fleet-net.ts";
import { memberPieces } from "./hidden-rate.ts";
import { leastOfRates, withOneMore } from "./one-more.ts";
import { meanOfGammas, type GammaPiece } from "./spread.ts";

/** What is believed of a rate before any time has been watched. */
export type RatePrior =
  | { readonly kind: "gamma"; readonly a: number; readonly b: number }
  | { readonly kind: "lognormal"; readonly median: number; readonly errorFactor: number }
  | { readonly kind: "fleet"; readonly fleet: readonly Exposure[]; readonly pooling: RatePooling };

/** How the spread of a fleet is taken: fitted as if known, or integrated warily. */
export type RatePooling = Exclude<Pooling, "whole">;

export interface RateBelief {
  /** [1/time] */
  readonly rate: Belief;
  readonly fleet?: FleetFit;
  /** Failures in so much time that a prior weighs as much as. */
  readonly weight?: Exposure;
  /** Of others as the prior: the least that one failure more of any of them would make of the mean [1/time], as `StartBelief` has it. */
  readonly oneMore?: number;
  /** Chance of no failure over a time to come. */
  readonly noneOver: (time: number) => number;
}

/**
 * What failures in so much time say of their rate.
 *
 * Gamma prior: gamma(a + x, rate b + t). Lognormal prior: over 4001 places. Fleet: gamma-Poisson, its mean and spread
 * integrated warily, as `hiddenRates` does, or a and b fitted; one in which none failed shows no spread to fit: warily,
 * whatever the pooling.
 *
 * @param record - failures and the time watched
 * @param prior - what is believed before
 * @returns belief about the rate, and what follows from it
 * @range a + failures > 0 and b + time > 0; somebody of a fleet was watched; no failures in no time where pooled warily
 * @source NASA/SP-2009-569, Bayesian Inference for NASA Probabilistic Risk and Reliability Analysis, 2009
 * @example rateOf({ failures: 2, time: 9376.7 }, { kind: "gamma", a: 0, b: 0 }).rate.mean // 2.133e-4
 */
export function rateOf({ failures, time }: Exposure, prior: RatePrior): RateBelief {
  if (prior.kind === "gamma")
    return { ...ofGamma(prior.a + failures, prior.b + time), weight: { failures: prior.a, time: prior.b } };
  if (prior.kind === "lognormal") return onGrid({ failures, time }, prior.median, prior.errorFactor);
  const own = { failures, time };
  const oneMore = leastWithOneMore(own, prior);
  return { ...amongOthers(own, prior), ...(Number.isFinite(oneMore) && { oneMore }) };
}

type FleetPrior = Extract<RatePrior, { readonly kind: "fleet" }>;

function amongOthers(own: Exposure, { fleet, pooling }: FleetPrior): RateBelief {
  if (isClean(fleet)) return ofPieces(warily(own, fleet));
  const fit = fitFleetOfRates(fleet);
  if (pooling === "fitted") return { ...ofGamma(fit.a + own.failures, fit.b + own.time), fleet: fit };
  return { ...ofPieces(warily(own, fleet)), fleet: fit };
}

function isClean(fleet: readonly Exposure[]): boolean {
  return fleet.every(({ failures }) => failures === 0);
}

/** A record among others, its own counted with theirs. */
function warily(own: Exposure, others: readonly Exposure[]): readonly GammaPiece[] {
  return memberPieces([own, ...others].filter(({ time }) => time > 0))(own);
}

/** Pieces only change their weights; a fit, and a fleet taken as one since none failed, are made anew. */
function leastWithOneMore(own: Exposure, prior: FleetPrior): number {
  const watched = prior.fleet.filter(({ time }) => time > 0);
  const isWary = prior.pooling === "wary" && !isClean([own, ...watched]);
  if (isWary) return leastOfRates(warily(own, watched), own, watched);
  const fleets = withOneMore(
    watched,
    ({ failures, time }) => failures / time,
    () => true,
  );
  return Math.min(Infinity, ...fleets.map((fleet) => meanAmong(own, { ...prior, fleet })));
}

function meanAmong(own: Exposure, { fleet, pooling }: FleetPrior): number {
  if (pooling === "wary") return meanOfGammas(warily(own, fleet));
  const { a, b } = fitFleetOfRates(fleet);
  return (a + own.failures) / (b + own.time);
}

function ofGamma(a: number, b: number): RateBelief {
  const [p05, p50, p95] = [0.05, 0.5, 0.95].map((chance) => gammaQuantile(chance, a) / b);
  const rate = { mean: a / b, p05: p05!, p50: p50!, p95: p95! };
  return { rate, noneOver: (over) => Math.exp(-a * Math.log1p(over / b)) };
}

function ofPieces(pieces: readonly GammaPiece[]): RateBelief {
  const mean = meanOfGammas(pieces);
  const [p05, p50, p95] = [0.05, 0.5, 0.95].map((chance) => quantileOf(pieces, chance, mean));
  const noneOver = (over: number) =>
    pieces.reduce((sum, { a, b, weight }) => sum + weight * Math.exp(-a * Math.log1p(over / b)), 0);
  return { rate: { mean, p05: p05!, p50: p50!, p95: p95! }, noneOver };
}

function quantileOf(pieces: readonly GammaPiece[], chance: number, mean: number): number {
  const below = (rate: number) => pieces.reduce((sum, { a, b, weight }) => sum + weight * gammaChance(a, rate * b), 0);
  return quantileInLogs(below, chance, mean, 1e-9);
}

function onGrid({ failures, time }: Exposure, median: number, errorFactor: number): RateBelief {
  const spread = Math.log(errorFactor) / normalQuantile(0.95);
  const places = Array.from({ length: 4001 }, (_, i) => median * Math.exp((i / 2000 - 1) * 8 * spread));
  const logs = places.map((rate) => {
    const z = Math.log(rate / median) / spread;
    return failures * Math.log(rate) - rate * time - (z * z) / 2;
  });
  const weights = fromLogs(logs);
  const noneOver = (over: number) => places.reduce((sum, rate, i) => sum + weights[i]! * Math.exp(-rate * over), 0);
  return { rate: beliefOnGrid(places, logs), weight: weightOf(median, spread), noneOver };
}

/** A lognormal as the gamma of the same mean and variance (DERIVED). */
function weightOf(median: number, spread: number): Exposure {
  const failures = 1 / Math.expm1(spread * spread);
  return { failures, time: failures / (median * Math.exp((spread * spread) / 2)) };
}
