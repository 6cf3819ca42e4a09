import { daysBetween, formatSpan } from "#base";
import type { Words } from "#words";
import type { Item, Pattern } from "#kit";
import { datesOf, fuelItemOf, lastGoodDay, type KitState, type StationPolicy } from "#readiness";
import { sayDate } from "#web/parts/words/say-time.ts";

type HistoryWords = Words["kitHistory"];

/** One item of a kit as it is fitted now. */
export interface ContentLine {
  readonly item: Item;
  /** Absent where the log does not say that it is in the kit. */
  readonly quantity?: number;
  readonly fitted?: string;
  readonly printed?: string;
  /** Day it was made, where that was read off it. */
  readonly made?: string;
  /** True where somebody looked for its date and could not read one. */
  readonly cannot?: true;
  readonly batch?: string;
  /** Last day on which it is good. */
  readonly good: string | "never" | "unknown";
  /** Days from today to that day; negative once it is past. */
  readonly daysLeft?: number;
}

/** The items of one place in the container. */
export interface ContentPlace {
  readonly id: string;
  readonly name: string;
  readonly lines: readonly ContentLine[];
}

/** What is in the kit, place by place in stowing order; a place with nothing in it is left out. */
export function contentsByPlace(
  kit: KitState,
  pattern: Pattern,
  policy: StationPolicy,
  today: string,
): readonly ContentPlace[] {
  const fuel = fuelItemOf(pattern);
  const lines = pattern.items.map((item) => {
    const dates = datesOf(kit, item, pattern);
    const good = lastGoodDay(item, dates, item === fuel ? policy.fuelAge : undefined);
    return { ...fittedAs(kit, item), ...dates, good, ...daysTo(good, today) };
  });
  return pattern.container.places
    .map(({ id, name }) => ({ id, name, lines: lines.filter(({ item }) => item.place === id) }))
    .filter((place) => place.lines.length > 0);
}

function fittedAs(kit: KitState, item: Item): Pick<ContentLine, "item" | "quantity" | "batch"> {
  const fitted = kit.contents[item.id];
  if (!fitted) return isCounted(kit) ? { item, quantity: item.quantity } : { item };
  return { item, quantity: fitted.quantity, ...(fitted.batch !== undefined && { batch: fitted.batch }) };
}

/** A whole turnaround counted and put back everything; what was amiss stands as a finding. */
function isCounted(kit: KitState): boolean {
  return kit.turnarounds.some(({ closed }) => closed?.how === "sealed");
}

function daysTo(good: string, today: string): Pick<ContentLine, "daysLeft"> {
  return good === "never" || good === "unknown" ? {} : { daysLeft: daysBetween(today, good) };
}

/** How long an item is still good, in words first: "109 days left, until 14 March 2027". Nothing for what has no life. */
export function sayGood(
  { item, good, daysLeft, cannot }: Pick<ContentLine, "item" | "good" | "daysLeft" | "cannot">,
  words: HistoryWords,
): string {
  if (item.life.kind === "single-use") return words.newEach();
  if (good === "never") return "";
  if (good === "unknown") return cannot ? words.noDateReadable() : words.noDate();
  const [days, day] = [daysLeft ?? 0, sayDate(good)];
  if (days < 0) return words.outOfDate({ count: -days, day });
  return days === 0 ? words.lastDayUntil({ day }) : words.leftUntil({ left: sayDaysOff(days, words), day });
}

/** How far off a day is: "109 days", and from two years on "about 8 years". */
export function sayDaysOff(days: number, words: HistoryWords): string {
  return days < 2 * 365 ? words.days({ count: days }) : words.aboutYears({ count: Math.floor(days / 365.25) });
}

/** What an item's life is counted by. */
export function sayLife({ life }: Item, words: HistoryWords): string {
  switch (life.kind) {
    case "printed":
      return words.byPrinted();
    case "fitted":
      return words.fromFitting({ span: formatSpan(life.span) });
    case "single-use":
      return words.usedUp();
    case "none":
      return "";
  }
}

/** True for an item that has no life and is there in full, or was not counted yet: its name says all. */
export function isPlain({ item, quantity = item.quantity, good }: ContentLine): boolean {
  return item.life.kind === "none" && good === "never" && quantity === item.quantity;
}

/** Such an item in a line of others: "tank straps, 2". */
export function sayPlain({ item, quantity = item.quantity }: ContentLine): string {
  return quantity === 1 ? item.name : `${item.name} (${quantity})`;
}
