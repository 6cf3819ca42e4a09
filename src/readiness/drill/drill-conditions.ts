import { dayWritten, formatDate } from "#base";
import { nameOfMode, type Lookup } from "../lookup.ts";
import type { Condition } from "../standing/condition.ts";
import type { KitState, Mark } from "../state.ts";
import { compareDrill } from "./compare.ts";
import { drillsOn, hasUnknownPlants } from "./drill-now.ts";

/** A kit in a drill is no kit to go with; after it, not before a turnaround has been sealed. */
export function drillConditions(kit: KitState, lookup: Lookup): readonly Condition[] {
  const steps = [...lookup.steps.values()].filter((step) => !step.optional).map(({ id }) => id);
  const on = drillsOn(kit).map((drill): Condition => {
    const text = `Set aside for a drill since ${formatDate(dayWritten(drill.begun.at))}.`;
    const what = "Name every planted fault removed, end the drill, then seal it.";
    return { bears: "grounds", reason: { rule: "drill", text }, restore: { what, steps, opens: true } };
  });
  const after = afterDrill(kit, lookup);
  if (on.length > 0 || after === undefined) return on;
  const restore = { what: "Do a whole turnaround.", steps, opens: true };
  return [{ bears: "grounds", reason: { rule: "drill", text: after }, restore }];
}

/** What still stands of drills that are over. */
function afterDrill(kit: KitState, lookup: Lookup): string | undefined {
  const sealed = kit.turnarounds.filter(({ closed }) => closed?.how === "sealed");
  for (const drill of kit.drills ?? []) {
    const { faults } = compareDrill(kit, drill, lookup.pattern);
    const left = faults.find(({ removed }) => !removed);
    if (left) return `Planted for a drill, and not named removed: ${nameOfMode(lookup, left.item, left.mode)}.`;
    const over = Math.max(...[drill.ended, ...faults.map(({ removed }) => removed)].map((one) => timeOf(one)));
    const since = sealed.filter(({ closed }) => timeOf(closed) >= over);
    if (hasUnknownPlants(drill) && !since.some(({ opened }) => timeOf(opened) >= over)) {
      return "Faults were planted for a drill, and nobody showed which: not turned round as a whole since.";
    }
    if (since.length === 0) return "Opened for a drill, and not sealed since.";
  }
  return undefined;
}

function timeOf(mark: Mark | undefined): number {
  return mark === undefined ? -Infinity : Date.parse(mark.at);
}
