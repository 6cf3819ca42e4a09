import type { PlainDate } from "#base";
import { ShelfAhead } from "./shelf-ahead.ts";
import { partShelf, type Stock } from "./shelves.ts";

/** One part on the shelf of a place, as whoever needs it asks. */
export interface OnShelf {
  readonly part: string;
  /** All that the log says is there, below 0 where more were taken than were written in. */
  readonly count: number;
  /** Of these, in date and not recalled. */
  readonly usable: number;
}

/**
 * What is on the shelf of a place for these parts.
 *
 * @param stock - as `stockOf` gives it
 * @param place - id of the place
 * @param parts - ids of parts; one that is not known has none on the shelf
 * @param today - "YYYY-MM-DD": what is past its day is not usable
 * @returns one answer for each part asked about, in that order
 */
export function onShelf(stock: Stock, place: string, parts: readonly string[], today: PlainDate): readonly OnShelf[] {
  return parts.map((part) => {
    const shelf = partShelf(stock, part, place);
    return { part, count: shelf.count, usable: new ShelfAhead(shelf, today).balance };
  });
}
