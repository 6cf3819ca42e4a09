import { lineOf, type OrderAsked, type OrderLine } from "../order-list.ts";
import { partNeeds, type StockNeed } from "../part-needs.ts";
import { partShelf } from "../shelves.ts";
import type { StockPart } from "../part-state.ts";

/** So many of a part that one place can spare, for another that falls short of them. */
export interface MoveProposed {
  readonly part: StockPart;
  readonly from: string;
  readonly to: string;
  readonly count: number;
}

/**
 * Moves between the shelves of a station that spare an order: from a place that then still falls short of nothing as far as
 * the list looks ahead, of no more than lies there and the other wants.
 *
 * @param asked - as for the order list
 * @param lines - the order list
 * @param places - ids of the places that are open
 * @returns the most pressing first, as the list has them
 */
export function movesProposed(
  asked: OrderAsked,
  lines: readonly OrderLine[],
  places: readonly string[],
): readonly MoveProposed[] {
  const taken: StockNeed[] = [...partNeeds(asked)];
  return lines.flatMap(({ part, place: to, count }) => {
    let wanted = count;
    return places
      .filter((from) => from !== to)
      .flatMap((from) => {
        const spare = spareAt(asked, part, from, { needs: taken, most: wanted });
        if (spare === 0) return [];
        wanted -= spare;
        taken.push(takenFrom(asked, part, from, spare));
        return [{ part, from, to, count: spare }];
      });
  });
}

interface Spare {
  readonly needs: readonly StockNeed[];
  readonly most: number;
}

/** The most that can leave a shelf today, by halving: who can spare five can spare four. */
function spareAt(asked: OrderAsked, part: StockPart, place: string, { needs, most }: Spare): number {
  const there = partShelf(asked.stock, part.id, place).count;
  let [low, high] = [0, Math.max(0, Math.min(most, there))];
  while (low < high) {
    const tried = Math.ceil((low + high) / 2);
    const isShort = lineOf(asked, part, place, [...needs, takenFrom(asked, part, place, tried)]) !== undefined;
    if (isShort) high = tried - 1;
    else low = tried;
  }
  return low;
}

function takenFrom({ today }: OrderAsked, { id: part }: StockPart, place: string, count: number): StockNeed {
  return { part, place, day: today, count, kit: "", item: "", because: "lapses" };
}
