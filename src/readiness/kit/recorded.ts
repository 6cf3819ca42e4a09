import type { Check } from "#kit";
import type { KitState, Turnaround } from "../state.ts";

/**
 * What stands on record for a check that is held against it: the seal, the kit's own serial, or the
 * number read off the same thing last time.
 *
 * @param kit - the kit as it stands
 * @param turnaround - the one it is asked in; the kit's own seal where it is asked in none
 * @returns undefined where the check is held against no record, or none stands there: seen for the first time, it is kept
 */
export function recordedFor(check: Check | undefined, kit: KitState, turnaround?: Turnaround): string | undefined {
  if (check?.kind !== "match" || check.against === undefined) return undefined;
  if (check.against === "recorded-tag") return tagOf(kit, check);
  if (check.against === "recorded-serial") return kit.serial;
  return turnaround ? turnaround.opened.sealOnRecord : kit.seal?.number;
}

/** The newest number read and found right on the thing that is still in the kit; one fitted since has none yet. */
function tagOf(kit: KitState, check: Check): string | undefined {
  const read = kit.turnarounds.flatMap(({ answers }) => Object.values(answers));
  const last = read.filter((one) => one.check === check.id && one.answer === "seen" && one.value).at(-1);
  const fitted = kit.contents[check.item]?.mark.at;
  if (!last || (fitted !== undefined && Date.parse(fitted) > Date.parse(last.mark.at))) return undefined;
  if (last.value?.kind === "match") return last.value.first;
  return last.value?.kind === "text" ? last.value.text : undefined;
}
