import { sayCost } from "#web/kit-view/say-cost.ts";
import type { StationHolding, StockPart } from "#readiness";
import { demandOf, type PartUse } from "./spares-asked.ts";
import type { Words } from "#words";

/** The answer of the question `spares`, as far as it is shown. */
export interface BuysAnswer {
  readonly items: readonly {
    readonly name: string;
    readonly stock: number;
    readonly toBuy?: number;
    readonly emptyPerYear?: { readonly now: number; readonly after: number };
  }[];
  readonly purchases?: readonly { readonly name: string; readonly cost: number }[];
  readonly exact: boolean;
  /** Where not exact: parts waited for at any time that a better choice could save at most. */
  readonly gap?: number;
}

/** Most of one part that the question takes as held. */
const MOST_HELD = 2000;

/**
 * What `spares` is asked of a part; undefined where its price, use or time to come is not on record. What is on its way is
 * bought already.
 */
export function askedOf(part: StockPart, use: PartUse, { usable, onOrder }: StationHolding, today: string) {
  const demand = demandOf(part, use, today);
  const { cost } = part;
  if (demand === undefined || cost === undefined || cost <= 0) return undefined;
  return { ...demand, cost, stock: Math.min(MOST_HELD, usable + onOrder) };
}

/** What the station has of a part, and what is on its way. */
export function sayHeld({ usable, onOrder }: StationHolding, words: Words["stock"]): string {
  return onOrder === 0 ? `${usable}` : words.heldAndComing({ usable, onOrder });
}

/** Name of a part that is left out, and what is missing of it. */
export function leftOut({ name, cost, leadTime }: StockPart, words: Words["stock"]): readonly string[] {
  const missing = [
    ...(cost === undefined || cost <= 0 ? [words.price()] : []),
    ...(leadTime === undefined ? [words.timeToCome()] : []),
  ];
  return [`${name} (${missing.length === 0 ? words.daysOfUse() : missing.join(", ")})`];
}

/** Parts left out, and why. */
export function sayLeftOut(missing: readonly string[], words: Words["stock"]): string | undefined {
  return missing.length === 0 ? undefined : words.leftOut({ parts: missing.join(words.reasonsBetween()) });
}

/** A shelf that is empty when wanted more seldom than this is stocked well enough: once in twenty years [1/year]. Judgement. */
export const ENOUGH = 0.05;

type Item = BuysAnswer["items"][number];

/** What a sum buys, with figures as they are shown: what does not show is not bought. */
export interface Bought {
  readonly rows: readonly Item[];
  readonly spent: number;
  /** Demands in a hundred years that find a shelf empty. */
  readonly now: number;
  readonly after: number;
}

/** Rows that lessen something in the figures shown, what these cost, and how often a shelf is empty before and after them. */
export function boughtOf({ items, purchases = [] }: BuysAnswer): Bought {
  const rows = items.filter(({ toBuy = 0, emptyPerYear }) => toBuy > 0 && (!emptyPerYear || lessens(emptyPerYear)));
  const names = new Set(rows.map(({ name }) => name));
  const costs = purchases.map(({ cost }, i) => cost - (purchases[i - 1]?.cost ?? 0));
  const spent = purchases.reduce((sum, { name }, i) => sum + (names.has(name) ? costs[i]! : 0), 0);
  const total = (of: (item: Item) => number) => items.reduce((sum, item) => sum + of(item), 0);
  return {
    rows,
    spent,
    now: total(({ emptyPerYear }) => hundredths(emptyPerYear?.now ?? 0)),
    after: total(({ name, emptyPerYear }) => hundredths(emptyPerYear?.[names.has(name) ? "after" : "now"] ?? 0)),
  };
}

function lessens({ now, after }: { readonly now: number; readonly after: number }): boolean {
  return hundredths(after) < hundredths(now);
}

function hundredths(perYear: number): number {
  return Math.round(100 * perYear);
}

/** How often a year a shelf is empty when wanted, as the table has it. */
export function sayEmpty(perYear: number): string {
  return (hundredths(perYear) / 100).toFixed(2);
}

/** What the sum buys: how many fewer demands a year find the shelf empty, each a kit that waits or another that is robbed. */
export function sayBought(
  { exact, gap = 0 }: Pick<BuysAnswer, "exact" | "gap">,
  bought: Bought,
  { words, currency }: { readonly words: Words["stock"]; readonly currency: string | undefined },
): string {
  const { spent, now, after } = bought;
  const before = now === 0 ? words.emptyNever() : words.emptyBefore({ now: sayEmpty(now / 100) });
  if (bought.rows.length === 0) return `${before} ${words.buysNothing()}`;
  const counts = {
    spent: sayCost(spent, currency),
    after: sayEmpty(after / 100),
    fewer: sayEmpty((now - after) / 100),
  };
  const changed = `${before} ${after === 0 ? words.emptyNoMore(counts) : words.emptyAfter(counts)}`;
  return exact ? changed : `${changed} ${words.maybeBetter({ gap: gap < 0.01 ? "0.01" : gap.toFixed(2) })}`;
}
