import type { Fault } from "#base";
import { seenGate, stepsFor, type KitState, type Turnaround } from "#readiness";
import { sayDuration } from "#words";
import type { ActContext } from "../acts/draft.ts";
import { patternOf } from "../acts/turnaround-acts.ts";
import { because } from "../judging/faults.ts";

/**
 * What was named is not seen done while a clock of a line that it covers still runs: whoever says so beforehand says what
 * nobody can have seen. A turnaround that is closed waits for nothing.
 *
 * @param named - id of the line in which the second person was named
 */
export function clockNotOver(
  doing: ActContext,
  kit: KitState,
  { turnaround: id, named }: { readonly turnaround: string; readonly named: string },
): Fault | undefined {
  const open = [kit.turnaround, ...(kit.otherTurnarounds ?? [])].find((one) => one?.id === id);
  const left = open && leftToRun(doing, kit, open, named);
  if (left === undefined) return undefined;
  const remedy = "Stay with it until its clock is over, then say that you saw it.";
  return because(
    "SN-234",
    "body.named",
    `line ${left.line}, ${sayDuration(Math.ceil(left.seconds))} left`,
    "a line whose clock is over",
    remedy,
  );
}

/** The first line under the qualification whose clock runs. */
function leftToRun(doing: ActContext, kit: KitState, turnaround: Turnaround, named: string) {
  const pattern = patternOf(doing, kit);
  const said = turnaround.seconds?.find(({ entry }) => entry === named);
  const qualification = doing.qualifications?.find(({ id }) => id === said?.qualification);
  if (!pattern || !qualification) return undefined;
  return stepsFor(qualification, pattern).flatMap((step) => {
    const timer = turnaround.timers[step.id];
    const gate = timer?.started === undefined ? undefined : seenGate(step, timer, doing.now);
    return gate && !gate.open && gate.because === "not-over" ? [{ line: step.line, seconds: gate.left }] : [];
  })[0];
}
