import { dayNumber, type PlainDate } from "#base";
import type { NextOpening } from "#readiness";
import { inWords, type Words } from "#words";
import { sayDate } from "#web/parts/words/say-time.ts";
import { sayLong } from "../interval/interval-words.ts";
import type { LivesWords } from "./lives-words.ts";

/** Which opening the next one of a kit is, and when. */
export function sayNextOpening(
  next: NextOpening | undefined,
  today: PlainDate,
  { lives: words, interval }: LivesWords,
  standing: Words["standing"],
): string {
  if (next === undefined) return words.nextNone();
  if (next.kind === "now") return words.nextNow();
  const on = { day: sayDate(next.day), span: sayLong(dayNumber(next.day) - dayNumber(today), interval) };
  switch (next.kind) {
    case "given":
      return words.next({ what: words.nextGiven(on) });
    case "planned":
      return words.next({ what: words.nextPlanned(on) });
    case "accepted":
      return words.next({ what: words.nextAccepted(on) });
    case "grounds":
      return words.next({ what: words.nextGrounds({ ...on, ends: inWords(next.ends, standing) }) });
  }
}
