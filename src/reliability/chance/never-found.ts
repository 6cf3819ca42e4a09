/** What so many looks without a find allow to be said. */
export interface NeverFound {
  /** Nineteen times in twenty the share of looks that would find something lies below this [1]. */
  readonly below: number;
  /** The same by the rule of three, 3/n, for the head [1]. */
  readonly ruleOfThree: number;
}

/**
 * How rarely a check may find something, where it never has: (1 − p)ⁿ = 0.05, so p = 1 − 0.05^(1/n), about 3/n.
 *
 * @param looks - whole, at least 1
 * @returns upper 95 % bound of the share of looks that find something, and the rule of three [1]
 * @range 3/n is above 1 for fewer than 3 looks and is cut there; it lies above the exact bound for every n
 * @source rule of three: Jovanovic & Levy, American Statistician 51 (1997) 137-139 (its abstract); Hanley & Lippman-Hand,
 *   JAMA 249 (1983) 1743-1745 (FROM MEMORY)
 * @example neverFound(30) // { below: 0.09503, ruleOfThree: 0.1 }
 */
export function neverFound(looks: number): NeverFound {
  return { below: 1 - 0.05 ** (1 / looks), ruleOfThree: Math.min(1, 3 / looks) };
}

/**
 * Looks without a find that it takes to say that fewer than such a share would find something.
 *
 * @param share - strictly between 0 and 1 [1]
 * @returns whole looks
 * @source as `neverFound`
 * @example looksToSay(0.05) // 59
 */
export function looksToSay(share: number): number {
  return Math.ceil(Math.log(0.05) / Math.log1p(-share));
}
