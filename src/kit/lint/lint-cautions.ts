import { CAUTIONS_FOR } from "../hazards.ts";
import { hit, type LintHit } from "./lint-fault.ts";
import { allSteps } from "../look-ups.ts";
import type { Pattern, Step } from "../pattern.ts";

/** Does every step that can hurt say so first? */
export function cautionLint(pattern: Pattern): readonly LintHit[] {
  return [
    ...allSteps(pattern).flatMap((step) => [...declaredHits(step), ...undeclaredHits(step), ...orderHits(step)]),
    ...hotStowHits(pattern),
  ];
}

/** Cautions that hold for as long as the engine runs or the pump moves water, whatever the step is. */
const STANDING = new Set<string>([...CAUTIONS_FOR["runs-engine"], ...CAUTIONS_FOR["pumps-water"]]);

/**
 * The step's own danger stands first: who has read "carbon monoxide" on five lines passes over what is new below it.
 */
function orderHits(step: Step): readonly LintHit[] {
  const first = step.cautions.findIndex((id) => STANDING.has(id));
  const late = step.cautions.filter((id, at) => first !== -1 && at > first && !STANDING.has(id));
  return late.map((id) =>
    hit("own-caution-not-first", of(step), {
      what: `Its own caution ${id} stands behind ${step.cautions[first]}, which holds all the while.`,
      remedy: `Name ${id} before ${step.cautions[first]}.`,
    }),
  );
}

/** What was run is hot when it is stowed: one step of the restowing says so. */
function hotStowHits(pattern: Pattern): readonly LintHit[] {
  const restow = pattern.stages.find(({ id }) => id === "restow");
  if (!pattern.engine || !restow || restow.steps.some(({ hazards }) => hazards.includes("hot-exhaust"))) return [];
  const told = {
    what: "An engine is wrapped and stowed, and no step warns of its hot exhaust.",
    remedy: "Add hazard hot-exhaust and its caution to the step that wraps or stows it.",
  };
  return [hit("hazard-without-caution", { what: "stage", id: restow.id }, told)];
}

function declaredHits(step: Step): readonly LintHit[] {
  return step.hazards.flatMap((hazard) => {
    const missing = CAUTIONS_FOR[hazard].filter((id) => !step.cautions.includes(id));
    return missing.map((id) =>
      hit("hazard-without-caution", of(step), {
        what: `Its hazard ${hazard} stands without the caution ${id}.`,
        remedy: `Add ${id}.`,
      }),
    );
  });
}

/** What a step plainly does that no hazard of it owns up to. */
function undeclaredHits(step: Step): readonly LintHit[] {
  const kinds = step.timer?.kind;
  const must = [
    ...(kinds === "pulls" && !step.hazards.includes("unguarded-rotation") ? (["pulls-cord"] as const) : []),
    ...(movesStrainer(step) ? (["moves-strainer"] as const) : []),
    ...(step.measuresDelivery || kinds === "prime" ? (["pumps-water"] as const) : []),
  ];
  return must
    .filter((hazard) => !step.hazards.includes(hazard))
    .map((hazard) => {
      const remedy = `Add hazard ${hazard} and its cautions: ${CAUTIONS_FOR[hazard].join(", ")}.`;
      return hit("hazard-without-caution", of(step), {
        what: `It is a step that ${hazard}, and does not say so.`,
        remedy,
      });
    });
}

/** A strainer taken from one water to another with the pump running leaves the pump dry in between. */
function movesStrainer(step: Step): boolean {
  return step.hazards.includes("runs-engine") && /\b(move the strainer|strainer into)\b/i.test(step.text);
}

function of(step: Step) {
  return { what: "step", id: step.id } as const;
}
