import type { Pattern } from "#kit";
import type { PlantedFault } from "../kinds/drill-parts.ts";
import type { Finding, KitState, Mark } from "../state.ts";
import { removalKey } from "./drill-now.ts";
import type { Drill } from "./drill-state.ts";

/** One planted fault, and what became of it. */
export interface ComparedFault extends PlantedFault {
  readonly plant: string;
  /** From 1, in its plant. */
  readonly number: number;
  /** The finding that names it; absent where it was missed. */
  readonly found?: Finding;
  readonly removed?: Mark;
}

/** What a drill showed, as far as it was revealed. */
export interface Comparison {
  readonly faults: readonly ComparedFault[];
  /** Not planted, and nobody has said yet whether they are real. */
  readonly unjudged: readonly Finding[];
  /** Not planted, and nothing was wrong. */
  readonly wrong: readonly Finding[];
  /** Not planted, and wrong all the same: they stay open. */
  readonly real: readonly Finding[];
}

/**
 * Holds what was found in a drill against what was planted.
 *
 * A planted fault is found by a finding on its item and mode, else by one on its item that was raised at a check of its
 * mode and names no other planted fault.
 *
 * @param kit - with its findings
 * @param drill - one of its drills
 * @param pattern - it is built to; without it only findings of the same mode count
 * @returns found, missed and what was not planted; everything is not planted as long as nothing is revealed
 */
export function compareDrill(kit: Pick<KitState, "findings">, drill: Drill, pattern: Pattern | undefined): Comparison {
  const findings = kit.findings.filter((finding) => finding.drill === drill.id);
  const planted = plantedIn(drill);
  const exact = new Set(findings.filter((one) => planted.some((fault) => names(one, fault))));
  const faults = planted.map((fault) => {
    const found =
      findings.find((one) => names(one, fault)) ??
      findings.find((one) => !exact.has(one) && atCheck(one, fault, pattern));
    const removed = drill.removed[removalKey(fault.plant, fault.number)];
    return { ...fault, ...(found && { found }), ...(removed && { removed }) };
  });
  const matched = new Set(faults.flatMap(({ found }) => found ?? []));
  const others = findings.filter((one) => !matched.has(one));
  const judgedAs = (real: boolean) => others.filter(({ id }) => drill.judged[id]?.real === real);
  return {
    faults,
    unjudged: others.filter(({ id }) => !drill.judged[id]),
    wrong: judgedAs(false),
    real: judgedAs(true),
  };
}

/** Faults whose list gives the hash that was written, numbered in their plants. */
export function plantedIn({ plants, revealed }: Drill): readonly Omit<ComparedFault, "found" | "removed">[] {
  return Object.keys(plants).flatMap((commitment) => {
    const list = revealed[commitment];
    return (list?.faults ?? []).map((fault, i) => ({ ...fault, plant: list!.plant, number: i + 1 }));
  });
}

function names({ item, mode }: Finding, fault: PlantedFault): boolean {
  return item === fault.item && mode === fault.mode;
}

function atCheck({ item, check }: Finding, fault: PlantedFault, pattern: Pattern | undefined): boolean {
  if (item !== fault.item || check === undefined) return false;
  return pattern?.checks.some(({ id, finds }) => id === check && finds.includes(fault.mode)) ?? false;
}
