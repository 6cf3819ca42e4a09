import { addDays, addSpan, parseSpan, type PlainDate } from "#base";
import type { StockNeed } from "./part-needs.ts";
import type { StockPart } from "./part-state.ts";
import type { PartShelf } from "./shelves.ts";

interface Lot {
  count: number;
  /** Last day on which it may be fitted; absent where it keeps. */
  readonly goodTo?: PlainDate;
}

/** What comes to a shelf and goes from it. */
export interface Ahead {
  readonly part: StockPart;
  readonly needs: readonly StockNeed[];
  readonly arrivals: readonly { readonly day: PlainDate; readonly count: number }[];
  /** Least to be kept. */
  readonly least: number;
  readonly until: PlainDate;
  /** Day on which what is ordered today would be here: what comes no later counts as there. */
  readonly soonest: PlainDate;
}

/** The same with the day from which each arrival counts. */
interface Coming extends Pick<Ahead, "part" | "needs"> {
  readonly arrivals: readonly (Ahead["arrivals"][number] & { readonly from: PlainDate })[];
}

/** One part on one shelf from today on, as days go by. What lapses first is taken first. */
export class ShelfAhead {
  readonly #lots: Lot[];
  readonly #today: PlainDate;
  /** Wanted and not there. */
  #owed = 0;

  constructor(shelf: PartShelf, today: PlainDate) {
    this.#today = today;
    const usable = shelf.lots.filter(({ recalled, count }) => recalled === undefined || count < 0);
    this.#owed = usable.reduce((sum, { count }) => sum - Math.min(0, count), 0);
    this.#lots = usable
      .filter(({ count }) => count > 0)
      .map(({ count, goodTo }) => ({ count, ...(goodTo !== undefined && { goodTo }) }));
    this.#spoil(today);
    this.#settle();
  }

  /** Fit to be used now; below 0 where more was taken than was there. */
  get balance(): number {
    return this.#lots.reduce((sum, { count }) => sum + count, 0) - this.#owed;
  }

  /**
   * The first day on which it falls below the least, and how many would have kept it above until the end. What is on order
   * counts towards what is to be kept; towards what a kit wants only where ordering anew would not be sooner.
   */
  shortfall(asked: Ahead): { readonly want: PlainDate; readonly count: number } | undefined {
    const arrivals = asked.arrivals.map((one) => ({ ...one, from: one.day <= asked.soonest ? this.#today : one.day }));
    const ahead = { ...asked, arrivals };
    const days = [
      this.#today,
      ...this.#spoilDays(),
      ...ahead.needs.map(({ day }) => day),
      ...arrivals.map(({ from }) => from),
    ];
    let [want, count]: [PlainDate | undefined, number] = [undefined, 0];
    for (const day of [...new Set(days.map((one) => (one < this.#today ? this.#today : one)))].toSorted()) {
      if (day > ahead.until) break;
      this.#pass(day, ahead);
      const toCome = arrivals.reduce((sum, one) => sum + (one.from > day ? one.count : 0), 0);
      const short = Math.max(ahead.least - this.balance - toCome, -this.balance);
      if (short > 0) want ??= day;
      count = Math.max(count, short);
    }
    return want === undefined ? undefined : { want, count };
  }

  #pass(day: PlainDate, { part, needs, arrivals }: Coming): void {
    this.#spoil(day);
    const isNow = (one: { readonly day: PlainDate }) => one.day === day || (day === this.#today && one.day < day);
    const come = arrivals.filter(({ from }) => isNow({ day: from }));
    for (const one of come) this.#lots.push({ count: one.count, ...lifeOf(part, one.day < day ? day : one.day) });
    this.#owed += needs.filter(isNow).reduce((sum, { count }) => sum + count, 0);
    this.#settle();
  }

  /** Gives out what is owed, of what lapses first. */
  #settle(): void {
    this.#lots.sort((one, other) => ((one.goodTo ?? "9") < (other.goodTo ?? "9") ? -1 : 1));
    for (const lot of this.#lots) {
      const given = Math.min(lot.count, this.#owed);
      lot.count -= given;
      this.#owed -= given;
    }
  }

  #spoil(day: PlainDate): void {
    for (const lot of this.#lots) if (lot.goodTo !== undefined && lot.goodTo < day) lot.count = 0;
  }

  #spoilDays(): readonly PlainDate[] {
    return this.#lots.flatMap(({ goodTo }) => (goodTo === undefined ? [] : [addDays(goodTo, 1)]));
  }
}

function lifeOf({ shelfLife }: StockPart, day: PlainDate): { goodTo?: PlainDate } {
  return shelfLife === undefined ? {} : { goodTo: addSpan(day, parseSpan(shelfLife, "shelfLife")) };
}
