import { formatSpan, parseSpan, type Fault, type Span } from "#base";
import type { Pattern } from "#kit";
import type { Bodies } from "#readiness";
import { because } from "../judging/faults.ts";
import { daysIn } from "./span-days.ts";

/** The longest interval that any version here allows: the shortest that one of them states; undefined where none does. */
export function longestFor(patterns: Iterable<Pattern>, id: string): Span | undefined {
  const spans = [...patterns].flatMap((one) => (one.id === id ? (one.policy.turnaround ?? []) : []));
  return spans.toSorted((one, other) => daysIn(one) - daysIn(other))[0];
}

/**
 * Faults of an interval that somebody accepts: the unit's own manual stands first. The screen asks it before the line is
 * written, the station when it arrives.
 *
 * @param body - what is accepted; nothing to say where it goes back to the manual's
 * @param patterns - every version that the station has
 * @param where - put before the names of fields, such as "body."
 * @returns SN-261 longer than the manual's, SN-263 no such pattern
 */
export function openingFaults(
  { pattern, every }: Pick<Bodies["opening-interval-set"], "pattern" | "every">,
  patterns: readonly Pattern[],
  where = "",
): readonly Fault[] {
  if (every === undefined) return [];
  if (!patterns.some(({ id }) => id === pattern)) {
    const allowed = "a pattern of this station";
    return [because("SN-263", `${where}pattern`, pattern, allowed, "Choose one that is here.")];
  }
  const manual = longestFor(patterns, pattern);
  if (!manual || daysIn(parseSpan(every)) <= daysIn(manual) + 1e-9) return [];
  const allowed = `at most ${formatSpan(manual)}, as the unit's manual has it`;
  return [because("SN-261", `${where}every`, every, allowed, "Take the manual's own interval.")];
}
