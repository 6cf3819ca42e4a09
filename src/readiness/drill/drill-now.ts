import type { Finding, KitState } from "../state.ts";
import type { Drill } from "./drill-state.ts";

/** Where the removal of one planted fault is kept. */
export function removalKey(plant: string, fault: number): string {
  return `${plant} ${fault}`;
}

/** True as long as a drill goes on and what was planted has not been revealed. */
export function isHiding({ ended, hidden, plants }: Drill): boolean {
  return ended === undefined && (hidden > 0 || Object.keys(plants).length === 0);
}

/** The drills that are on; mostly none, at most one unless two devices began one each. */
export function drillsOn({ drills = [] }: Pick<KitState, "drills">): readonly Drill[] {
  return drills.filter(({ ended }) => ended === undefined);
}

/** True for a finding of a drill that tells nothing of the fleet: planted, or not borne out as real. */
export function isOfDrill(finding: Finding, { drills = [] }: Pick<KitState, "drills">): boolean {
  if (finding.drill === undefined) return false;
  return drills.find(({ id }) => id === finding.drill)?.judged[finding.id]?.real !== true;
}

/** Plants of which nobody showed what they were. */
export function hasUnknownPlants({ hidden }: Drill): boolean {
  return hidden > 0;
}
