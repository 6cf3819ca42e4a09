import { sayDuration, type Words } from "#words";
import { daysBetween } from "#base";
import { sayDate } from "../parts/words/say-time.ts";
import type { Shortfall, Strength, StandingInWords } from "#readiness";

type LineWords = Words["kitLine"];

/** "4 ready (1 with limits) of 5 wanted, 1 short". */
export function sayStrength({ must, holds, withLimits, short }: Strength, words: LineWords): string {
  const ready =
    withLimits > 0 ? words.readyLimited({ count: holds, limited: withLimits }) : words.ready({ count: holds });
  if (must === 0) return words.noneWanted({ ready });
  return short > 0 ? words.ofWantedShort({ ready, must, short }) : words.ofWanted({ ready, must });
}

/** Until when a standing holds, and what ends it. Undefined where nothing dated will. */
export function sayUntil(
  { lapse }: Pick<StandingInWords, "lapse">,
  today: string,
  words: LineWords,
): string | undefined {
  return lapse && words.until({ day: sayDayAhead(lapse.day, today, words), what: lapse.what });
}

/** A day with how far off it is: "14 March 2027 (109 days)". */
export function sayDayAhead(day: string, today: string, words: LineWords): string {
  return words.dayAhead({ day: sayDate(day), days: daysBetween(today, day) });
}

/** What would make it ready again, and how long that takes; at most so many things by name. */
export function sayRestore(
  { restore }: Pick<StandingInWords, "restore">,
  most: number,
  words: LineWords,
): string | undefined {
  const { what, minutes } = restore;
  if (what.length === 0) return undefined;
  const more = what.length > most ? [words.moreThings({ count: what.length - most })] : [];
  const about = minutes > 0 ? [words.about({ duration: sayDuration(60 * minutes, "needed") })] : [];
  return [...what.slice(0, most), ...more, ...about].join(" ");
}

/** When a place falls short: "now, until 3 March 2027: 4 ready of 5". */
export function sayShortfall(
  { from, to, holds, must }: Shortfall,
  { today, last, words }: { readonly today: string; readonly last: string; readonly words: LineWords },
): string {
  const told = { from: sayDate(from), until: sayDate(to), holds, must };
  if (from <= today) return to >= last ? words.shortNow(told) : words.shortNowUntil(told);
  return to >= last ? words.shortFrom(told) : words.shortFromTo(told);
}
