import type { Pattern } from "#kit";
import type { KitState } from "../state.ts";

/**
 * True where an item is reached only by breaking the seal that is on the kit now. An item of which the pattern does not say
 * that it is outside, or whose pattern is not to be had, is inside.
 */
export function isBehindSeal(
  { seal, turnaround }: Pick<KitState, "seal" | "turnaround">,
  pattern: Pattern | undefined,
  item: string,
): boolean {
  if (seal === undefined || turnaround !== undefined) return false;
  return pattern?.items.find(({ id }) => id === item)?.place !== "outside";
}
