import type { Effect } from "#kit";
import type { FromSheet } from "./sheet-kinds.ts";

/** What a part is: written whole each time it is set. */
export interface PartSetting {
  /** The station's own number. */
  readonly number: string;
  readonly name: string;
  /** What one is counted in: "piece", "metre". */
  readonly unit: string;
  readonly supplier?: string;
  readonly supplierNumber?: string;
  /** Of one, in the currency that the station buys in. */
  readonly cost?: number;
  /** From ordering to shelf: "6 weeks". */
  readonly leadTime?: string;
  /** From receipt: "24 months". Left out where it keeps, or where each carries a printed date. */
  readonly shelfLife?: string;
  /** True where each carries a printed date. */
  readonly printed: boolean;
  /** Least to be kept, by place. */
  readonly keep: readonly { readonly place: string; readonly least: number }[];
  /** Items of patterns that it is fitted as. */
  readonly items: readonly { readonly pattern: string; readonly item: string }[];
  readonly sheet?: FromSheet;
}

/** Where a part that was fitted came from: the shelf of a place, and its lot where one is marked. */
export interface Drawn {
  readonly part: string;
  readonly place: string;
  readonly lot?: string;
}

/** So many of one lot, as they were counted; without `lot`, of none that is marked. */
export interface LotCount {
  readonly lot?: string;
  readonly printed?: string;
  readonly count: number;
}

/** What an entry with subject "part:..." may say. Days are "YYYY-MM-DD"; `place` is the place whose shelf it is. */
export interface StockBodies {
  "part-set": PartSetting;
  "part-retired": { readonly reason: string };
  "stock-received": {
    readonly place: string;
    readonly count: number;
    readonly day: string;
    readonly lot?: string;
    /** Date printed on it: a day, or a month that means its last day. */
    readonly printed?: string;
    /** Id of the order that it answers. */
    readonly order?: string;
    readonly note?: string;
  };
  /** Taken off the shelf otherwise than into an item of a kit. */
  "stock-used": {
    readonly place: string;
    readonly count: number;
    readonly day: string;
    readonly lot?: string;
    readonly note: string;
  };
  /** What was on the shelf, all of it: from here on this is the truth. */
  "stock-counted": {
    readonly place: string;
    readonly found: readonly LotCount[];
    readonly note?: string;
    /** Told by a sheet: nobody here counted it. */
    readonly sheet?: FromSheet;
  };
  "stock-scrapped": {
    readonly place: string;
    readonly count: number;
    readonly day: string;
    readonly lot?: string;
    readonly reason: string;
  };
  "stock-moved": {
    readonly from: string;
    readonly to: string;
    readonly count: number;
    readonly day: string;
    readonly lot?: string;
  };
  "stock-ordered": {
    readonly order: string;
    readonly place: string;
    readonly count: number;
    readonly day: string;
    /** Day on which it is promised. */
    readonly expected?: string;
    readonly note?: string;
  };
  /** What has not come will not: the order is waited for no longer. */
  "order-closed": { readonly order: string; readonly reason: string };
  "lot-recalled": { readonly lot: string; readonly reason: string; readonly effect: Effect; readonly limit?: string };
}

/** A shelf of a place, with its kits in the order in which they stand. */
export interface Shelf {
  readonly id: string;
  readonly name: string;
  readonly kits: readonly string[];
}

/** Taken from one kit for another: a finding on the one it was taken from, raised with this line and struck with it. */
export interface ItemRobbed {
  readonly item: string;
  readonly quantity: number;
  /** Id of the kit that it was taken for. */
  readonly to: string;
  readonly finding: string;
  /** Mode id of the pattern, or "other" with `effect` given by the person. */
  readonly mode: string;
  readonly effect: Effect;
  readonly limit?: string;
  readonly note: string;
}
