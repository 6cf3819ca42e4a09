import { addSpan, daysBetween, parseSpan } from "#base";
import { lotsUsed, usedPerYear, type LotUsed, type Stock, type StockPart } from "#readiness";

/** A span of the calendar from a day on, in days: "3 months" is 92 from 1 June. */
function daysOfSpan(span: string, from: string): number {
  return daysBetween(from, addSpan(from, parseSpan(span)));
}

/** How much of a part is used, and in which sizes. */
export interface PartUse {
  readonly perYear: number | undefined;
  readonly lots: readonly LotUsed[];
}

/** What the log tells of a part's use. */
export function useOf(stock: Stock, { id }: StockPart, today: string): PartUse {
  const shelves = [...(stock.get(id)?.values() ?? [])];
  return { perYear: usedPerYear(shelves, today), lots: lotsUsed(shelves) };
}

/** What `spares` is asked of a part's use; undefined where its use or its time to come is not on record. */
export function demandOf({ id, leadTime }: StockPart, { perYear, lots }: PartUse, today: string) {
  if (perYear === undefined || leadTime === undefined) return undefined;
  return { name: id, perYear, leadTime: `${daysOfSpan(leadTime, today)} days`, ...lotsAsked(lots) };
}

/** Larger lots, and more sizes, the question does not take. */
const LARGEST = 100;
const MOST_SIZES = 20;

/** In which sizes a part is wanted, as `spares` takes it; nothing where all were used one at a time. */
function lotsAsked(used: readonly LotUsed[]) {
  if (used.every(({ size }) => size === 1)) return {};
  const told = used.toSorted((one, other) => other.times - one.times).slice(0, MOST_SIZES);
  return { lots: told.map(({ size, times }) => ({ size: Math.min(LARGEST, size), share: times })) };
}
