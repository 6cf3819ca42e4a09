import { dayWritten } from "#base";
import { dayToSay } from "#words";
import { nameOfMode, type Lookup } from "../lookup.ts";
import type { Condition } from "../standing/condition.ts";
import type { KitState, Mark, StandingSaying } from "../state.ts";
import { compareDrill } from "./compare.ts";
import { drillsOn, hasUnknownPlants } from "./drill-now.ts";

/** A kit in a drill is no kit to go with; after it, not before a turnaround has been sealed. */
export function drillConditions(kit: KitState, lookup: Lookup): readonly Condition[] {
  const steps = [...lookup.steps.values()].filter((step) => !step.optional).map(({ id }) => id);
  const on = drillsOn(kit).map((drill): Condition => {
    const said = { say: "drillOn", of: { day: dayToSay(dayWritten(drill.begun.at)) } } as const;
    return {
      bears: "grounds",
      reason: { rule: "drill", said },
      restore: { what: { say: "endDrill" }, steps, opens: true },
    };
  });
  const after = afterDrill(kit, lookup);
  if (on.length > 0 || after === undefined) return on;
  const restore = { what: { say: "doWhole" }, steps, opens: true } as const;
  return [{ bears: "grounds", reason: { rule: "drill", said: after }, restore }];
}

/** What still stands of drills that are over. */
function afterDrill(kit: KitState, lookup: Lookup): StandingSaying | undefined {
  const sealed = kit.turnarounds.filter(({ closed }) => closed?.how === "sealed");
  for (const drill of kit.drills ?? []) {
    const { faults } = compareDrill(kit, drill, lookup.pattern);
    const left = faults.find(({ removed }) => !removed);
    if (left) return { say: "stillPlanted", of: { name: nameOfMode(lookup, left.item, left.mode) } };
    const over = Math.max(...[drill.ended, ...faults.map(({ removed }) => removed)].map((one) => timeOf(one)));
    const since = sealed.filter(({ closed }) => timeOf(closed) >= over);
    if (hasUnknownPlants(drill) && !since.some(({ opened }) => timeOf(opened) >= over)) {
      return { say: "neverShown" };
    }
    if (since.length === 0) return { say: "openedForDrill" };
  }
  return undefined;
}

function timeOf(mark: Mark | undefined): number {
  return mark === undefined ? -Infinity : Date.parse(mark.at);
}
