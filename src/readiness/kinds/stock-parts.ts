import { z } from "zod";
import type { Said } from "./said.ts";
import { amountTo, day, dayOrMonth, effect, fromSheet, id, line, note, span } from "./schema-parts.ts";

/* What is said of parts and shelves, where the state keeps it as it was said, or more than one kind says it. */

const MOST = 100_000;

/** So many of a part that leave a shelf or come to it. */
export const count = z
  .int({ error: "a whole number, 1 or more" })
  .min(1, { error: "1 or more: what left the shelf is used, scrapped or moved" })
  .max(MOST);
export const lot = line(40);
/** `place` is the place whose shelf it is; `day` the day on which it was done. */
export const onShelf = { place: id, count, day, lot: lot.exactOptional() };

const lotCount = z.strictObject({
  lot: lot.exactOptional(),
  printed: dayOrMonth.exactOptional(),
  count: z.int({ error: "a whole number, 0 or more" }).min(0, { error: "0 or more" }).max(MOST),
});
/** So many of one lot, as they were counted; without `lot`, of none that is marked. */
export type LotCount = Said<typeof lotCount>;

export const foundLots = z
  .array(lotCount)
  .max(100)
  .refine((lots) => new Set(lots.map((one) => one.lot)).size === lots.length, { error: "each lot once" });

export const drawn = z.strictObject({ part: id, place: id, lot: lot.exactOptional() });
/** Where a part that was fitted came from: the shelf of a place, and its lot where one is marked. */
export type Drawn = Said<typeof drawn>;

export const itemRobbed = z.strictObject({
  item: id,
  quantity: z.int().min(1).max(1_000),
  /** Id of the kit that it was taken for. */
  to: id,
  finding: id,
  /** Mode id of the pattern, or "other" with `effect` given by the person. */
  mode: id,
  effect,
  limit: line(300).exactOptional(),
  note,
});
export type ItemRobbed = Said<typeof itemRobbed>;

const shelf = z.strictObject({ id, name: line(80), kits: z.array(id).max(200) });
/** A shelf of a place, with its kits in the order in which they stand. */
export type Shelf = Said<typeof shelf>;

/** A place's shelves; no kit stands on two of them. */
export const shelves = z
  .array(shelf)
  .max(100)
  .refine((all) => isEachOnce(all.flatMap(({ kits }) => kits)), { error: "each kit on one shelf" })
  .refine((all) => isEachOnce(all.map((one) => one.id)), { error: "each shelf once" });

export const partSetting = z.strictObject({
  /** The station's own number. */
  number: line(40),
  name: line(80),
  /** What one is counted in: "piece", "metre". */
  unit: line(20),
  supplier: line(80).exactOptional(),
  supplierNumber: line(60).exactOptional(),
  /** Of one, in the currency that the station buys in. */
  cost: amountTo(1e7).exactOptional(),
  /** From ordering to shelf: "6 weeks". */
  leadTime: span.exactOptional(),
  /** From receipt: "24 months". Left out where it keeps, or where each carries a printed date. */
  shelfLife: span.exactOptional(),
  /** True where each carries a printed date. */
  printed: z.boolean(),
  /** Least to be kept, by place. */
  keep: z.array(z.strictObject({ place: id, least: z.int().min(1).max(MOST) })).max(200),
  /** Items of patterns that it is fitted as. */
  items: z.array(z.strictObject({ pattern: id, item: id })).max(200),
  sheet: fromSheet.exactOptional(),
});
/** What a part is. */
export type PartSetting = Said<typeof partSetting>;

function isEachOnce(ids: readonly string[]): boolean {
  return new Set(ids).size === ids.length;
}
