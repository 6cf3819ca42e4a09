import { nth } from "#base";
import { betaQuantile, logBeta, normalQuantile } from "#numerics";
import { beliefOnGrid, fromLogs, logSum, type Belief } from "./belief.ts";
import { betaBelief, chanceOfEnough, logChoose, meanOfBetas, type BetaPiece } from "./beta-mixture.ts";
import { enoughOfAlike } from "./common-cause.ts";
import { spreadOfBetas, VALUES, type Spread } from "./spread.ts";
import { fitFleetOfChances, lawOfChances, type Demands, type FleetFit } from "./fleet.ts";

/** What is believed of a chance of failing before any demand is looked at. */
export type ChancePrior =
  | { readonly kind: "beta"; readonly a: number; readonly b: number }
  | { readonly kind: "lognormal"; readonly median: number; readonly errorFactor: number }
  | { readonly kind: "fleet"; readonly fleet: readonly Demands[]; readonly pooling: Pooling };

/**
 * How the spread of a fleet is taken: fitted as if known, integrated over priors that lean to fleets all alike, or
 * integrated without that leaning.
 */
export type Pooling = "fitted" | "whole" | "wary";

/** Demands made and how many failed; a range where nobody knows exactly. */
export interface StartRecord {
  readonly least: number;
  readonly most: number;
  readonly trials: number;
}

export interface StartBelief {
  /** Of failing on demand [1]. */
  readonly failing: Belief;
  readonly fleet?: FleetFit;
  /** Demands that what was believed before weighs as much as; below 1 where it hardly counts. Not of a lognormal prior. */
  readonly weight?: number | undefined;
  /** Chance that at least so many of a number start; `shared` is the share of failures that strike all of them. */
  readonly enough: (least: number, of: number, shared?: number) => number;
}

/**
 * What a record of demands says of the chance of failing on demand.
 *
 * Beta prior: beta(a + x, b + n − x), mixed over the failures there may have been by how likely each was. Lognormal
 * prior: over 4001 places. Fleet: beta-binomial, its a and b fitted, integrated over gamma(10⁻⁴, 10⁻⁴) each, or warily; in which
 * none failed, or all did, there is no spread to fit: warily, whatever the pooling.
 *
 * @param record - failures from least to most, in so many trials
 * @param prior - what is believed before
 * @returns belief about failing, and what follows from it
 * @range somebody of a fleet was asked
 * @source NASA/SP-2009-569, Bayesian Inference for NASA Probabilistic Risk and Reliability Analysis, 2009
 * @example startingOf({ least: 2, most: 2, trials: 285 }, { kind: "beta", a: 1.24, b: 189075 }).failing.mean // 1.711e-5
 */
export function startingOf(record: StartRecord, prior: ChancePrior): StartBelief {
  if (prior.kind === "lognormal") return onGrid(record, prior.median, prior.errorFactor);
  if (prior.kind === "beta") return ofRecord([{ ...prior, weight: 1 }], record);
  if (!showsSpread(prior.fleet)) return ofRecord(netPieces(prior.fleet, "wary"), record);
  const fleet = fitFleetOfChances(prior.fleet);
  const pieces =
    prior.pooling === "fitted" ? [{ a: fleet.a, b: fleet.b, weight: 1 }] : netPieces(prior.fleet, prior.pooling);
  const belief = ofRecord(pieces, record);
  return { ...belief, weight: prior.pooling === "fitted" ? fleet.a + fleet.b : belief.weight, fleet };
}

/** True where members of a fleet can show how they differ: something failed and something did not. */
function showsSpread(fleet: readonly Demands[]): boolean {
  return fleet.some(({ failures }) => failures > 0) && fleet.some(({ failures, trials }) => failures < trials);
}

/** From so many members on that were ever asked, each is believed by the fleet's record too. */
const LEAST_FLEET = 2;

/**
 * What is believed of each member of a fleet: by the fleet's record and its own where at least two were ever asked, by its
 * own alone else. Whether any failed makes no difference to that: one failure more never speaks for a member.
 *
 * @param fleet - every member with its demands
 * @returns belief about failing by a member's own record [1], and how many members it rests on; 0 where on its own alone
 * @source as `fleetOfStarts` and `loneStarts`
 */
export function startsByFleet(fleet: readonly Demands[]): {
  readonly of: (own: Demands) => FleetMember;
  readonly members: number;
} {
  const asked = fleet.filter(({ trials }) => trials > 0);
  if (asked.length < LEAST_FLEET) return { of: loneStarts, members: 0 };
  return { of: fleetOfStarts(asked), members: asked.length };
}

/**
 * What a whole fleet's demands say of each member: the fleet's spread is worked out once, warily, from all of them.
 *
 * @param fleet - every member with its demands; at least 2
 * @returns belief about failing by a member's own record, which is among those of the fleet [1]
 * @source as `startingOf` with pooling "wary": of all members, the spread's weights hold each one's own record already (DERIVED)
 */
