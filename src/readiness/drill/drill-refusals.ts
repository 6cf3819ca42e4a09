import { lineLabel } from "#kit";
import { nameOfItem, nameOfMode, type Lookup } from "../lookup.ts";
import { refusal, type Refusal } from "../kit/refusal.ts";
import type { KitState, Turnaround } from "../state.ts";
import { compareDrill, type ComparedFault } from "./compare.ts";
import { drillsOn, hasUnknownPlants } from "./drill-now.ts";
import type { Drill } from "./drill-state.ts";

/** What a drill leaves to be done before a turnaround may be sealed, each as one reason. */
export function drillRefusals(kit: KitState, turnaround: Turnaround, lookup: Lookup): readonly Refusal[] {
  const own = (kit.drills ?? []).filter(({ id, ended }) => ended !== undefined && id === turnaround.drill);
  return [
    ...drillsOn(kit).flatMap((drill) => stillOn(kit, drill, lookup)),
    ...own.filter(hasUnknownPlants).map(() => because({ say: "drillNotShown" })),
    ...own.flatMap((drill) => compareDrill(kit, drill, lookup.pattern).faults).flatMap((one) => left(one, lookup)),
    ...(kit.drills ?? [])
      .filter(({ id }) => id === turnaround.drill)
      .flatMap((drill) => compareDrill(kit, drill, lookup.pattern).faults)
      .flatMap((fault) => notLookedAgain(turnaround, fault, lookup)),
  ];
}

function stillOn(kit: KitState, drill: Drill, lookup: Lookup): readonly Refusal[] {
  if (Object.keys(drill.plants).length === 0) return [because({ say: "drillEmpty" })];
  if (hasUnknownPlants(drill)) {
    return [because({ say: "drillHidden" })];
  }
  const { faults, unjudged } = compareDrill(kit, drill, lookup.pattern);
  const open = [
    ...faults.flatMap((fault) => left(fault, lookup)),
    ...unjudged.map(({ id, item, mode }) => ({
      ...because({ say: "drillUnjudged", of: { name: nameOfMode(lookup, item, mode) } }),
      item,
      finding: id,
    })),
  ];
  return open.length > 0 ? open : [because({ say: "drillToEnd" })];
}

function left({ item, mode, removed }: ComparedFault, lookup: Lookup): readonly Refusal[] {
  if (removed) return [];
  return [{ ...because({ say: "drillPlanted", of: { name: nameOfMode(lookup, item, mode) } }), item }];
}

/** A line that was answered while a planted fault was in is answered again without it. */
function notLookedAgain(turnaround: Turnaround, fault: ComparedFault, lookup: Lookup): readonly Refusal[] {
  const { removed } = fault;
  if (!removed) return [];
  return Object.values(turnaround.answers).flatMap(({ check, step, mark }) => {
    const finds = check === undefined ? [] : (lookup.checks.get(check)?.finds ?? []);
    if (!finds.includes(fault.mode) || Date.parse(mark.at) > Date.parse(removed.at)) return [];
    const at = lookup.steps.get(step);
    const line = at ? lineLabel(at, check) : step;
    const said = { say: "drillLookAgain", of: { line, item: nameOfItem(lookup, fault.item) } } as const;
    return [{ ...because(said), item: fault.item, step, ...(check !== undefined && { check }) }];
  });
}

function because(said: Refusal["said"]): Refusal {
  return refusal("drill", said);
}
