import type { Check } from "#kit";
import type { KitState } from "../state.ts";

/**
 * The newest reading of a measurement that is made once: from a closed turnaround of this kit, and not older than the
 * item itself, which is measured again where a new one was fitted since.
 *
 * @param kit - the kit as it stands
 * @param step - id of the step that asks the check
 * @returns undefined where it has to be measured, or is measured every time
 */
export function measuredBefore(kit: KitState, step: string, check: Check) {
  if (check.kind !== "measure" || check.once !== true) return undefined;
  const read = kit.turnarounds.map(({ answers }) => answers[`${step}/${check.id}`]);
  const last = read.findLast((one) => one?.answer === "seen" && one.value !== undefined);
  const fitted = kit.contents[check.item]?.fitted;
  const isRenewed = fitted !== undefined && last !== undefined && fitted > last.mark.at.slice(0, fitted.length);
  return isRenewed ? undefined : last;
}