export function fleetOfStarts(fleet: readonly Demands[]): (own: Demands) => FleetMember {
  const pieces = netPieces(fleet, "wary");
  return ({ failures, trials }) => {
    const after = pieces.map(({ a, b, weight }) => ({ a: a + failures, b: b + trials - failures, weight }));
    const sum = after.reduce((total, { weight }) => total + weight, 0);
    return memberOf(after.map((piece) => ({ ...piece, weight: piece.weight / sum })));
  };
}

/**
 * What one's own demands say where no fleet tells more: Jeffreys' prior, beta(x + 1/2, n − x + 1/2).
 *
 * @param own - failures in so many demands
 * @returns belief about failing [1]
 * @source Jeffreys' prior; NASA/SP-2009-569
 */
export function loneStarts({ failures, trials }: Demands): FleetMember {
  return memberOf([{ a: 0.5 + failures, b: 0.5 + trials - failures, weight: 1 }]);
}

/** What is believed of the chance that one member fails when asked. */
export interface FleetMember {
  readonly failing: Belief;
  readonly spread: Spread;
}

function memberOf(pieces: readonly BetaPiece[]): FleetMember {
  const spread = spreadOfBetas(pieces);
  const mean = meanOfBetas(pieces);
  const at = (chance: number) => {
    const place = chance * VALUES - 0.5;
    const low = Math.floor(place);
    return nth(spread, low) + (place - low) * (nth(spread, low + 1) - nth(spread, low));
  };
  return { failing: { mean, p05: at(0.05), p50: at(0.5), p95: at(0.95) }, spread };
}

function ofRecord(prior: readonly BetaPiece[], record: StartRecord): StartBelief {
  const pieces = updated(prior, record);
  const enough = (least: number, of: number, shared = 0) =>
    shared === 0 ? chanceOfEnough(pieces, least, of) : enoughOfAlike(pieces, least, of, shared);
  return { failing: betaBelief(pieces), weight: sizeOf(pieces) - record.trials, enough };
}

/** Demands that a beta of the same mean and variance weighs as much as (DERIVED): a + b of a single piece. */
function sizeOf(pieces: readonly BetaPiece[]): number {
  const mean = meanOfBetas(pieces);
  const square = pieces.reduce((sum, { a, b, weight }) => sum + (weight * a * (a + 1)) / ((a + b) * (a + b + 1)), 0);
  return (mean - square) / (square - mean * mean);
}

/** Every piece after the record, weighed by how well it foretold it; pieces that no longer count are dropped. */
function updated(pieces: readonly BetaPiece[], { least, most, trials }: StartRecord): readonly BetaPiece[] {
  const counts = Array.from({ length: most - least + 1 }, (_, i) => least + i);
  const after = pieces.flatMap(({ a, b, weight }) =>
    counts.map((x) => {
      const log = Math.log(weight) + logChoose(trials, x) + logBeta(a + x, b + trials - x) - logBeta(a, b);
      return { a: a + x, b: b + trials - x, log };
    }),
  );
  const weights = fromLogs(after.map(({ log }) => log));
  const kept = after.flatMap(({ a, b }, i) => (nth(weights, i) > 1e-8 ? [{ a, b, weight: nth(weights, i) }] : []));
  const sum = kept.reduce((total, { weight }) => total + weight, 0);
  return kept.map((piece) => ({ ...piece, weight: piece.weight / sum }));
}

const HYPER = 1e-4;
/** Pieces that carry less of the belief than this are dropped. */
const SLIGHT = 1e-5;

/** A rectangle of ln odds of the mean and ln size. */
interface Net {
  readonly odds: readonly [number, number];
  readonly size: readonly [number, number];
}

/** A fleet's beta distributions over a net of mean and size, weighed by the fleet's counts and the priors of a and b. */
function netPieces(fleet: readonly Demands[], pooling: Pooling): readonly BetaPiece[] {
  const middle = middleOf(fleet);
  const wide: Net = { odds: [middle - 8, middle + 8], size: [Math.log(5e-3), Math.log(3e6)] };
  const narrow = boxOf(weighed(fleet, pooling, wide, 24), wide, 24);
  return weighed(fleet, pooling, narrow, 28).filter(({ weight }) => weight > SLIGHT);
}

/** ln odds of failing, near which the belief lies: of the likeliest fleet, which is none where all failed or none did. */
function middleOf(fleet: readonly Demands[]): number {
  const failures = fleet.reduce((sum, one) => sum + one.failures, 0);
  const trials = fleet.reduce((sum, one) => sum + one.trials, 0);
  if (failures === 0 || failures === trials) return Math.log((failures + 0.5) / (trials - failures + 0.5));
  const { a, b } = fitFleetOfChances(fleet);
  return Math.log(a / b);
}

interface Placed extends BetaPiece {
  readonly at: readonly [number, number];
}

function weighed(fleet: readonly Demands[], pooling: Pooling, { odds, size }: Net, count: number): readonly Placed[] {
  const law = lawOfChances(fleet);
  const net = steps(odds, count).flatMap((t) =>
    steps(size, count).map((s) => {
      const mean = 1 / (1 + Math.exp(-t));
      return { a: mean * Math.exp(s), b: (1 - mean) * Math.exp(s), at: [t, s] as const };
    }),
  );
  const prior = pooling === "wary" ? waryPrior(fleet) : gammaPrior;
  const logs = net.map(({ a, b }) => law.value(a, b) + prior(a, b));
  const weights = fromLogs(logs);
  return net.map((one, i) => ({ ...one, weight: nth(weights, i) }));
}

