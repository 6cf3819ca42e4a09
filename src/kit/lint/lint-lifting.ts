import { formatNumber } from "#base";
import { hit, type LintHit } from "./lint-fault.ts";
import { allSteps } from "../look-ups.ts";
import type { Container, LiftingMachine, Pattern, Step } from "../pattern.ts";

/** Is what a machine lifts within what it may bear, and does each lift say by what, with how many, and its dangers? */
export function liftingLint(pattern: Pattern): readonly LintHit[] {
  return [
    ...wholeHits(pattern.container),
    ...allSteps(pattern).flatMap((step) => [...hazardHits(step), ...stepHits(pattern.container, step)]),
  ];
}

/** One at the machine and one at a tag line: a load that only one person handles swings. Common practice. */
const FEWEST_AT_A_LIFT = 2;

function wholeHits({ machines = [], mass }: Container): readonly LintHit[] {
  if (machines.length === 0 || machines.some((one) => bears(one, mass))) return [];
  const strongest = Math.max(...machines.map(({ safeWorkingLoad }) => safeWorkingLoad));
  return [{ rule: "lift-too-heavy", where: "container.machines", ...tooHeavy(strongest, mass) }];
}

function bears({ safeWorkingLoad }: LiftingMachine, mass: number): boolean {
  return safeWorkingLoad >= mass;
}

function tooHeavy(load: number, mass: number) {
  return {
    what: `${formatNumber(mass)} kg hang on what may bear ${formatNumber(load)} kg.`,
    remedy: "Name a machine whose safe working load is at least the mass.",
  };
}

/** A lift without its hazard warns of nothing; the hazard without a lift says neither by what nor with how many. */
function hazardHits(step: Step): readonly LintHit[] {
  const [has, says] = [step.hazards.includes("lifts-by-machine"), step.lift !== undefined];
  if (has === says) return [];
  const of = { what: "step", id: step.id } as const;
  if (has) {
    const what = "A machine lifts here, and nothing says which.";
    return [hit("lift-unsaid", of, { what, remedy: "Add `lift` with the id of the machine." })];
  }
  const what = "A machine lifts here, and nothing warns of standing under the load.";
  return [hit("lift-unsaid", of, { what, remedy: "Add hazard lifts-by-machine and its cautions." })];
}

function stepHits({ machines = [], mass: whole }: Container, { id, lift, needs }: Step): readonly LintHit[] {
  if (lift === undefined) return [];
  const of = { what: "step", id } as const;
  const mass = lift.mass ?? whole;
  const machine = machines.find((one) => one.id === lift.by);
  const few = {
    what: `${needs.people} at a lift: nobody holds the tag line.`,
    remedy: `Name at least ${FEWEST_AT_A_LIFT} \`people\`.`,
  };
  return [
    ...(machine && !bears(machine, mass) ? [hit("lift-too-heavy", of, tooHeavy(machine.safeWorkingLoad, mass))] : []),
    ...(needs.people < FEWEST_AT_A_LIFT ? [hit("lift-unsaid", of, few)] : []),
  ];
}
