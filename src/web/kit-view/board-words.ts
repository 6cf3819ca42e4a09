import { sayDuration } from "#words";
import { formatDate, daysBetween } from "#base";
import { sayCount } from "../parts/words/say-count.ts";
import type { Shortfall, Standing, Strength } from "#readiness";

/** "4 ready (1 with limits) of 5 wanted, 1 short". */
export function sayStrength({ must, holds, withLimits, short }: Strength): string {
  const ready = `${holds} ready${withLimits > 0 ? ` (${withLimits} with limits)` : ""}`;
  if (must === 0) return `${ready}, none wanted`;
  return `${ready} of ${must} wanted${short > 0 ? `, ${short} short` : ""}`;
}

/** Until when a standing holds, and what ends it. Undefined where nothing dated will. */
export function sayUntil({ lapse }: Pick<Standing, "lapse">, today: string): string | undefined {
  return lapse && `Until ${sayDayAhead(lapse.day, today)}: ${lapse.what}`;
}

/** A day with how far off it is: "14 March 2027 (109 days)". */
export function sayDayAhead(day: string, today: string): string {
  const days = daysBetween(today, day);
  return `${formatDate(day)} (${days === 0 ? "today" : sayCount(days, "day")})`;
}

/** What would make it ready again, and how long that takes; at most so many things by name. */
export function sayRestore({ restore }: Pick<Standing, "restore">, most: number): string | undefined {
  const { what, minutes } = restore;
  if (what.length === 0) return undefined;
  const more = what.length > most ? ` And ${sayCount(what.length - most, "more thing")}.` : "";
  return `${what.slice(0, most).join(" ")}${more}${minutes > 0 ? ` About ${sayDuration(60 * minutes, "needed")}.` : ""}`;
}

/** When a place falls short: "now, until 3 March 2027: 4 ready of 5". */
export function sayShortfall({ from, to, holds, must }: Shortfall, today: string, last: string): string {
  const begins = from <= today ? "now" : `from ${formatDate(from)}`;
  const ends = to >= last ? "" : from <= today ? `, until ${formatDate(to)}` : ` to ${formatDate(to)}`;
  return `${begins}${ends}: ${holds} ready of ${must}`;
}
