import { sayCountOf } from "#web/kit-view/stock-view.ts";
import type { LotCount, StockLine, StockPart } from "#readiness";
import type { Words } from "#words";

interface ChangeContext {
  /** Id of the place whose shelf is read. */
  readonly shelf: string;
  readonly words: Words["stockPart"];
  readonly placeOf: (id: string) => string;
  readonly kitOf: (id: string) => string;
}

/** What a line did to the shelf of a place, in words: "2 received, lot L1". */
export function sayChange(line: StockLine, { shelf, words, ...names }: ChangeContext): string {
  if (line.what === "counted") return sayFound(line.found, words);
  const lot = { hasLot: line.lot === undefined ? "no" : "yes", lot: line.lot ?? "" };
  const some = { count: line.count, ...lot };
  if (line.what === "received") return words.received(some);
  if (line.what === "moved") {
    const isHere = line.to === shelf;
    const place = names.placeOf(isHere ? line.place : line.to);
    return isHere ? words.movedFrom({ ...some, place }) : words.movedTo({ ...some, place });
  }
  if (line.kit !== undefined) return words.fittedIn({ ...some, kit: names.kitOf(line.kit) });
  return line.what === "used"
    ? words.used({ ...some, because: line.because })
    : words.scrapped({ ...some, because: line.because });
}

function sayFound(found: readonly LotCount[], words: Words["stockPart"]): string {
  const lots = found.map(({ lot, count }) => (lot === undefined ? `${count}` : words.countOfLot({ count, lot })));
  return lots.length === 0 ? words.countedNone() : words.countedSome({ lots: lots.join(", ") });
}

/** How long a part keeps on the shelf: to a date printed on each, so long, or without end where neither was said. */
export function sayKeeps({ printed, shelfLife }: Pick<StockPart, "printed" | "shelfLife">, words: Words["stockPart"]) {
  return printed ? words.keepsPrinted() : (shelfLife ?? words.keepsLong());
}

/** What a shelf holds of one part. */
interface Held {
  readonly count: number;
  /** Not past its day and not recalled. */
  readonly usable: number;
  readonly least: number;
}

/**
 * The count of a shelf, in words where it is not what it should hold.
 *
 * @param early - whether lines are still to come: what the first of them come to is no count
 */
export function sayShelf({ count, usable, least }: Held, early: boolean, words: Words["stock"]): string {
  if (early) return words.notHereYet();
  const counts = { count, usable: sayCountOf(usable) };
  if (usable >= least) return usable === count ? sayCountOf(count) : words.ofTheseFit(counts);
  return usable === count ? words.low({ count: sayCountOf(count) }) : words.lowOfThese(counts);
}

/** The day of the last count; never only where every line is here. */
export function sayCountedOn(day: string | undefined, early: boolean, words: Words["stock"]): string {
  return early ? words.notHereYet() : (day ?? words.never());
}
