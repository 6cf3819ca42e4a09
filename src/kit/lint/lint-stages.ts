import { hit, type LintHit } from "./lint-fault.ts";
import { allSteps, isLeftAlone } from "../look-ups.ts";
import type { Pattern, StageId, Step } from "../pattern.ts";
import { STAGE_ORDER } from "../stage-order.ts";

/** Are the stages all there and in order, and is every wait and run timed? */
export function stageLint(pattern: Pattern): readonly LintHit[] {
  return [
    ...missingStages(pattern),
    ...misplacedStages(pattern),
    ...allSteps(pattern).flatMap(timeHits),
    ...delivery(pattern),
  ];
}

const ALWAYS: readonly StageId[] = ["open", "examine", "rig", "run", "dry", "restow", "seal"];

function missingStages(pattern: Pattern): readonly LintHit[] {
  const needed = STAGE_ORDER.filter((id) => ALWAYS.includes(id) || (id === "prime" && pattern.hydraulics?.suction));
  const there = new Set(pattern.stages.map((stage) => stage.id));
  return needed
    .filter((id) => !there.has(id))
    .map((id) => stageHit(id, `Stage ${id} is missing.`, "Add it, with its steps."));
}

function misplacedStages(pattern: Pattern): readonly LintHit[] {
  return pattern.stages.flatMap((stage, index) => {
    const before = pattern.stages[index - 1];
    if (!before || STAGE_ORDER.indexOf(before.id) < STAGE_ORDER.indexOf(stage.id)) return [];
    return [stageHit(stage.id, `Stage ${stage.id} comes after ${before.id}.`, `Order: ${STAGE_ORDER.join(", ")}.`)];
  });
}

function stageHit(id: StageId, what: string, remedy: string): LintHit {
  return hit("stages-missing-or-out-of-order", { what: "stage", id }, { what, remedy });
}

// A time to keep, in words: "wait", "for 5 minutes". Limits such as "within 1 minute" belong to prime timers.
const NAMES_A_TIME =
  /\bwait\b|\b(for|within)\s+(\w+\s+)?(\d+|one|two|three|five|ten)\s*(s|sec|seconds|min|minutes?)\b/i;

function timeHits(step: Step): readonly LintHit[] {
  const of = { what: "step", id: step.id } as const;
  const untimed = { what: "It names a time and has no timer.", remedy: "Add a `timer`: wait, run or prime." };
  const short = { what: "It takes fewer minutes than its own timer.", remedy: "Raise `minutes`." };
  const isStoodBy = step.timer && "atLeast" in step.timer && !isLeftAlone(step);
  const least = isStoodBy ? step.timer.atLeast : 0;
  return [
    ...(NAMES_A_TIME.test(step.text) && step.timer === undefined ? [hit("time-missing", of, untimed)] : []),
    ...(step.needs.minutes * 60 < least ? [hit("time-too-short", of, short)] : []),
  ];
}

function delivery(pattern: Pattern): readonly LintHit[] {
  if (!pattern.hydraulics || allSteps(pattern).some((step) => step.measuresDelivery)) return [];
  const what = "The pump's curve is given and no step measures delivery.";
  const remedy = "Set `measuresDelivery` on a step of the run.";
  return [{ rule: "delivery-never-measured", where: "stage run", what, remedy, of: { what: "stage", id: "run" } }];
}
