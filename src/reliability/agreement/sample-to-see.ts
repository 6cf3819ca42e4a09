/** How many are to be looked at, and what that rests on. */
export interface SampleSize {
  /** How many to look at. */
  readonly size: number;
  /** How many of all would be wrong, if the share were: rounded up. */
  readonly wrong: number;
  /** Chance that at least one of those is among the ones looked at [1]. */
  readonly chance: number;
}

/** What `share` times `of` may be off by where it is whole: 0.1 x 70 is a little more than 7. */
const ROUNDING = 1e-9;

/**
 * The least number to look at, drawn by chance without putting back, so that at least one wrong one is seen with a chance
 * of at least this, where so large a share is wrong: 1 − C(N − D, n) / C(N, n).
 *
 * @param of - how many there are, N, whole
 * @param share - of them that would be wrong, strictly between 0 and 1 [1]; D is this share of N, rounded up
 * @param chance - of seeing at least one, strictly between 0 and 1 [1]
 * @returns size n, D and the chance that n really gives, which is rarely the one asked for exactly
 * @range of 0 there is nothing to look at; among few the answer may be all of them but D − 1
 * @source hypergeometric distribution, DERIVED; near n = (1 − (1 − chance)^(1/D)) (N − (D − 1) / 2) of Cannon & Roe,
 *   Livestock Disease Surveys, 1982
 * @example sampleToSee(100, 0.1, 0.9) // { size: 20, wrong: 10, chance: 0.90488 }
 */
export function sampleToSee(of: number, share: number, chance: number): SampleSize {
  const wrong = Math.min(of, Math.max(0, Math.ceil(of * share - ROUNDING)));
  let unseen = 1;
  let size = 0;
  const most = wrong === 0 ? 0 : of;
  while (size < most && 1 - unseen < chance - ROUNDING) {
    unseen *= Math.max(0, of - wrong - size) / (of - size);
    size += 1;
  }
  return { size, wrong, chance: 1 - unseen };
}

/**
 * Chance that at least one wrong one is among those looked at: 1 − C(N − D, n) / C(N, n).
 *
 * @param of - how many there are, N, whole, at least 1
 * @param wrong - how many of them are wrong, D, whole, 0 to N
 * @param size - how many are looked at, n, whole, 0 to N
 * @returns chance [1]
 * @source hypergeometric distribution, DERIVED
 * @example chanceToSee(12, 2, 8) // 0.90909
 */
export function chanceToSee(of: number, wrong: number, size: number): number {
  let unseen = 1;
  for (let i = 0; i < size; i += 1) unseen *= Math.max(0, of - wrong - i) / (of - i);
  return 1 - unseen;
}
