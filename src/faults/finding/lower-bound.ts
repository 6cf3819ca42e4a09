import { nth } from "#base";
import type { FaultCase } from "./fault-case.ts";

/**
 * What no way of finding a fault can undercut: the cost if the cause were known from the beginning.
 *
 * For a known cause the best is what ends it most surely per cost, first, and the fallback where that is cheaper; covers are
 * left out.
 *
 * @param given - the case
 * @returns a cost that the least expected cost is never below
 * @source DERIVED: perfect information
 */
export function lowerBound(given: FaultCase): number {
  return given.chances.reduce((total, chance, cause) => total + chance * knownCost(given, cause), 0);
}

function knownCost({ steps, fallback, lastIsInferred }: FaultCase, cause: number): number {
  const useful = steps.filter(({ ends }) => nth(ends, cause) > 0);
  const repair = Math.min(...useful.map((step) => step.repair), Infinity);
  const stop = fallback ?? Infinity;
  if (lastIsInferred && useful.length > 0) return Math.min(stop, repair);
  let [left, spent, best] = [1, 0, stop];
  const ordered = useful.toSorted(
    (one, other) => nth(other.ends, cause) / other.cost - nth(one.ends, cause) / one.cost,
  );
  for (const { ends, cost } of ordered) {
    spent += left * (cost + nth(ends, cause) * repair);
    left *= 1 - nth(ends, cause);
    best = Math.min(best, spent + (left === 0 ? 0 : left * stop));
  }
  return best;
}
