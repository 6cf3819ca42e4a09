import { nth } from "#base";
import { betaQuantile, logBeta, normalQuantile } from "#numerics";
import { beliefOnGrid, fromLogs, logSum, type Belief } from "./belief.ts";
import { betaBelief, chanceOfEnough, logChoose, meanOfBetas, type BetaPiece } from "./beta-mixture.ts";
import { enoughOfAlike } from "./common-cause.ts";
import { spreadOfBetas, VALUES, type Spread } from "./spread.ts";
import { fitFleetOfChances, type Demands, type FleetFit } from "./fleet.ts";
import { netPieces, type Pooling } from "./fleet-net.ts";
import { leastOfChances, leastOfMembers, withOneMore } from "./one-more.ts";

/** What is believed of a chance of failing before any demand is looked at. */
export type ChancePrior =
  | { readonly kind: "beta"; readonly a: number; readonly b: number }
  | { readonly kind: "lognormal"; readonly median: number; readonly errorFactor: number }
  | { readonly kind: "fleet"; readonly fleet: readonly Demands[]; readonly pooling: Pooling };

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
  /**
   * Of others as the prior: the least that one failure more of any of them would make of the mean [1]. It lies below the mean
   * where how much they differ, and so what they weigh, changes more by it than their mean does.
   */
  readonly oneMore?: number;
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
  const { pieces, ...fleet } = piecesOf(prior);
  const oneMore = leastWithOneMore(record, prior, pieces);
  return { ...ofRecord(pieces, record), ...fleet, ...(Number.isFinite(oneMore) && { oneMore }) };
}

type FleetPrior = Extract<ChancePrior, { readonly kind: "fleet" }>;

/** What others say before the record, with what was fitted and its weight. */
function piecesOf({
  fleet,
  pooling,
}: FleetPrior): { readonly pieces: readonly BetaPiece[] } & Pick<StartBelief, "fleet" | "weight"> {
  if (!showsSpread(fleet)) return { pieces: netPieces(fleet, "wary") };
  const fit = fitFleetOfChances(fleet);
  if (pooling !== "fitted") return { pieces: netPieces(fleet, pooling), fleet: fit };
  return { pieces: [{ a: fit.a, b: fit.b, weight: 1 }], weight: fit.a + fit.b, fleet: fit };
}

/** Wary pieces only change their weights; other poolings turn wary where none or all failed, and are made anew. */
function leastWithOneMore(record: StartRecord, prior: FleetPrior, pieces: readonly BetaPiece[]): number {
  if (prior.pooling === "wary") return leastOfChances(pieces, record, prior.fleet);
  const fleets = withOneMore(prior.fleet, shareOf, ({ failures, trials }) => failures < trials);
  const means = fleets.map((fleet) => meanOfBetas(updated(piecesOf({ ...prior, fleet }).pieces, record)));
  return Math.min(Infinity, ...means);
}

function shareOf({ failures, trials }: Demands): number {
  return failures / Math.max(1, trials);
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
  /**
   * The least that one failure more of another member would make of the mean of one [1]; undefined where the others say
   * nothing, or none of them can fail once more.
   */
  readonly oneMore: (own: Demands) => number | undefined;
  readonly members: number;
} {
  const asked = askedOf(fleet);
  if (asked.length < LEAST_FLEET) return { of: loneStarts, oneMore: () => undefined, members: 0 };
  const pieces = netPieces(asked, "wary");
  return { of: membersOf(pieces), oneMore: (own) => leastAmong(pieces, own, asked), members: asked.length };
}

/** Members with the same record count once; one's own is left out once. */
function leastAmong(pieces: readonly BetaPiece[], own: Demands, fleet: readonly Demands[]): number | undefined {
  const at = fleet.findIndex((one) => one.failures === own.failures && one.trials === own.trials);
  const others = fleet.filter((_, i) => i !== at);
  const different = new Map(others.map((one) => [`${one.failures} ${one.trials}`, one]));
  const least = leastOfMembers(pieces, own, [...different.values()]);
  return Number.isFinite(least) ? least : undefined;
}

function askedOf(fleet: readonly Demands[]): readonly Demands[] {
  return fleet.filter(({ trials }) => trials > 0);
}

/**
 * What a whole fleet's demands say of each member: the fleet's spread is worked out once, warily, from all of them.
 *
 * @param fleet - every member with its demands; at least 2
 * @returns belief about failing by a member's own record, which is among those of the fleet [1]
 * @source as `startingOf` with pooling "wary": of all members, the spread's weights hold each one's own record already (DERIVED)
 */
export function fleetOfStarts(fleet: readonly Demands[]): (own: Demands) => FleetMember {
  return membersOf(netPieces(fleet, "wary"));
}

function membersOf(pieces: readonly BetaPiece[]): (own: Demands) => FleetMember {
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
