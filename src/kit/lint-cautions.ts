import { CAUTIONS_FOR } from "./hazards.ts";
import { hit, type LintHit } from "./lint-fault.ts";
import { allSteps } from "./look-ups.ts";
import type { Pattern, Step } from "./pattern.ts";

/** Does every step that can hurt say so first? */
export function cautionLint(pattern: Pattern): readonly LintHit[] {
  return allSteps(pattern).flatMap((step) => [...declaredHits(step), ...undeclaredHits(step)]);
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

function of(step: Step) {
  return { what: "step", id: step.id } as const;
}
