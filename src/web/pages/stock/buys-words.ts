import type { StockPart } from "#readiness";
import { daysOfSpan } from "./lead-days.ts";

/** The answer of the question `spares`, as far as it is shown. */
export interface BuysAnswer {
  readonly items: readonly {
    readonly name: string;
    readonly stock: number;
    readonly toBuy?: number;
    readonly emptyPerYear?: { readonly now: number; readonly after: number };
  }[];
  readonly purchases?: readonly { readonly cost: number }[];
  readonly exact: boolean;
}

/** Most of one part that the question takes as held. */
const MOST_HELD = 2000;

/** What `spares` is asked of a part; undefined where its price, use or time to come is not on record. */
export function askedOf({ id, cost, leadTime }: StockPart, perYear: number | undefined, held: number, today: string) {
  if (perYear === undefined || leadTime === undefined || cost === undefined || cost <= 0) return undefined;
  return { name: id, perYear, leadTime: `${daysOfSpan(leadTime, today)} days`, cost, stock: Math.min(MOST_HELD, held) };
}

/** Name of a part that is left out, and what is missing of it. */
export function leftOut({ name, cost, leadTime }: StockPart): readonly string[] {
  const missing = [
    ...(cost === undefined || cost <= 0 ? ["price"] : []),
    ...(leadTime === undefined ? ["time to come"] : []),
  ];
  return [`${name} (${missing.length === 0 ? "90 days of use" : missing.join(", ")})`];
}

/** Parts left out, and why. */
export function sayLeftOut(missing: readonly string[]): string | undefined {
  return missing.length === 0 ? undefined : `Left out, for want of what stands in brackets: ${missing.join("; ")}.`;
}

/** Change that shows in the table, and about once in twenty years [1/year]. Judgement. */
const SHOWS = 0.05;

/** What is bought that changes something, and what the sum would buy beside it that does not show. */
export function worthBuying({ items }: BuysAnswer): { readonly worth: BuysAnswer["items"]; readonly idle: number } {
  const bought = items.filter(({ toBuy = 0 }) => toBuy > 0);
  const worth = bought.filter(({ emptyPerYear }) => !emptyPerYear || emptyPerYear.now - emptyPerYear.after >= SHOWS);
  return { worth, idle: bought.length - worth.length };
}

/** What stands beside the table: what comes before it, how it counts, and what is not shown. */
export function sayBeside(idle: number): string {
  const first =
    "What is wanted today stands under To order: get that first. All shelves of the station are taken as one.";
  if (idle === 0) return first;
  const others = idle === 1 ? "One more part that the sum could buy" : `${idle} more parts that the sum could buy`;
  return `${first} ${others} would change less than once in twenty years: not shown.`;
}

/** What the sum buys: how many fewer demands a year find the shelf empty, each a kit that waits or another that is robbed. */
export function sayBought({ items, purchases = [], exact }: BuysAnswer): string {
  const [now, after] = (["now", "after"] as const).map((when) =>
    items.reduce((sum, { emptyPerYear }) => sum + (emptyPerYear?.[when] ?? 0), 0),
  );
  const spent = purchases.at(-1)?.cost ?? 0;
  const before = `With what is on the shelves, a part is wanted and not there about ${(now ?? 0).toFixed(1)} times a year, and a kit waits or another is robbed of it.`;
  if (spent === 0) return `${before} This sum buys nothing that would change it.`;
  const other = exact ? "" : " Another choice may be a little better.";
  return `${before} ${spent.toFixed(2)} spent so makes that about ${(after ?? 0).toFixed(1)}: ${((now ?? 0) - (after ?? 0)).toFixed(1)} fewer, by the use on record.${other}`;
}
