import type { PlainDate } from "#base";
import { onShelf } from "./on-shelf.ts";
import { openOrders } from "./order-list.ts";
import type { StockPart } from "./part-state.ts";
import type { Stock } from "./shelves.ts";

/** What a station has of a part, over all its places. */
export interface StationHolding {
  /** Fit to use today; a shelf that owes some counts as empty. */
  readonly usable: number;
  /** Ordered, and still to come. */
  readonly onOrder: number;
}

/**
 * What a station has of a part and what is on its way. One that is on its way is bought already: stock that is ordered one for
 * one counts both.
 *
 * @param stock - as `stockOf` gives it
 * @param part - with its orders
 * @param places - ids
 * @param today - what is past its day is not usable
 */
export function stationHolding(
  stock: Stock,
  part: StockPart,
  places: readonly string[],
  today: PlainDate,
): StationHolding {
  const usable = places.map((place) => onShelf(stock, place, [part.id], today)[0]?.usable ?? 0);
  return {
    usable: usable.reduce((sum, one) => sum + Math.max(0, one), 0),
    onOrder: openOrders([part]).reduce((sum, { outstanding }) => sum + outstanding, 0),
  };
}
