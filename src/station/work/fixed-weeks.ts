import { addDays, daysBetween, weekdayOf, type PlainDate } from "#base";
import { flushDue, type KitState } from "#readiness";
import type { WorkStation } from "./able.ts";

const SUNDAY = 7;
const DAYS = 7;

/** An opening that planning goes round. */
export interface FixedWeek {
  readonly kit: string;
  readonly week: number;
  /** Weeks, both ends in, in which the kit is opened in no other: this one takes the place of what was planned there. */
  readonly instead?: { readonly from: number; readonly to: number };
}

/** Monday of today's week; on a Sunday, when nothing of the week is left to work in, the next. */
export function firstMonday(today: PlainDate): PlainDate {
  const day = weekdayOf(today);
  return addDays(today, day === SUNDAY ? 1 : 1 - day);
}

/**
 * Openings that stand before the year is planned: a kit that wants its first flush is opened this week, one that was given a
 * day in that day's week, and an accepted one that a person fixed stays in its own. Each takes the place of the one that was
 * planned for it.
 */
export function fixedWeeks(
  { kits, patterns }: Pick<WorkStation, "kits" | "patterns">,
  { today, weeks }: { readonly today: PlainDate; readonly weeks: number },
): readonly FixedWeek[] {
  const start = firstMonday(today);
  const fixed = kits.filter(({ retired }) => !retired).flatMap((kit) => fixedOf(kit, start, patterns));
  return fixed.filter(({ week }) => week < weeks);
}

function fixedOf(kit: KitState, start: PlainDate, patterns: WorkStation["patterns"]): readonly FixedWeek[] {
  const weekOf = (day: PlainDate) => Math.floor(daysBetween(start, day) / DAYS);
  const planned = (kit.planned?.openings ?? [])
    .map(({ week, fixed }) => ({ week: weekOf(week), isFixed: fixed === true }))
    .filter(({ week }) => week >= 0);
  const first = firstWeek(kit, patterns, weekOf);
  const rest = first === undefined ? planned : planned.slice(1).filter(({ week }) => week !== first);
  const later = rest.flatMap(({ week, isFixed }, at) => {
    if (!isFixed) return [];
    const before = rest[at - 1]?.week ?? first ?? -1;
    return [{ kit: kit.id, week, instead: between(before, week, rest[at + 1]?.week) }];
  });
  if (first === undefined) return later;
  return [{ kit: kit.id, week: first, instead: between(-1, first, rest[0]?.week) }, ...later];
}

/** The week of the opening that is due, where people or salt water have settled it. */
function firstWeek(
  kit: KitState,
  patterns: WorkStation["patterns"],
  weekOf: (day: PlainDate) => number,
): number | undefined {
  const pattern = patterns.get(kit.pattern);
  const day = kit.work?.opening?.day?.day;
  if (day !== undefined) return Math.max(0, weekOf(day));
  return pattern && flushDue(kit, pattern) ? 0 : undefined;
}

function between(before: number, week: number, after: number | undefined): { from: number; to: number } {
  return { from: before + 1, to: Math.max(week, (after ?? week + 1) - 1) };
}
