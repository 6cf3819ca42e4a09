import { normalQuantile } from "#numerics";
import type { Interval } from "../chance/share-intervals.ts";

/** Agreement of two people beyond what chance would give, or why it cannot be told. */
export type Kappa =
  | {
      readonly kind: "told";
      /** 1 where they always agree, 0 where no more than by chance, below 0 where less [1]. */
      readonly kappa: number;
      /** Of kappa, for many cases [1]. */
      readonly standardError: number;
      /** kappa ± z standard errors, cut at −1 and 1 [1]. */
      readonly interval: Interval;
    }
  | { readonly kind: "cannot-tell"; readonly because: "nothing-compared" | "one-word-only" };

/**
 * Cohen's kappa: (p₀ − pₑ) / (1 − pₑ), where p₀ is the share on which two people agree and pₑ what would agree by chance,
 * each using their words as often as they do.
 *
 * @param counts - square: `counts[i][j]` cases that the first called i and the second j, whole
 * @param level - of confidence, strictly between 0 and 1 [1]
 * @returns kappa with its standard error; cannot tell where nothing was compared, and where one of the two used one word
 *   throughout: kappa is then 0 however often they agree, or not defined
 * @range the standard error is that of many cases; below some twenty, or where a word is rare, its interval is a guide
 * @source Cohen, Educ. Psychol. Meas. 20 (1960) 37-46; Fleiss, Cohen & Everitt, Psychol. Bull. 72 (1969) 323-327 (both
 *   FROM MEMORY)
 * @example cohensKappa([[20, 5], [10, 15]]) // { kind: "told", kappa: 0.4, standardError: 0.127, interval: [0.15109, 0.64891] }
 */
export function cohensKappa(counts: readonly (readonly number[])[], level = 0.95): Kappa {
  const cases = counts.flat().reduce((sum, one) => sum + one, 0);
  if (cases === 0) return { kind: "cannot-tell", because: "nothing-compared" };
  const shares = counts.map((row) => row.map((one) => one / cases));
  const first = shares.map((row) => row.reduce((sum, one) => sum + one, 0));
  const second = shares.map((_, j) => shares.reduce((sum, row) => sum + (row[j] ?? 0), 0));
  if (isOneWord(first) || isOneWord(second)) return { kind: "cannot-tell", because: "one-word-only" };
  const seen = shares.reduce((sum, row, i) => sum + (row[i] ?? 0), 0);
  const byChance = first.reduce((sum, share, i) => sum + share * (second[i] ?? 0), 0);
  const kappa = (seen - byChance) / (1 - byChance);
  const standardError = Math.sqrt(Math.max(0, spread({ shares, first, second, kappa, byChance })) / cases);
  const half = normalQuantile(1 - (1 - level) / 2) * standardError;
  return { kind: "told", kappa, standardError, interval: [Math.max(-1, kappa - half), Math.min(1, kappa + half)] };
}

interface Margins {
  readonly shares: readonly (readonly number[])[];
  readonly first: readonly number[];
  readonly second: readonly number[];
  readonly kappa: number;
  readonly byChance: number;
}

/** Variance of kappa times the number of cases; the sum of Fleiss, Cohen and Everitt. */
function spread({ shares, first, second, kappa, byChance }: Margins): number {
  const rest = 1 - kappa;
  let sum = 0;
  for (const [i, row] of shares.entries()) {
    for (const [j, share] of row.entries()) {
      const [ofSecond, ofFirst] = [second[i] ?? 0, first[j] ?? 0];
      const part = i === j ? 1 - ((first[i] ?? 0) + ofSecond) * rest : (ofSecond + ofFirst) * rest;
      sum += share * part ** 2;
    }
  }
  return (sum - (kappa - byChance * rest) ** 2) / (1 - byChance) ** 2;
}

function isOneWord(shares: readonly number[]): boolean {
  return shares.filter((share) => share > 0).length < 2;
}