/** Gamma(10⁻⁴, 10⁻⁴) of a and of b, over ln odds and ln size. */
function gammaPrior(a: number, b: number): number {
  return HYPER * (Math.log(a) + Math.log(b) - a - b);
}

/**
 * Any mean alike, and any share by which a usual record is drawn to the fleet alike: n/(n + size)² for the size, with n the
 * middle number of trials. Christiansen & Morris, JASA 92 (1997) 618-632; Daniels, Canad. J. Statist. 27 (1999) (FROM MEMORY)
 */
function waryPrior(fleet: readonly Demands[]): (a: number, b: number) => number {
  const trials = fleet.map((one) => one.trials).toSorted((one, other) => one - other);
  const usual = Math.max(1, nth(trials, Math.floor(trials.length / 2)));
  return (a, b) => Math.log(a) + Math.log(b) - Math.log(a + b) - 2 * Math.log(usual + a + b);
}

/** The part of a net that carries weight, and one step more. */
function boxOf(pieces: readonly Placed[], { odds, size }: Net, count: number): Net {
  const kept = pieces.filter(({ weight }) => weight > SLIGHT * 0.01);
  const ends = (axis: 0 | 1, [low, high]: readonly [number, number]) => {
    const step = (high - low) / count;
    const places = kept.map(({ at }) => at[axis]);
    return [Math.max(low, Math.min(...places) - step), Math.min(high, Math.max(...places) + step)] as const;
  };
  return { odds: ends(0, odds), size: ends(1, size) };
}

function steps([low, high]: readonly [number, number], count: number): readonly number[] {
  return Array.from({ length: count }, (_, i) => low + ((i + 0.5) * (high - low)) / count);
}

/** Lognormal by its median and the 95th percentile over the median; chances of 1 and more left out. */
function onGrid({ least, most, trials }: StartRecord, median: number, errorFactor: number): StartBelief {
  const spread = Math.log(errorFactor) / normalQuantile(0.95);
  const places = Array.from({ length: 4001 }, (_, i) => median * Math.exp((i / 2000 - 1) * 8 * spread)).filter(
    (place) => place < 1,
  );
  const counts = Array.from({ length: most - least + 1 }, (_, i) => least + i);
  const logs = places.map((p) => {
    const z = Math.log(p / median) / spread;
    return logSum(counts.map((x) => logBinomial(p, x, trials))) - (z * z) / 2;
  });
  const weights = fromLogs(logs);
  const enough = (need: number, of: number, shared = 0) =>
    places.reduce((sum, p, i) => sum + nth(weights, i) * enoughAt(p, need, of, shared), 0);
  return { failing: beliefOnGrid(places, logs), enough };
}

function logBinomial(p: number, x: number, trials: number): number {
  return logChoose(trials, x) + x * Math.log(p) + (trials - x) * Math.log1p(-p);
}

function enoughAt(p: number, least: number, of: number, shared: number): number {
  if (least === 0) return 1;
  const alone = ((1 - shared) * p) / (1 - shared * p);
  const apart = Array.from({ length: of - least + 1 }, (_, failed) => Math.exp(logBinomial(alone, failed, of)));
  return (1 - shared * p) * apart.reduce((sum, one) => sum + one, 0);
}

/** A range of belief this wide or wider says too little: more than one in five between its ends. */
export const TOO_WIDE = 0.2;

/**
 * Openings it would still take until the belief about failing is narrow enough to be told, at the share seen so far.
 *
 * @param failing - the belief now
 * @returns 0 where it is narrow enough already, else a whole number, to 10 000 at most
 * @source DERIVED: the beta of the same mean and of the same width, grown by as many demands
 * @example openingsToTell({ mean: 0.5, p05: 0.05, p50: 0.5, p95: 0.95 }) // 65
 */
export function openingsToTell(failing: Belief): number {
  if (failing.p95 - failing.p05 <= TOO_WIDE) return 0;
  const mean = Math.min(0.99, Math.max(0.01, failing.mean));
  const widthOf = (size: number) =>
    betaQuantile(0.95, mean * size, (1 - mean) * size) - betaQuantile(0.05, mean * size, (1 - mean) * size);
  const sizeOf = (width: number) => bisect((size) => widthOf(size) - width);
  return Math.min(10_000, Math.max(1, Math.ceil(sizeOf(TOO_WIDE) - sizeOf(failing.p95 - failing.p05))));
}

/** Where a falling function of size crosses nothing. */
function bisect(over: (size: number) => number): number {
  let [low, high] = [0.05, 10_000];
  for (let i = 0; i < 60; i += 1) {
    const middle = Math.sqrt(low * high);
    if (over(middle) > 0) low = middle;
    else high = middle;
  }
  return high;
}
