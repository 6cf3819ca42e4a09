import { allSteps } from "../look-ups.ts";
import type { Hazard } from "../hazard.ts";
import type { Pattern } from "../pattern.ts";
import type { Trouble } from "../trouble/trouble.ts";
import type { LintHit } from "./lint-fault.ts";

/** A step with one of these runs the machine by an engine, or feeds it from the mains. */
const DRIVEN: ReadonlySet<Hazard> = new Set<Hazard>(["runs-engine", "electric-in-water"]);

/** Where a machine runs or stands under mains, no hand at it is without a hazard: each try and each look names one. */
export function tryLint(pattern: Pattern): readonly LintHit[] {
  if (!isDriven(pattern)) return [];
  return (pattern.troubles ?? []).flatMap((trouble, at) => bareHits(trouble, `troubles[${at}]`));
}

function isDriven(pattern: Pattern): boolean {
  return (
    pattern.engine !== undefined || allSteps(pattern).some(({ hazards }) => hazards.some((one) => DRIVEN.has(one)))
  );
}

function bareHits({ sign, look, tries }: Trouble, path: string): readonly LintHit[] {
  const told = (where: string, act: string): LintHit => ({
    rule: "try-without-hazard",
    where: `${path}.${where}.hazards`,
    what: `The ${act} under ${sign} names no hazard, and the machine runs or is fed from the mains.`,
    remedy: "Name what it does that can hurt: a running pump, a hose under pressure, mains at the water.",
  });
  return [
    ...(look?.hazards.length === 0 ? [told("look", "look")] : []),
    ...tries.flatMap(({ id, hazards }, at) => (hazards.length === 0 ? [told(`tries[${at}]`, `try ${id}`)] : [])),
  ];
}
