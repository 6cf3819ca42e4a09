import { addDays, formatDate, type PlainDate } from "#base";
import { WEEK } from "./station.ts";

/**
 * Weeks of a plan by the day of their Monday: "the week of 12 January 2026", "the weeks of 12 January 2026 to 26 January 2026
 * and of 9 February 2026".
 *
 * @param start - the Monday of week 0
 * @param weeks - from 0, rising
 * @example
 * sayWeeks("2026-01-12", [0, 1, 4]); // "the weeks of 12 January 2026 to 19 January 2026 and of 9 February 2026"
 */
export function sayWeeks(start: PlainDate, weeks: readonly number[]): string {
  const runs: [number, number][] = [];
  for (const week of weeks) {
    const last = runs.at(-1);
    if (last && last[1] === week - 1) last[1] = week;
    else runs.push([week, week]);
  }
  const day = (week: number) => formatDate(addDays(start, WEEK * week));
  const words = runs.map(([from, to]) => (from === to ? `of ${day(from)}` : `of ${day(from)} to ${day(to)}`));
  const text = words.length > 1 ? `${words.slice(0, -1).join(", ")} and ${words.at(-1)}` : words[0];
  return `the ${weeks.length > 1 ? "weeks" : "week"} ${text}`;
}
