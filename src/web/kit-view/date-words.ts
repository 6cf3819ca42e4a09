import { sayDate } from "../parts/words/say-time.ts";
import type { Words } from "#words";
import type { Item, Pattern } from "#kit";
import { datesRead, lastGoodDay, nextTurnaround, type DateRead, type KitState, type StationPolicy } from "#readiness";
import { writePrinted } from "../act/reading.ts";

type DateWords = Words["dates"];

const WHEN = { printed: "whenPrinted", fitted: "whenFitted", made: "whenMade" } as const;

/** What a date on an item says, as a person picks it. */
export function whenItWas(of: DateRead["of"], words: DateWords): string {
  return words[WHEN[of]]();
}

/** Which dates can count for an item: the maker's last day, or when it was fitted or made. */
export function datesFor({ life }: Item): readonly DateRead["of"][] {
  return life.kind === "printed" ? ["printed"] : ["fitted", "made"];
}

/** What is on record of an item's date: "Fitted 1 June 2025", or that it cannot be read. */
export function sayRead(kit: KitState, item: Item, words: DateWords, parts: Words["parts"]): string {
  const { cannot, printed, fitted, made, told: isTold } = kit.dates?.[item.id] ?? {};
  const told = (["printed", "fitted", "made"] as const).flatMap((of) => {
    const date = { printed, fitted, made }[of];
    return date === undefined ? [] : [words[of]({ day: writePrinted(date, parts) })];
  });
  if (told.length > 0) return isTold ? words.bySheet({ dates: told.join(", ") }) : told.join(", ");
  return cannot ? words.lookedNone() : words.noDate();
}

/**
 * Until when an item is good by a date being read, and whether that is before the next turnaround; nothing where the date
 * gives no day.
 */
export function sayLasts(
  item: Item,
  read: DateRead,
  around: { readonly pattern: Pattern; readonly policy: StationPolicy; readonly today: string },
  words: DateWords,
): { readonly words: string; readonly tooSoon: boolean } | undefined {
  const { pattern, policy, today } = around;
  const good = lastGoodDay(item, datesRead(read));
  if (good === "never" || good === "unknown") return undefined;
  const due = nextTurnaround(pattern, policy, today);
  const day = sayDate(good);
  if (good < today) return { words: words.wasGood({ day }), tooSoon: true };
  if (due === undefined || good >= due) return { words: words.goodUntil({ day }), tooSoon: false };
  return { words: words.tooSoon({ day, due: sayDate(due) }), tooSoon: true };
}
