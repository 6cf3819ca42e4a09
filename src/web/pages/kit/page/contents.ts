import { daysBetween, formatDate, formatSpan } from "#base";
import type { Item, Pattern } from "#kit";
import { datesOf, fuelItemOf, lastGoodDay, type KitState, type StationPolicy } from "#readiness";
import { sayCount } from "#web/parts/words/say-count.ts";

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
export function sayGood({
  item,
  good,
  daysLeft,
  cannot,
}: Pick<ContentLine, "item" | "good" | "daysLeft" | "cannot">): string {
  if (item.life.kind === "single-use") return "New at each restow";
  if (good === "never") return "";
  if (good === "unknown") return cannot ? "No date can be read on it" : "No date on record";
  const days = daysLeft ?? 0;
  if (days < 0) return `Out of date for ${sayCount(-days, "day")}, good until ${formatDate(good)}`;
  return `${days === 0 ? "Last day today" : `${sayDaysOff(days)} left`}, until ${formatDate(good)}`;
}

/** How far off a day is: "109 days", and from two years on "about 8 years". */
export function sayDaysOff(days: number): string {
  return days < 2 * 365 ? sayCount(days, "day") : `about ${sayCount(Math.floor(days / 365.25), "year")}`;
}

/** What an item's life is counted by. */
export function sayLife({ life }: Item): string {
  switch (life.kind) {
    case "printed":
      return "by the date printed on it";
    case "fitted":
      return `${formatSpan(life.span)} from fitting`;
    case "single-use":
      return "used up by opening";
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
