import { nth } from "#base";
import { logBeta, sumLaw } from "#numerics";
import { logChoose, type BetaPiece } from "./beta-mixture.ts";

/** One of several that may be asked together. */
export interface Member {
  /** Chance that it fails when asked, whatever the cause [1]. */
  readonly failing: number;
  /** What it has in common with others, such as one fuel delivery. */
  readonly shares: readonly string[];
}

/**
 * Chance that at least so many of several start, where some have something in common that can strike them all.
 *
 * Beta factor: whatever is shared strikes all that share it with chance β times their mean chance of failing; beside that
 * each fails on its own, so that each one's whole chance of failing stays as given.
 * P = Σ over what strikes of its chance · P(enough of the others start), those being independent.
 *
 * @param members - each with its chance of failing, 0 to 1, and what it shares; a thing that one alone has counts for nothing
 * @param least - how many must start, 0 to as many as there are
 * @param shared - β: share of the failures of a member that strike all who share one thing, 0 to 1 [1]
 * @returns chance [1]
 * @range exact; up to about 12 shared things
 * @source Fleming, beta-factor model, 1974, as in NUREG/CR-4780 and IEC 61508-6 annex D (FROM MEMORY); several things: DERIVED
 * @example enoughTogether([{ failing: 0.1, shares: ["fuel"] }, { failing: 0.1, shares: ["fuel"] }], 1, 0.1) // 0.98182
 */
export function enoughTogether(members: readonly Member[], least: number, shared: number): number {
  const strikes = strikesOf(members, shared);
  const own = members.map(({ failing }, i) => {
    const spared = strikes.reduce((rest, { chance, at }) => (at.has(i) ? rest * (1 - chance) : rest), 1);
    return spared === 0 ? 0 : Math.max(0, 1 - (1 - failing) / spared);
  });
  return overStrikes(strikes, new Set(), (struck) => {
    const standing = own.filter((_, i) => !struck.has(i));
    return enoughApart(standing, least);
  });
}

interface Strike {
  readonly chance: number;
  readonly at: ReadonlySet<number>;
}

function strikesOf(members: readonly Member[], shared: number): readonly Strike[] {
  const things = [...new Set(members.flatMap(({ shares }) => shares))];
  return things.flatMap((thing) => {
    const at = members.flatMap(({ shares }, i) => (shares.includes(thing) ? [i] : []));
    if (at.length < 2) return [];
    const sum = at.reduce((total, i) => total + nth(members, i).failing, 0);
    const least = Math.min(...at.map((i) => nth(members, i).failing));
    return [{ chance: Math.min(least, (shared * sum) / at.length), at: new Set(at) }];
  });
}

function overStrikes(
  [first, ...rest]: readonly Strike[],
  struck: ReadonlySet<number>,
  value: (struck: ReadonlySet<number>) => number,
): number {
  if (!first) return value(struck);
  const spared = (1 - first.chance) * overStrikes(rest, struck, value);
  return spared + first.chance * overStrikes(rest, new Set([...struck, ...first.at]), value);
}

/** Chance that at least so many of some start that fail each on its own. */
function enoughApart(failing: readonly number[], least: number): number {
  if (least > failing.length) return 0;
  const enough = sumLaw(failing, failing.length - least);
  return Math.min(
    1,
    enough.reduceRight((sum, one) => sum + one, 0),
  );
}

/**
 * Chance that at least so many of a number start, all having the same unknown chance of failing and a common cause.
 *
 * (1 − βq) · P(enough), each failing on its own with (1 − β)q/(1 − βq), over the belief about q:
 * Σ C(n, x) (1 − β)ˣ B(a + x, b + n − x)/B(a, b) · ₂F₁(n − 1, a + x; a + b + n; β); where none need start it is 1.
 *
 * @param pieces - belief about the chance of failing
 * @param least - how many must start, 0 to `of`
 * @param of - how many there are
 * @param shared - β, 0 to 0.99 [1]
 * @returns chance [1]
 * @range about 1e-12 relative
 * @source DERIVED from the beta factor (Fleming 1974, FROM MEMORY) by Euler's integral
 */
export function enoughOfAlike(pieces: readonly BetaPiece[], least: number, of: number, shared: number): number {
  if (least === 0) return 1;
  const allowed = Array.from({ length: of - least + 1 }, (_, failed) => failed);
  const one = ({ a, b }: BetaPiece, x: number) => {
    const log = logChoose(of, x) + x * Math.log1p(-shared) + logBeta(a + x, b + of - x) - logBeta(a, b);
    return Math.exp(log + Math.log(hypergeometric(of - 1, a + x, a + b + of, shared)));
  };
  const sum = pieces.reduce(
    (total, piece) => total + piece.weight * allowed.reduce((part, x) => part + one(piece, x), 0),
    0,
  );
  return Math.min(1, sum);
}

/** ₂F₁(p, q; r; z) by its series; all terms above 0. */
function hypergeometric(p: number, q: number, r: number, z: number): number {
  let term = 1;
  let sum = 1;
  for (let k = 0; k < 1e6 && term > 1e-16 * sum; k += 1) {
    term *= ((p + k) * (q + k) * z) / ((r + k) * (k + 1));
    sum += term;
  }
  return sum;
}
