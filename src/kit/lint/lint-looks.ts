import { hit, type LintHit } from "./lint-fault.ts";
import { allSteps, checkNamed } from "../look-ups.ts";
import type { Check, Pattern, Step } from "../pattern.ts";

/** More than this on one screen is a list to tap away, not a look. Common practice: what a hand counts on its fingers. */
const MOST_TOGETHER = 5;

/** Is every group answered with one tap one that a single look can show, or that hands do in one go? */
export function lookLint(pattern: Pattern): readonly LintHit[] {
  const looks = allSteps(pattern).flatMap((step) =>
    (step.oneLook ?? []).flatMap((group) => groupHits(pattern, step, group)),
  );
  return [...looks, ...pattern.stages.flatMap(({ steps }) => doneHits(steps))];
}

/** Lines confirmed with the one before them or after them must be plain doings of one stage. */
function doneHits(steps: readonly Step[]): readonly LintHit[] {
  return steps.flatMap((step, at) => {
    const isLinked = step.withNext === true || steps[at - 1]?.withNext === true;
    const because = isLinked ? (notPlain(step) ?? tooFar(steps, at)) : undefined;
    if (because === undefined) return [];
    const remedy = "Take `withNext` away, so that the line is answered by itself.";
    return [hit("not-done-together", { what: "step", id: step.id }, { what: because, remedy })];
  });
}

function notPlain({ checks, timer, measuresDelivery, optional, after }: Step): string | undefined {
  if (checks.length > 0) return "It asks something, and is to be confirmed together with another line.";
  if (timer || measuresDelivery) return "It is timed or measured, and is to be confirmed together with another line.";
  return optional || after ? "It is not in every turnaround, and is to be confirmed with another line." : undefined;
}

function tooFar(steps: readonly Step[], at: number): string | undefined {
  if (steps[at]?.withNext && at === steps.length - 1) return "It is to be confirmed with a line of the next stage.";
  const run = steps.slice(0, at + 1).toReversed();
  const alone = run.findIndex((_, back) => steps[at - back - 1]?.withNext !== true);
  const isTooMany = alone + 1 > MOST_TOGETHER;
  return isTooMany
    ? `It is number ${alone + 1} of the lines confirmed with one tap; ${MOST_TOGETHER} at most.`
    : undefined;
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
      remedy: "Group only checks of kind look and count, measurements made once, and the seal on record.",
    })),
    ...twice.map((id) => ({ what: `It groups ${id} more than once.`, remedy: "Leave it in one group." })),
    ...(group.length > MOST_TOGETHER
      ? [{ what: `It groups ${group.length} checks.`, remedy: `Group at most ${MOST_TOGETHER}, seen from one place.` }]
      : []),
  ];
}

/** True for what eyes alone answer: nothing is worked, timed or dated; the seal was read when the kit was opened. */
function isSeen(check: Check | undefined): boolean {
  if (check === undefined) return true;
  if (check.kind === "match") return check.against === "recorded-seal";
  return check.kind === "look" || check.kind === "count" || (check.kind === "measure" && check.once === true);
}
