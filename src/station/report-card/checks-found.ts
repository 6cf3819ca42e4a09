import type { Check, Pattern } from "#kit";
import { neverFound } from "#reliability";
import type { OpeningRead } from "./openings-read.ts";

/** What one check has found so far. */
export interface CheckFound {
  readonly check: Check;
  /** Times it was answered right or wrong. */
  readonly looks: number;
  /** Times it found something. */
  readonly found: number;
  /** Where it never did: the share of looks that may still find something, nineteen times in twenty [1]. */
  readonly below?: number;
}

/**
 * What each check of a pattern has found: openings in which it was answered wrong, or a finding was raised at it, each
 * opening once. A line answered right after it was mended has found something all the same.
 *
 * @param pattern - its newest version; checks it no longer asks are left out
 * @param openings - of its kits
 * @returns in the pattern's order
 */
export function checksFound(pattern: Pattern, openings: readonly OpeningRead[]): readonly CheckFound[] {
  const counts = new Map<string, { looks: number; found: number }>();
  for (const opening of openings) {
    const hits = hitsIn(opening);
    for (const id of new Set([...looksIn(opening), ...hits])) {
      const { looks, found } = counts.get(id) ?? { looks: 0, found: 0 };
      counts.set(id, { looks: looks + 1, found: found + (hits.has(id) ? 1 : 0) });
    }
  }
  return pattern.checks.map((check) => {
    const { looks, found } = counts.get(check.id) ?? { looks: 0, found: 0 };
    return { check, looks, found, ...(found === 0 && looks > 0 && { below: neverFound(looks).below }) };
  });
}

function looksIn({ turnaround }: OpeningRead): readonly string[] {
  const answers = Object.values(turnaround.answers);
  return answers.flatMap(({ check, answer }) => (check !== undefined && answer !== "not-possible" ? [check] : []));
}

function hitsIn({ kit, turnaround }: OpeningRead): ReadonlySet<string> {
  const wrong = Object.values(turnaround.answers).flatMap(({ check, answer }) =>
    check !== undefined && answer === "wrong" ? [check] : [],
  );
  const raised = kit.findings.flatMap((one) => (one.turnaround === turnaround.id && one.check ? [one.check] : []));
  return new Set([...wrong, ...raised]);
}
