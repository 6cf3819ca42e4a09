import { formatDate } from "#base";
import type { Item, Pattern } from "#kit";
import { datesRead, lastGoodDay, nextTurnaround, type DateRead, type KitState, type StationPolicy } from "#readiness";
import { writePrinted } from "../act/reading.ts";

/** What a date on an item says, as a person picks it. */
export const DATE_OF: Readonly<Record<DateRead["of"], string>> = {
  printed: "Good until",
  fitted: "Fitted",
  made: "Made",
};

/** Which dates can count for an item: the maker's last day, or when it was fitted or made. */
export function datesFor({ life }: Item): readonly DateRead["of"][] {
  return life.kind === "printed" ? ["printed"] : ["fitted", "made"];
}

/** What is on record of an item's date: "Fitted 1 June 2025", or that it cannot be read. */
export function sayRead(kit: KitState, item: Item): string {
  const { cannot, printed, fitted, made, told: isTold } = kit.dates?.[item.id] ?? {};
  const told = (["printed", "fitted", "made"] as const).flatMap((of) => {
    const date = { printed, fitted, made }[of];
    return date === undefined ? [] : [`${DATE_OF[of]} ${writePrinted(date)}`];
  });
  if (told.length > 0) return `${told.join(", ")}${isTold ? ", as a sheet tells" : ""}`;
  return cannot ? "Looked at: no date can be read" : "No date on record";
}

/**
 * Until when an item is good by a date being read, and whether that is before the next turnaround; nothing where the date
 * gives no day.
 */
export function sayLasts(
  item: Item,
  read: DateRead,
  around: { readonly pattern: Pattern; readonly policy: StationPolicy; readonly today: string },
): { readonly words: string; readonly tooSoon: boolean } | undefined {
  const { pattern, policy, today } = around;
  const good = lastGoodDay(item, datesRead(read));
  if (good === "never" || good === "unknown") return undefined;
  const due = nextTurnaround(pattern, policy, today);
  if (good < today) return { words: `Out of date: its last good day was ${formatDate(good)}.`, tooSoon: true };
  if (due === undefined || good >= due) return { words: `Good until ${formatDate(good)}.`, tooSoon: false };
  const words = `Good until ${formatDate(good)}, and the next turnaround is due by ${formatDate(due)}: renew it now or before.`;
  return { words, tooSoon: true };
}
