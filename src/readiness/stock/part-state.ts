import type { Effect } from "#kit";
import type { LotCount, PartSetting } from "../kinds/stock-parts.ts";
import type { Mark } from "../state.ts";

/** One line of a part that bears on a shelf. */
export type StockLine = Mark & {
  /** "YYYY-MM-DD" on which it was done, as its writer says. */
  readonly day: string;
} & StockAct;

export type StockAct =
  | {
      readonly what: "received";
      readonly place: string;
      readonly count: number;
      readonly lot?: string;
      readonly printed?: string;
      readonly order?: string;
    }
  | { readonly what: "counted"; readonly place: string; readonly found: readonly LotCount[] }
  | {
      readonly what: "used" | "scrapped";
      readonly place: string;
      readonly count: number;
      readonly lot?: string;
      readonly because: string;
      /** Where it went into a kit: the kit, and the item as which it was fitted. */
      readonly kit?: string;
      readonly item?: string;
      /** The turnaround in which it was fitted, else the finding that it mended; absent where neither is named. */
      readonly work?: string;
    }
  | {
      readonly what: "moved";
      readonly place: string;
      readonly to: string;
      readonly count: number;
      readonly lot?: string;
    };

/** Parts that were ordered for a place. */
export interface PartOrder extends Mark {
  readonly id: string;
  readonly place: string;
  readonly count: number;
  readonly day: string;
  /** Day on which they are promised. */
  readonly expected?: string;
  readonly note?: string;
  /** Waited for no longer. */
  readonly closed?: Mark & { readonly reason: string };
}

/** A lot that may not be used. */
export interface Recall extends Mark {
  readonly lot: string;
  readonly reason: string;
  readonly effect: Effect;
  readonly limit?: string;
}

/** A part as the log tells it: what it is, and every line that bears on a shelf. */
export interface StockPart extends PartSetting {
  readonly id: string;
  readonly retired?: Mark & { readonly reason: string };
  readonly lines: readonly StockLine[];
  readonly orders: readonly PartOrder[];
  readonly recalls: readonly Recall[];
}
