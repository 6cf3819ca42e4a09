import { lineLabel } from "#kit";
import { nameOfItem, nameOfMode, type Lookup } from "../lookup.ts";
import type { KitState, Reason, Turnaround } from "../state.ts";
import { compareDrill, type ComparedFault } from "./compare.ts";
import { drillsOn, hasUnknownPlants } from "./drill-now.ts";
import type { Drill } from "./drill-state.ts";

/** What a drill leaves to be done before a turnaround may be sealed, each as one reason. */
export function drillRefusals(kit: KitState, turnaround: Turnaround, lookup: Lookup): readonly Reason[] {
  const own = (kit.drills ?? []).filter(({ id, ended }) => ended !== undefined && id === turnaround.drill);
  return [
    ...drillsOn(kit).flatMap((drill) => stillOn(kit, drill, lookup)),
    ...own.filter(hasUnknownPlants).map(() => because(NOT_SHOWN)),
    ...own.flatMap((drill) => compareDrill(kit, drill, lookup.pattern).faults).flatMap((one) => left(one, lookup)),
    ...(kit.drills ?? [])
      .filter(({ id }) => id === turnaround.drill)
      .flatMap((drill) => compareDrill(kit, drill, lookup.pattern).faults)
      .flatMap((fault) => notLookedAgain(turnaround, fault, lookup)),
  ];
}

const NOT_SHOWN =
  "What was planted was not shown: close it as grounded, then do a whole turnaround that is opened after the drill.";

function stillOn(kit: KitState, drill: Drill, lookup: Lookup): readonly Reason[] {
  if (Object.keys(drill.plants).length === 0)
    return [because("A drill is on, and nothing planted: end the drill first.")];
  if (hasUnknownPlants(drill)) {
    return [because("A drill is on: who planted reveals what, or the drill is ended as not compared.")];
  }
  const { faults, unjudged } = compareDrill(kit, drill, lookup.pattern);
  const open = [
    ...faults.flatMap((fault) => left(fault, lookup)),
    ...unjudged.map(({ id, item, mode }) => ({
      ...because(`Not planted: say whether it is real: ${nameOfMode(lookup, item, mode)}.`),
      item,
      finding: id,
    })),
  ];
  return open.length > 0 ? open : [because("Every planted fault is named removed: end the drill first.")];
}

function left({ item, mode, removed }: ComparedFault, lookup: Lookup): readonly Reason[] {
  if (removed) return [];
  const text = `Planted, and not named removed: ${nameOfMode(lookup, item, mode)}. Take it out, then say so on the drill's page.`;
  return [{ ...because(text), item }];
}

/** A line that was answered while a planted fault was in is answered again without it. */
function notLookedAgain(turnaround: Turnaround, fault: ComparedFault, lookup: Lookup): readonly Reason[] {
  const { removed } = fault;
  if (!removed) return [];
  return Object.values(turnaround.answers).flatMap(({ check, step, mark }) => {
    const finds = check === undefined ? [] : (lookup.checks.get(check)?.finds ?? []);
    if (!finds.includes(fault.mode) || Date.parse(mark.at) > Date.parse(removed.at)) return [];
    const at = lookup.steps.get(step);
    const line = at ? lineLabel(at, check) : step;
    const text = `Look again, a planted fault was taken out since: line ${line}, ${nameOfItem(lookup, fault.item)}.`;
    return [{ ...because(text), item: fault.item, step, ...(check !== undefined && { check }) }];
  });
}

function because(text: string): Reason {
  return { rule: "drill", text };
}
