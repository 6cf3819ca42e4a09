import { logBeta } from "#numerics";
import { logChoose, type BetaPiece } from "./beta-mixture.ts";
import type { Demands, Exposure } from "./fleet.ts";
import type { GammaPiece } from "./spread.ts";

/** A mean that moves by less than this share of itself is not told to have moved. */
const SLIGHT = 0.01;

/**
 * What one failure more among others would make of a mean, where that is worth telling.
 *
 * @param mean - of failing, as told
 * @param least - the least that one failure more of any other would make of it; undefined where there are no others
 * @returns undefined where it moves by less than one in a hundred, or up
 */
export function worthTelling(mean: number, least: number | undefined): number | undefined {
  return least === undefined || least >= (1 - SLIGHT) * mean ? undefined : least;
}

/** Others looked at with one failure more, at most: where there are more, those between that differ most evenly. */
const MOST = 24;

/**
 * Others to look at with one failure more, each as the whole fleet with it.
 *
 * @param fleet - others
 * @param shareOf - what of it failed, by which they are put in order
 * @param mayFail - whether one failure more fits its record
 * @returns fleets, one for each different record, 24 at most, those that failed least and most among them
 */
export function withOneMore<One extends Demands | Exposure>(
  fleet: readonly One[],
  shareOf: (one: One) => number,
  mayFail: (one: One) => boolean,
): readonly (readonly One[])[] {
  const different = [...new Map(fleet.filter(mayFail).map((one) => [JSON.stringify(one), one])).values()];
  const ordered = different.toSorted((one, other) => shareOf(one) - shareOf(other));
  const step = Math.max(1, (ordered.length - 1) / (MOST - 1));
  const count = Math.min(MOST, ordered.length);
  return Array.from({ length: count }, (_, i) => {
    const at = fleet.indexOf(ordered[Math.round(i * step)]!);
    return fleet.map((one, j) => (j === at ? { ...one, failures: one.failures + 1 } : one));
  });
}

/**
 * The least mean chance of failing that one failure more of any other would make, over a fleet's pieces.
 *
 * A failure more of a member weighs each piece by how much likelier it makes it, (a + x) / (b + n - x - 1).
 *
 * @param prior - pieces from the others, before one's own record
 * @param own - one's own, its failures from least to most
 * @param others - each that is looked at
 * @returns the least of the means [1]; Infinity where none of them can fail once more
 * @source DERIVED: beta-binomial
 */
export function leastOfChances(
  prior: readonly BetaPiece[],
  own: { readonly least: number; readonly most: number; readonly trials: number },
  others: readonly Demands[],
): number {
  const foretold = prior.map((piece) => ({ ...piece, ...foretelling(piece, own) }));
  return leastOfDemands(others, foretold);
}

/**
 * The same of one member of a fleet, over pieces whose weights hold its own record already.
 *
 * @param fleet - pieces from all members, one's own among them
 * @param own - one's own
 * @param others - each that is looked at
 * @returns the least of the means [1]; Infinity where none of them can fail once more
 * @source DERIVED: as `leastOfChances`
 */
export function leastOfMembers(fleet: readonly BetaPiece[], own: Demands, others: readonly Demands[]): number {
  const pieces = fleet.map((piece) => ({
    ...piece,
    how: 1,
    byMean: (piece.a + own.failures) / (piece.a + piece.b + own.trials),
  }));
  return leastOfDemands(others, pieces);
}

function leastOfDemands(others: readonly Demands[], pieces: readonly (Piece & Foretold)[]): number {
  const mayFail = others.filter(({ failures, trials }) => failures < trials);
  return leastOf(mayFail, pieces, likelierOnceMore);
}

function likelierOnceMore({ a, b }: Piece, { failures: x, trials }: Demands): number {
  return (a + x) / (b + trials - x - 1);
}

/** How well a piece foretells a record, up to a constant, and that times the mean it comes to. */
function foretelling(
  { a, b }: BetaPiece,
  { least, most, trials }: { readonly least: number; readonly most: number; readonly trials: number },
): Foretold {
  let [how, byMean] = [0, 0];
  for (let x = least; x <= most; x += 1) {
    const one = Math.exp(logChoose(trials, x) + logBeta(a + x, b + trials - x) - logBeta(a, b));
    how += one;
    byMean += (one * (a + x)) / (a + b + trials);
  }
  return { how, byMean };
}

interface Foretold {
  readonly how: number;
  readonly byMean: number;
}

interface Piece {
  readonly a: number;
  readonly b: number;
  readonly weight: number;
}

function leastOf<One>(
  others: readonly One[],
  pieces: readonly (Piece & Foretold)[],
  likelier: (piece: Piece, other: One) => number,
): number {
  const means = others.map((other) => {
    const weights = pieces.map((piece) => piece.weight * likelier(piece, other));
    const whole = pieces.reduce((sum, { how }, i) => sum + weights[i]! * how, 0);
    return pieces.reduce((sum, { byMean }, i) => sum + weights[i]! * byMean, 0) / whole;
  });
  return Math.min(Infinity, ...means);
}

/**
 * The least mean rate that one failure more of any other would make, over a fleet's pieces.
 *
 * @param after - pieces with one's own record in them
 * @param own - one's own
 * @param others - each that is looked at
 * @returns the least of the means [1/time]; Infinity where there is no other
 * @source DERIVED: gamma-Poisson, a failure more weighs a piece by (a + x) / (b + t)
 */
export function leastOfRates(after: readonly GammaPiece[], own: Exposure, others: readonly Exposure[]): number {
  const pieces = after.map(({ a, b, weight }) => ({
    a: a - own.failures,
    b: b - own.time,
    weight,
    how: 1,
    byMean: a / b,
  }));
  return leastOf(others, pieces, ({ a, b }, { failures: x, time }) => (a + x) / (b + time));
}
