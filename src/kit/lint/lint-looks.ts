import { hit, type LintHit } from "./lint-fault.ts";
import { allSteps, checkNamed } from "../look-ups.ts";
import type { Check, Pattern, Step } from "../pattern.ts";

/** More than this on one screen is a list to tap away, not a look. Common practice: what a hand counts on its fingers. */
const MOST_TOGETHER = 5;

/** Is every group of checks answered with one tap a group that one look can show? */
export function lookLint(pattern: Pattern): readonly LintHit[] {
  return allSteps(pattern).flatMap((step) => (step.oneLook ?? []).flatMap((group) => groupHits(pattern, step, group)));
}

function groupHits(pattern: Pattern, step: Step, group: readonly string[]): readonly LintHit[] {
  const of = { what: "step", id: step.id } as const;
  return faultsOf(pattern, step, group).map((told) => hit("one-look-not-one", of, told));
}

function faultsOf(pattern: Pattern, step: Step, group: readonly string[]) {
  const strays = group.filter((id) => !step.checks.includes(id));
  const acts = group.filter((id) => !isSeen(checkNamed(pattern, id)));
  const twice = group.filter((id) => (step.oneLook ?? []).flat().filter((one) => one === id).length > 1);
  return [
    ...strays.map((id) => ({
      what: `It groups ${id}, which it does not ask.`,
      remedy: "Name only checks of the step.",
    })),
    ...acts.map((id) => ({
      what: `It groups ${id}, which has to be done or read, not only seen.`,
      remedy: "Group only checks of kind look and count, and measurements made once.",
    })),
    ...twice.map((id) => ({ what: `It groups ${id} more than once.`, remedy: "Leave it in one group." })),
    ...(group.length > MOST_TOGETHER
      ? [{ what: `It groups ${group.length} checks.`, remedy: `Group at most ${MOST_TOGETHER}, seen from one place.` }]
      : []),
  ];
}

/** True for what eyes alone answer: nothing is worked, timed, dated or compared. */
function isSeen(check: Check | undefined): boolean {
  if (check === undefined) return true;
  return check.kind === "look" || check.kind === "count" || (check.kind === "measure" && check.once === true);
}
