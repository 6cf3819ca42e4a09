import { sayCountOf } from "#web/kit-view/stock-view.ts";
import type { Words } from "#words";

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
