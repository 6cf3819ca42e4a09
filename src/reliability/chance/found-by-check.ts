import type { Belief } from "./belief.ts";
import type { Demands } from "./fleet.ts";
import { clopperPearson, type Interval } from "./share-intervals.ts";
import { openingsToTell, startsByFleet } from "./starting.ts";

/** Faults planted before a check that can find them, and how many of them it found. */
export interface Looks {
  readonly found: number;
  readonly planted: number;
}

/** What drills say of the chance that a check finds what it can find. */
export interface FoundByCheck {
  /** Chance of finding [1]. */
  readonly chance: Belief;
  /** From its own record alone; nothing to everything where nothing was planted [1]. */
  readonly interval: Interval;
  /** Further faults it would take about until the range is narrow enough to be told; 0 where it is. */
  readonly more: number;
  /** Other checks that stand for what to expect of it; 0 where they say nothing yet. */
  readonly others: number;
  /** The most that one fault more missed by any of the others would make of the mean [1]; absent where they say nothing. */
  readonly oneMore?: number;
}

/**
 * The chance that a check finds a planted fault, from hit and miss alone: the faults have no size, so no curve over size
 * is drawn through them.
 *
 * Others pooled: beta-binomial, its spread integrated warily, where at least two checks were tried; else Jeffreys' prior, beta(found + 1/2, missed + 1/2).
 *
 * @param own - of this check
 * @param others - other checks of the same pattern
 * @param level - of confidence of the interval, strictly between 0 and 1 [1]
 * @returns belief about finding, and Clopper and Pearson's interval
 * @range found at most planted, both whole
 * @source hit/miss data of MIL-HDBK-1823A, 2009 (FROM MEMORY); Clopper & Pearson, Biometrika 26 (1934) (FROM MEMORY)
 * @example foundByCheck({ found: 29, planted: 29 }).interval // [0.90186, 1]
 */
export function foundByCheck(own: Looks, others: readonly Looks[] = [], level = 0.9): FoundByCheck {
  const fleet = startsByFleet([own, ...others].map(missed));
  const { failing } = fleet.of(missed(own));
  const { mean, p05, p50, p95 } = failing;
  const oneMore = fleet.oneMore(missed(own));
  return {
    chance: { mean: 1 - mean, p05: 1 - p95, p50: 1 - p50, p95: 1 - p05 },
    interval: own.planted === 0 ? [0, 1] : clopperPearson(own.found, own.planted, level),
    more: openingsToTell(failing),
    others: fleet.members === 0 ? 0 : others.filter(tried).length,
    ...(oneMore !== undefined && { oneMore: 1 - oneMore }),
  };
}

function tried({ planted }: Looks): boolean {
  return planted > 0;
}

function missed({ found, planted }: Looks): Demands {
  return { failures: planted - found, trials: planted };
}
