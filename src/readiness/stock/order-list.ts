import { addDays, daysBetween, type PlainDate } from "#base";
import { hereIfOrdered } from "./lead-time.ts";
import { partNeeds, type NeedsAsked, type StockNeed } from "./part-needs.ts";
import type { PartOrder, StockPart } from "./part-state.ts";
import { ShelfAhead } from "./shelf-ahead.ts";
import { partShelf, type PartShelf, type Stock } from "./shelves.ts";

/** Asked of the whole station. */
export interface OrderAsked extends NeedsAsked {
  readonly stock: Stock;
  /** How far it looks ahead [day]. */
  readonly days: number;
}

/** What must be ordered of one part for one place. */
export interface OrderLine {
  readonly part: StockPart;
  readonly place: string;
  /** How many to order. */
  readonly count: number;
  /** Day on which they must be here. */
  readonly want: PlainDate;
  /** Last day on which to order, by the lead time, or the one supposed where none is on record. Past, where it is late already. */
  readonly by: PlainDate;
  readonly shelf: PartShelf;
  /** On the shelf and fit to be used today. */
  readonly usable: number;
  readonly onOrder: number;
  readonly least: number;
  /** What is wanted until the end of the look ahead, in order of day. */
  readonly needs: readonly StockNeed[];
  /** Of all of them, where the cost of one is on record. */
  readonly cost?: number;
}

/** An order that has not come whole, and is waited for. */
export interface OpenOrder {
  readonly part: StockPart;
  readonly order: PartOrder;
  readonly received: number;
  readonly outstanding: number;
}

/**
 * What must be ordered by which day, so that no shelf falls below what is to be kept on it and each kit finds its part:
 * the shelf today and what is on order, less what kits will want, what is recalled and what spoils on the shelf. What lapses
 * first is taken first.
 *
 * @returns one line for each part and place that falls short, the most pressing first; empty where nothing does
 */
export function orderList(asked: OrderAsked): readonly OrderLine[] {
  const needs = partNeeds(asked);
  return asked.parts
    .filter(({ retired }) => retired === undefined)
    .flatMap((part) => placesOf(part, needs, asked.stock).flatMap((place) => lineOf(asked, part, place, needs) ?? []))
    .toSorted((one, other) => compare(one.by, other.by) || compare(one.part.name, other.part.name));
}

/** Orders that are waited for, the oldest first. */
export function openOrders(parts: readonly StockPart[]): readonly OpenOrder[] {
  return parts
    .flatMap((part) =>
      part.orders.flatMap((order) => {
        const received = receivedOf(part, order);
        const outstanding = order.count - received;
        return order.closed || outstanding <= 0 ? [] : [{ part, order, received, outstanding }];
      }),
    )
    .toSorted((one, other) => compare(one.order.day, other.order.day));
}

/** Day on which an order is counted on: as promised, else by the lead time, or the one supposed. */
export function arrivalOf(part: StockPart, { expected, day }: Pick<PartOrder, "expected" | "day">): PlainDate {
  if (expected !== undefined) return expected;
  return hereIfOrdered(part, day);
}

function receivedOf({ lines }: StockPart, { id }: PartOrder): number {
  return lines.reduce((sum, line) => (line.what === "received" && line.order === id ? sum + line.count : sum), 0);
}

function placesOf({ id, keep }: StockPart, needs: readonly StockNeed[], stock: Stock): readonly string[] {
  const wanting = needs.filter(({ part }) => part === id).map(({ place }) => place);
  return [...new Set([...keep.map(({ place }) => place), ...(stock.get(id)?.keys() ?? []), ...wanting])];
}

/** What falls short of one part at one place, with all that kits want. */
export function lineOf(
  { stock, today, days, parts }: OrderAsked,
  part: StockPart,
  place: string,
  all: readonly StockNeed[],
): OrderLine | undefined {
  const until = addDays(today, days);
  const needs = all
    .filter((need) => need.part === part.id && need.place === place && need.day <= until)
    .toSorted((one, other) => compare(one.day, other.day));
  const orders = openOrders(parts.filter(({ id }) => id === part.id)).filter(({ order }) => order.place === place);
  const least = part.keep.find((one) => one.place === place)?.least ?? 0;
  const shelf = partShelf(stock, part.id, place);
  const ahead = new ShelfAhead(shelf, today);
  const usable = ahead.balance;
  const arrivals = orders.map(({ order, outstanding }) => ({ day: arrivalOf(part, order), count: outstanding }));
  const soonest = hereIfOrdered(part, today);
  const short = ahead.shortfall({ part, needs, arrivals, least, until, soonest });
  if (short === undefined) return undefined;
  const cost = part.cost === undefined ? {} : { cost: part.cost * short.count };
  const onOrder = orders.reduce((sum, { outstanding }) => sum + outstanding, 0);
  return { part, place, ...short, by: orderBy(part, short.want, today), shelf, usable, onOrder, least, needs, ...cost };
}

function orderBy(part: StockPart, want: PlainDate, today: PlainDate): PlainDate {
  return addDays(want, -daysBetween(today, hereIfOrdered(part, today)));
}

function compare(one: string, other: string): number {
  return one === other ? 0 : one < other ? -1 : 1;
}
