import { newestOfEach, stepOfCheck, type Check, type Pattern } from "#kit";
import type { KitState } from "#readiness";
import { reportCard } from "../report-card/index.ts";

/** A check that was made and never found anything. */
export interface NeverFoundLine {
  readonly pattern: Pattern;
  readonly check: Check;
  /** Line of the pattern, where it is asked at one. */
  readonly line: number | undefined;
  /** Openings in which it was answered right or wrong. */
  readonly looks: number;
  /** The share of openings in which it may still find something: nineteen times in twenty at most this [1]. */
  readonly below: number;
}

/**
 * Checks that never found anything in so many openings, most often made first.
 *
 * @param log - kits of the station, those taken off charge too
 * @param least - openings from which on one is told, whole, at least 1
 * @source `neverFound`
 */
export function neverFoundLines(
  log: {
    readonly kits: readonly KitState[];
    readonly retired?: readonly KitState[];
    readonly patterns: ReadonlyMap<string, Pattern>;
  },
  least: number,
): readonly NeverFoundLine[] {
  const kits = [...log.kits, ...(log.retired ?? [])];
  const all = newestOfEach([...log.patterns.values()]).flatMap((pattern) =>
    reportCard(pattern, kits, []).checks.flatMap(({ check, looks, below }): readonly NeverFoundLine[] =>
      below === undefined || looks < least
        ? []
        : [{ pattern, check, line: stepOfCheck(pattern, check.id)?.line, looks, below }],
    ),
  );
  return all.toSorted((one, other) => other.looks - one.looks || (one.line ?? 0) - (other.line ?? 0));
}
