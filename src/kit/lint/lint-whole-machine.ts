import type { LintHit } from "./lint-fault.ts";
import { allSteps } from "../look-ups.ts";
import type { Hazard } from "../hazard.ts";
import type { Item, Pattern } from "../pattern.ts";

/** Where an engine runs there is a tank with fuel of an age; where water is pumped, a strainer and the pump's curve. */
export function wholeMachineLint(pattern: Pattern): readonly LintHit[] {
  return [...engineHits(pattern), ...pumpHits(pattern), ...fuelHits(pattern)];
}

function engineHits(pattern: Pattern): readonly LintHit[] {
  if (!pattern.engine && !hasHazard(pattern, "runs-engine")) return [];
  return [
    ...wanted(pattern.engine !== undefined, "engine", "An engine runs, and nothing says what it holds and burns."),
    ...wanted(
      hasItem(pattern, /\btank\b/i, pattern.engine?.fuelItem),
      "items",
      "An engine runs, and no item is its tank.",
    ),
    ...wanted(
      pattern.engine === undefined || pattern.engine.fuelItem !== undefined,
      "engine.fuelItem",
      "No item is the fuel itself: nothing tells its age.",
    ),
  ];
}

function pumpHits(pattern: Pattern): readonly LintHit[] {
  if (!pattern.hydraulics && !hasHazard(pattern, "pumps-water")) return [];
  return [
    ...wanted(pattern.hydraulics !== undefined, "hydraulics", "Water is pumped, and nothing says how much."),
    ...wanted(hasItem(pattern, /\bstrainer\b/i), "items", "Water is pumped, and no item is the strainer."),
  ];
}

/** Petrol's words at a diesel's tank teach people to pass over them. */
function fuelHits(pattern: Pattern): readonly LintHit[] {
  const isDiesel = pattern.engine?.fuelKind === "diesel";
  const [own, other]: readonly [Hazard, readonly Hazard[]] = isDiesel
    ? ["opens-diesel", ["opens-fuel", "fills-fuel"]]
    : ["opens-fuel", ["opens-diesel"]];
  if (!pattern.engine || !other.some((hazard) => hasHazard(pattern, hazard) || isTried(pattern, hazard))) return [];
  const what = `It burns ${isDiesel ? "diesel" : "petrol"}, and a step or a try warns of another fuel.`;
  return [{ rule: "fuel-of-another", where: "engine.fuelKind", what, remedy: `Name the hazard ${own} at its steps.` }];
}

function isTried({ troubles = [] }: Pattern, hazard: Hazard): boolean {
  const looks = troubles.flatMap(({ look, tries }) => [...(look ? [look] : []), ...tries]);
  return looks.some(({ hazards }) => hazards.includes(hazard));
}

function wanted(isThere: boolean, where: string, what: string): readonly LintHit[] {
  return isThere ? [] : [{ rule: "machine-unsaid", where, what, remedy: `Add it under ${where}.` }];
}

function hasHazard(pattern: Pattern, hazard: Hazard): boolean {
  return allSteps(pattern).some(({ hazards }) => hazards.includes(hazard));
}

/** True where an item is called so, but for one: what is in a tank is not the tank. */
function hasItem({ items }: Pattern, called: RegExp, butFor?: string): boolean {
  return items.some(
    ({ id, name }: Item) => id !== butFor && (called.test(name) || called.test(id.replaceAll("-", " "))),
  );
}
