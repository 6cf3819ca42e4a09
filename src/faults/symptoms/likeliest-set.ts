import { firstOf, nth } from "#base";
import type { Cause, Sign } from "./signs.ts";

/** The causes that are there together most likely. */
export interface LikeliestSet {
  readonly causes: readonly number[];
  /** That just these are there, after the signs [1]. */
  readonly chance: number;
  /** False where the search was cut short. */
  readonly exact: boolean;
}

const MOST_NODES = 200_000;

/** A set of causes decided so far: what of every sign stays away, and the chance of the deciding. */
interface Node {
  readonly prior: number;
  /** By sign: chance that it stays away. */
  readonly away: readonly number[];
  readonly taken: readonly number[];
}

/**
 * The likeliest set of causes, by branch and bound: what is left out of account is taken at its best.
 *
 * @param causes - independent of each other
 * @param signs - seen, not seen, or not looked for
 * @param evidence - chance of the signs [1]
 * @returns the set and its chance
 * @source DERIVED
 */
export function likeliestSet(causes: readonly Cause[], signs: readonly Sign[], evidence: number): LikeliestSet {
  const tails = bestTails(causes, signs);
  let best: LikeliestSet & { readonly joint: number } = { causes: [], chance: 0, joint: -1, exact: true };
  let nodes = 0;
  const visit = (i: number, node: Node): void => {
    nodes += 1;
    if (nodes > MOST_NODES || boundOf(node, signs, nth(tails, i)) <= best.joint) return;
    if (i === causes.length) {
      const joint = node.prior * fitOf(signs, node.away, node.away);
      best = { causes: node.taken, joint, chance: Math.min(1, joint / evidence), exact: true };
      return;
    }
    for (const next of branches(nth(causes, i), i, node)) visit(i + 1, next);
  };
  visit(0, { prior: 1, away: signs.map(({ leak }) => 1 - leak), taken: [] });
  return { causes: best.causes, chance: best.chance, exact: nodes <= MOST_NODES };
}

function branches({ chance, shows }: Cause, i: number, node: Node): readonly Node[] {
  const without = { ...node, prior: node.prior * (1 - chance) };
  const away = node.away.map((one, j) => one * (1 - nth(shows, j)));
  const withIt = { prior: node.prior * chance, away, taken: [...node.taken, i] };
  return chance > 0.5 ? [withIt, without] : [without, withIt];
}

interface Tail {
  readonly prior: number;
  /** By sign: the least share that stays away, were all the rest there. */
  readonly away: readonly number[];
}

function bestTails(causes: readonly Cause[], signs: readonly Sign[]): readonly Tail[] {
  const tails: Tail[] = [{ prior: 1, away: signs.map(() => 1) }];
  for (const { chance, shows } of causes.toReversed()) {
    const after = firstOf(tails);
    const away = after.away.map((one, j) => one * (1 - nth(shows, j)));
    tails.unshift({ prior: after.prior * Math.max(chance, 1 - chance), away });
  }
  return tails;
}

function boundOf(node: Node, signs: readonly Sign[], tail: Tail): number {
  const least = node.away.map((one, j) => one * nth(tail.away, j));
  return node.prior * tail.prior * fitOf(signs, node.away, least);
}

/** Chance of the signs: those not seen stay away, those seen do not. */
function fitOf(signs: readonly Sign[], away: readonly number[], leastAway: readonly number[]): number {
  return signs.reduce((product, { seen }, j) => {
    if (seen === null) return product;
    return product * (seen ? 1 - nth(leastAway, j) : nth(away, j));
  }, 1);
}
