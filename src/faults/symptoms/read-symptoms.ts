import { nth } from "#base";
import type { Cause, Sign } from "./signs.ts";
import { likeliestSet, type LikeliestSet } from "./likeliest-set.ts";

export interface SymptomReading {
  /** Chance of just these signs [1]. */
  readonly evidence: number;
  /** By cause, after the signs [1]. */
  readonly chances: readonly number[];
  readonly likeliest: LikeliestSet;
}

/**
 * What signs say of causes that may be there together, each showing a sign in its own way (noisy-or).
 *
 * P(sign absent | causes) = (1 − leak) Π (1 − shows); summed over the signs seen by inclusion and exclusion
 *
 * @param causes - independent of each other
 * @param signs - seen, not seen, or not looked for
 * @returns the chance of the signs, every cause's chance after them, and the likeliest set of causes
 * @range 2^(signs seen) · causes; evidence 0 where the signs cannot be
 * @source Heckerman, A tractable inference algorithm for diagnosing multiple diseases (Quickscore), 1989 (FROM MEMORY)
 */
export function readSymptoms(causes: readonly Cause[], signs: readonly Sign[]): SymptomReading {
  const absent = signs.flatMap(({ seen }, j) => (seen === false ? [j] : []));
  const shown = signs.flatMap(({ seen }, j) => (seen === true ? [j] : []));
  const terms = termsOf(causes, signs, absent, shown);
  const evidence = terms.reduce((sum, term) => sum + term.whole, 0);
  if (!(evidence > 1e-300)) return { evidence: 0, chances: causes.map(({ chance }) => chance), likeliest: NOBODY };
  const chances = causes.map((_, i) => {
    const part = terms.reduce((sum, term) => sum + nth(term.byCause, i), 0);
    return Math.min(1, Math.max(0, part / evidence));
  });
  return { evidence, chances, likeliest: likeliestSet(causes, signs, evidence) };
}

const NOBODY: LikeliestSet = { causes: [], chance: 0, exact: true };

interface Term {
  readonly whole: number;
  /** The same where this cause is there. */
  readonly byCause: readonly number[];
}

/** One term for every set of the signs seen, as if those were absent, with its sign. */
function termsOf(
  causes: readonly Cause[],
  signs: readonly Sign[],
  absent: readonly number[],
  shown: readonly number[],
) {
  return Array.from({ length: 2 ** shown.length }, (_, set): Term => {
    const taken = shown.filter((__, bit) => (set >> bit) & 1);
    const without = [...absent, ...taken];
    const factor = without.reduce((product, j) => product * (1 - nth(signs, j).leak), taken.length % 2 === 0 ? 1 : -1);
    const there = causes.map(({ chance, shows }) =>
      without.reduce((product, j) => product * (1 - nth(shows, j)), chance),
    );
    const either = there.map((one, i) => one + 1 - nth(causes, i).chance);
    const whole = either.reduce((product, one) => product * one, factor);
    return { whole, byCause: there.map((one, i) => (either[i] === 0 ? 0 : (whole / nth(either, i)) * one)) };
  });
}
