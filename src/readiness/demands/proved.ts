import { startCheckOf, type Pattern } from "#kit";
import type { KitState, Turnaround } from "../state.ts";
import type { Demand } from "./demand.ts";
import { openingsOf } from "./openings.ts";

/**
 * When a kit last started and gave water: at the last demand that worked, or where a start that failed was mended and
 * proved in the same opening, at that proof. An opening that was not sealed again proves nothing, nor does a drill's.
 *
 * @param kit - as its entries tell it
 * @param pattern - it is built to
 * @param demands - of it, oldest first
 * @returns RFC 3339; undefined where it never did
 */
export function lastProved(
  kit: Pick<KitState, "turnarounds" | "turnaround" | "runs">,
  pattern: Pattern | undefined,
  demands: readonly Demand[],
): string | undefined {
  const worked = demands.flatMap(({ worked: has, at }) => (has ? [at] : []));
  const check = pattern && startCheckOf(pattern)?.id;
  const failed = demands.filter((one) => !one.worked && one.on === "turnaround");
  const mended = failed.length === 0 ? [] : openingsOf(kit).flatMap((opening) => mendedIn(opening, check, failed, kit));
  return [...worked, ...mended].toSorted((one, other) => Date.parse(one) - Date.parse(other)).at(-1);
}

/** When a start that failed in an opening was answered as right in the end; nothing where it was not, or gave no water. */
function mendedIn(
  { id, opened, closed, drill, answers }: Turnaround,
  check: string | undefined,
  failed: readonly Demand[],
  { runs }: Pick<KitState, "runs">,
): readonly string[] {
  if (drill !== undefined || closed?.how !== "sealed" || check === undefined) return [];
  const [from, to] = [Date.parse(opened.at), Date.parse(closed.at)];
  const isHere = failed.some(({ at }) => Date.parse(at) >= from && Date.parse(at) <= to);
  const isDry = runs.some((run) => run.turnaround === id && run.primed === false);
  const last = Object.values(answers).find((one) => one.check === check && one.answer === "seen");
  return isHere && !isDry && last ? [last.mark.at] : [];
}
