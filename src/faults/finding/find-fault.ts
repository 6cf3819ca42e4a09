import { exactSearch, type Search } from "./exact-search.ts";
import type { FaultCase, Move } from "./fault-case.ts";
import { lowerBound } from "./lower-bound.ts";
import { ruleOfThumb } from "./rule-of-thumb.ts";

/** What to do next, and what it costs to find and mend the fault that way. */
export interface FaultPlan {
  readonly next: Move;
  /** Steps in order where none helps and no test is done. */
  readonly order: readonly number[];
  readonly expectedCost: number;
  /** The same where no test may be done; only where there are tests. */
  readonly withoutTests?: number;
  /** True where no other way costs less. */
  readonly exact: boolean;
  /** Where not exact: no way costs less than this. */
  readonly bound?: number;
}

/** States searched at most. */
const MOST_STATES = 60_000;

/**
 * The next thing to do about a fault, by the least expected cost until it is ended.
 *
 * @param given - the case: one cause, chances adding up to 1
 * @returns what to do next; expected costs infinite where nothing given is sure to end it
 * @range exact to 60 000 states (such as 8 steps and 5 tests, or 15 steps), and where each check finds one cause of its own;
 *   beyond, a rule of thumb with a bound
 * @source DERIVED; see `exactSearch`, `ruleOfThumb`, `lowerBound`
 */
export function findFault(given: FaultCase): FaultPlan {
  const bare = solve(given, false);
  if (given.tests.length === 0) return planOf(given, bare, {});
  const whole = solve(given, true);
  const better = whole.search.cost <= bare.search.cost ? whole : { search: bare.search, exact: false };
  const plan = { search: { ...better.search, order: bare.search.order }, exact: better.exact };
  return planOf(given, plan, { withoutTests: bare.search.cost });
}

interface Solved {
  readonly search: Search;
  readonly exact: boolean;
}

function solve(given: FaultCase, withTests: boolean): Solved {
  const states = 2 ** given.steps.length * (withTests ? 3 ** given.tests.length : 1);
  if (states <= MOST_STATES) return { search: exactSearch(given, withTests), exact: true };
  const exact = (!withTests || given.tests.length === 0) && isOneByOne(given);
  return { search: ruleOfThumb(given, withTests), exact };
}

/** Each check finds one cause that no other finds: chance over cost is then the best order, and a beginning of it is best. */
function isOneByOne({ steps, covers, fallback, lastIsInferred }: FaultCase): boolean {
  const found = steps.map(({ ends }) => ends.flatMap((end, c) => (end > 0 ? [c] : [])));
  const areApart = found.every((causes) => causes.length === 1) && new Set(found.flat()).size === steps.length;
  const isRepairFree = steps.every(({ repair }) => repair === steps[0]?.repair);
  return areApart && covers.length === 0 && !lastIsInferred && (fallback === undefined || isRepairFree);
}

function planOf(given: FaultCase, { search, exact }: Solved, more: { readonly withoutTests?: number }): FaultPlan {
  const { move: next, order, cost } = search;
  return { next, order, expectedCost: cost, ...more, exact, ...(exact ? {} : { bound: lowerBound(given) }) };
}
