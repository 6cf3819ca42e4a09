// How sure a measured figure is. Answers of one casualty hang together, so casualties are drawn again, not answers.
import { chanceOf } from "./chance.ts";

/** By casualty: so many of so many. */
export interface Tally {
  readonly hits: number;
  readonly of: number;
}

export interface Interval {
  readonly low: number;
  readonly high: number;
}

const DRAWN = 600;
const SEED = 0xb007;

/**
 * A share, with the 95 % interval of the bootstrap by casualty; where all or none hit, Wilson's by number of casualties.
 *
 * @param tallies - one for each casualty; those with none of them are left out
 * @source Efron, Annals of Statistics 7 (1979) 1; Wilson, JASA 22 (1927) 209
 */
export function shareOf(
  tallies: readonly Tally[],
): Tally & Interval & { readonly share: number; readonly casualties: number } {
  const counted = tallies.filter(({ of }) => of > 0);
  const [hits, of] = [sum(counted.map((one) => one.hits)), sum(counted.map((one) => one.of))];
  const share = of === 0 ? Number.NaN : hits / of;
  const isPlain = hits === 0 || hits === of;
  const interval = isPlain ? wilson(share * counted.length, counted.length) : drawAgain(counted, ratioOf);
  return { hits, of, share, casualties: counted.length, ...interval };
}

function ratioOf(drawn: readonly Tally[]): number {
  return sum(drawn.map((one) => one.hits)) / sum(drawn.map((one) => one.of));
}

/**
 * Of a figure found from casualties: its spread over casualties drawn again, 2.5 to 97.5 in 100.
 *
 * @param all - one for each casualty
 * @param figure - found from them
 */
export function drawAgain<T>(all: readonly T[], figure: (drawn: readonly T[]) => number): Interval {
  if (all.length === 0) return { low: Number.NaN, high: Number.NaN };
  const chance = chanceOf(SEED);
  const found = Array.from({ length: DRAWN }, () => figure(all.map(() => chance.pick(all)))).sort((a, b) => a - b);
  return { low: found[Math.floor(0.025 * DRAWN)]!, high: found[Math.ceil(0.975 * DRAWN) - 1]! };
}

/** Wilson's interval of k in n, 95 %. */
export function wilson(k: number, n: number): Interval {
  if (n === 0) return { low: Number.NaN, high: Number.NaN };
  const z = 1.959964;
  const share = k / n;
  const middle = (share + z ** 2 / (2 * n)) / (1 + z ** 2 / n);
  const half = (z / (1 + z ** 2 / n)) * Math.sqrt((share * (1 - share)) / n + z ** 2 / (4 * n ** 2));
  return { low: Math.max(0, middle - half), high: Math.min(1, middle + half) };
}

export function sum(values: readonly number[]): number {
  return values.reduce((total, one) => total + one, 0);
}

/** The middle one; the lower of two. NaN for none. */
export function median(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[Math.floor((values.length - 1) / 2)] ?? Number.NaN;
}
