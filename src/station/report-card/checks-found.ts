import type { Check, Pattern } from "#kit";
import { neverFound } from "#reliability";
import { countedOnce, type FindingRead } from "./findings-read.ts";
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
 * opening once, and findings raised at it outside of one, those of one start that failed once. A line answered right after it was mended has found something
 * all the same.
 *
 * @param pattern - its newest version; checks it no longer asks are left out
 * @param openings - of its kits
 * @param findings - on its kits
 * @returns in the pattern's order
 */
export function checksFound(
  pattern: Pattern,
  openings: readonly OpeningRead[],
  findings: readonly FindingRead[],
): readonly CheckFound[] {
  const counts = new Map<string, { looks: number; found: number }>();
  for (const opening of openings) {
    const hits = hitsIn(opening);
    for (const id of new Set([...looksIn(opening), ...hits])) {
      const { looks, found } = counts.get(id) ?? { looks: 0, found: 0 };
      counts.set(id, { looks: looks + 1, found: found + (hits.has(id) ? 1 : 0) });
    }
  }
  const elsewhere = foundElsewhere(openings, findings);
  return pattern.checks.map((check) => {
    const { looks, found: inOpenings } = counts.get(check.id) ?? { looks: 0, found: 0 };
    const found = inOpenings + (elsewhere.get(check.id) ?? 0);
    return { check, looks, found, ...(found === 0 && looks > 0 && { below: neverFound(looks).below }) };
  });
}

/** Findings raised at a check outside the openings that count: at a muster, a visit, a return. */
function foundElsewhere(
  openings: readonly OpeningRead[],
  findings: readonly FindingRead[],
): ReadonlyMap<string, number> {
  const counted = new Set(openings.map(({ turnaround }) => turnaround.id));
  const elsewhere = findings.filter(
    ({ finding: { turnaround } }) => turnaround === undefined || !counted.has(turnaround),
  );
  const checks = countedOnce(elsewhere).flatMap((group) => [
    ...new Set(group.flatMap(({ finding: { check } }) => check ?? [])),
  ]);
  const times = new Map<string, number>();
  for (const check of checks) times.set(check, (times.get(check) ?? 0) + 1);
  return times;
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
