import { dayWritten, isDate, isMonth, parseDate, addSpan, parseSpan, type PlainDate } from "#base";
import { instantOf } from "#log";
import type { DrawnUse, KitState } from "../state.ts";
import type { StockLine, StockPart } from "./part-state.ts";

/** So many of one lot on a shelf; without `lot`, of none that is marked. */
export interface ShelfLot {
  readonly lot?: string;
  /** Below 0 where more were taken than were ever written in. */
  readonly count: number;
  /** Last day on which it may be fitted: as printed on it, or its shelf life from receipt; absent where it keeps. */
  readonly goodTo?: PlainDate;
  /** Why it may not be fitted. */
  readonly recalled?: string;
}

/** One part on the shelf of one place. */
export interface PartShelf {
  readonly part: string;
  readonly place: string;
  /** All of it, below 0 where more were taken than were ever written in. */
  readonly count: number;
  readonly lots: readonly ShelfLot[];
  /** The last count, which is the truth of its moment. */
  readonly counted?: StockLine;
  /** Every line that bears on it, oldest first. */
  readonly lines: readonly StockLine[];
}

/** Shelves by part, then by place. */
export type Stock = ReadonlyMap<string, ReadonlyMap<string, PartShelf>>;

/**
 * What the log says is on every shelf: from the last count on, what came, less what went. Lines are taken by the day on
 * which they were done, then by their clock, then by id, so that it is the same in whatever order they arrive. What was done
 * before a count was in the count already.
 *
 * @param parts - every part
 * @param kits - every kit, retired ones too: what was fitted into them was taken off a shelf
 */
export function stockOf(parts: readonly StockPart[], kits: readonly KitState[]): Stock {
  const fitted = usesByPart(kits);
  return new Map(
    parts.map((part) => {
      const lines = [...part.lines, ...(fitted.get(part.id) ?? [])].toSorted(byDay);
      const places = new Set(lines.flatMap((line) => (line.what === "moved" ? [line.place, line.to] : [line.place])));
      return [part.id, new Map([...places].map((place) => [place, shelfOf(part, place, lines)]))];
    }),
  );
}

/** A shelf of which nothing was ever written holds none. */
export function partShelf(stock: Stock, part: string, place: string): PartShelf {
  return stock.get(part)?.get(place) ?? { part, place, count: 0, lots: [], lines: [] };
}

function usesByPart(kits: readonly KitState[]): ReadonlyMap<string, readonly StockLine[]> {
  const uses = new Map<string, StockLine[]>();
  for (const kit of kits) {
    for (const use of kit.drawn ?? []) {
      const line = lineOf(kit.id, use);
      const known = uses.get(use.part);
      if (known) known.push(line);
      else uses.set(use.part, [line]);
    }
  }
  return uses;
}

/** A part fitted into a kit, as the shelf that it came off sees it. */
function lineOf(
  kit: string,
  { entry, at, by, device, place, lot, item, count, turnaround, finding }: DrawnUse,
): StockLine {
  const because = finding === undefined ? "turnaround" : "finding";
  const work = turnaround ?? finding;
  const use = {
    what: "used" as const,
    place,
    count,
    because,
    kit,
    item,
    ...(lot !== undefined && { lot }),
    ...(work !== undefined && { work }),
  };
  return { entry, at, by, device, day: dayWritten(at), ...use };
}

function byDay(one: StockLine, other: StockLine): number {
  if (one.day !== other.day) return one.day < other.day ? -1 : 1;
  return instantOf(one.at) - instantOf(other.at) || (one.entry < other.entry ? -1 : 1);
}

function shelfOf(part: StockPart, place: string, all: readonly StockLine[]): PartShelf {
  const lines = all.filter((line) => line.place === place || (line.what === "moved" && line.to === place));
  const at = lines.findLastIndex((line) => line.what === "counted");
  const counts = new LotCounts();
  for (const line of lines.slice(Math.max(0, at))) addLine(counts, line, place);
  const lots = counts.read().filter(({ count }) => count !== 0);
  const counted = lines[at];
  return {
    part: part.id,
    place,
    count: lots.reduce((sum, { count }) => sum + count, 0),
    lots: lots.map(({ lot, count }) => lotOf(part, all, lot, count)),
    ...(counted && { counted }),
    lines,
  };
}

/** How many of each lot, under the first way in which it was written. */
class LotCounts {
  readonly #counts = new Map<string, { lot?: string; count: number }>();

  add(lot: string | undefined, by: number): void {
    const key = lot === undefined ? "" : plainLot(lot);
    const known = this.#counts.get(key) ?? { ...(lot !== undefined && { lot }), count: 0 };
    this.#counts.set(key, { ...known, count: known.count + by });
  }

  read(): readonly { readonly lot?: string; readonly count: number }[] {
    return [...this.#counts.values()];
  }
}

function addLine(counts: LotCounts, line: StockLine, place: string): void {
  if (line.what === "counted") for (const { lot, count } of line.found) counts.add(lot, count);
  else if (line.what === "received") counts.add(line.lot, line.count);
  else counts.add(line.lot, line.what === "moved" && line.to === place ? line.count : -line.count);
}

function lotOf(part: StockPart, lines: readonly StockLine[], lot: string | undefined, count: number): ShelfLot {
  const goodTo = goodToOf(part, lines, lot);
  const recalled = part.recalls.findLast((recall) => isOfLot(lot, recall.lot))?.reason;
  return {
    count,
    ...(lot !== undefined && { lot }),
    ...(goodTo !== undefined && { goodTo }),
    ...(recalled !== undefined && { recalled }),
  };
}

/** The earliest of what the lines of this lot say: a shelf is as good as the worst on it. */
function goodToOf(part: StockPart, lines: readonly StockLine[], lot: string | undefined): PlainDate | undefined {
  const own = lines.flatMap((line): readonly PlainDate[] => {
    if (line.what === "counted") return line.found.flatMap((one) => (isOfLot(one.lot, lot) ? dayOf(one.printed) : []));
    if (line.what !== "received" || !isOfLot(line.lot, lot)) return [];
    if (line.printed !== undefined) return dayOf(line.printed);
    return part.shelfLife === undefined || !isDate(line.day)
      ? []
      : [addSpan(parseDate(line.day), parseSpan(part.shelfLife, "shelfLife"))];
  });
  return lot === undefined ? own.at(-1) : own.toSorted()[0];
}

function dayOf(text: string | undefined): readonly PlainDate[] {
  return text !== undefined && (isDate(text) || isMonth(text)) ? [parseDate(text)] : [];
}

function isOfLot(one: string | undefined, other: string | undefined): boolean {
  return one === undefined || other === undefined ? one === other : isSameLot(one, other);
}

/** Lots are the same whatever the case of their letters and the blanks in them. */
export function isSameLot(one: string, other: string): boolean {
  return plainLot(one) === plainLot(other);
}

function plainLot(lot: string): string {
  return lot.replace(/\s+/g, "").toLowerCase();
}
