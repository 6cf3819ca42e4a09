import { stepNamed, type Check, type Pattern, type Step } from "#kit";
import type { Value } from "../kinds/schema-parts.ts";
import type { Turnaround } from "../state.ts";

interface Measuring {
  readonly turnaround: Pick<Turnaround, "measured">;
  readonly pattern: Pattern;
}

/** The share is told in whole percent: what is typed off a card may differ by half of one. */
const ROUNDED = 0.005 + 1e-9;

/** True where delivery is measured at a step: the pattern asks it, and has the figures to work it out from. */
export function measuresDelivery(pattern: Pattern, step: Pick<Step, "measuresDelivery">): boolean {
  return step.measuresDelivery && pattern.hydraulics !== undefined;
}

/** True while a step at which delivery is measured has no measurement written down: it cannot be answered as seen. */
export function isToMeasure({ turnaround, pattern }: Measuring, id: string): boolean {
  const step = stepNamed(pattern, id);
  if (!step || !measuresDelivery(pattern, step)) return false;
  return !turnaround.measured.some((one) => one.step === id);
}

/** The check of such a step that is answered with the share of what was expected. */
export function isShare(pattern: Pattern, id: string, check: Check | undefined): boolean {
  const step = stepNamed(pattern, id);
  return step !== undefined && measuresDelivery(pattern, step) && isRatio(check);
}

/** True where a reading is the share worked out last at its step, or is no such share. */
export function isOfMeasured(at: Measuring, id: string, check: Check | undefined, value: Value | undefined): boolean {
  if (value === undefined || !isShare(at.pattern, id, check)) return true;
  const last = at.turnaround.measured.findLast(({ step }) => step === id);
  return last !== undefined && value.kind === "quantity" && Math.abs(value.si - last.ratio) <= ROUNDED;
}

function isRatio(check: Check | undefined): boolean {
  return check?.kind === "measure" && check.dimension === "ratio";
}
