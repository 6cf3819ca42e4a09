import { familyOf, type Pattern } from "#kit";
import { failureOf, isOfDrill, type CasualtyState, type Demand, type Finding, type KitState } from "#readiness";

/** A finding, and the start that failed which it is of. */
export interface FindingRead {
  readonly finding: Finding;
  /** The same object for all findings of one start that failed; absent where it is of none. */
  readonly of?: Demand;
}

/**
 * Every finding on the kits of one pattern that counts, whatever its version; those of a drill are left out.
 *
 * @param pattern - its newest version
 * @param kits - of the station, those taken off charge too
 * @param casualties - of the station, open and closed
 * @returns kit by kit, in the order of each kit
 */
export function findingsRead(
  pattern: Pattern,
  kits: readonly KitState[],
  casualties: readonly CasualtyState[],
): readonly FindingRead[] {
  return kits.filter((kit) => familyOf(kit.pattern) === pattern.id).flatMap((kit) => readOf(kit, casualties, pattern));
}

function readOf(kit: KitState, casualties: readonly CasualtyState[], pattern: Pattern): readonly FindingRead[] {
  const failed = failureOf(kit, casualties, pattern);
  return kit.findings
    .filter((one) => !isOfDrill(one, kit))
    .map((finding) => {
      const of = failed.get(finding);
      return { finding, ...(of && { of }) };
    });
}

/**
 * Findings as often as they count: those of one start that failed are one.
 *
 * @param findings - any of them
 * @returns in groups, the first of each first; in the order of their first
 */
export function countedOnce<One extends FindingRead>(findings: readonly One[]): readonly (readonly One[])[] {
  const groups = new Map<Demand | Finding, One[]>();
  for (const one of findings) {
    const key = one.of ?? one.finding;
    groups.set(key, [...(groups.get(key) ?? []), one]);
  }
  return [...groups.values()];
}

/** Findings of which several are of one start that failed. */
export interface Together {
  readonly findings: number;
  readonly starts: number;
}

/** How many findings share the start that failed with another, and how many such starts there are. */
export function togetherIn(findings: readonly FindingRead[]): Together {
  const shared = countedOnce(findings).filter((group) => group.length > 1);
  return { findings: shared.reduce((sum, group) => sum + group.length, 0), starts: shared.length };
}
