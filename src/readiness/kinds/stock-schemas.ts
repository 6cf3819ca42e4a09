import { isDate } from "#base";
import { z } from "zod";
import { amountTo, dayOrMonth, effect, fromSheet, id, line, note, reason, span } from "./schema-parts.ts";

const MOST = 100_000;
const count = z
  .int({ error: "a whole number, 1 or more" })
  .min(1, { error: "1 or more: what left the shelf is used, scrapped or moved" })
  .max(MOST);
const day = z.string().refine(isDate, { error: 'a day "2027-03-14"' });
const lot = line(40);
const onShelf = { place: id, count, day, lot: lot.exactOptional() };

const found = z
  .array(
    z.strictObject({
      lot: lot.exactOptional(),
      printed: dayOrMonth.exactOptional(),
      count: z.int({ error: "a whole number, 0 or more" }).min(0, { error: "0 or more" }).max(MOST),
    }),
  )
  .max(100)
  .refine((lots) => new Set(lots.map((one) => one.lot)).size === lots.length, { error: "each lot once" });

/** Where a part that was fitted came from. */
export const drawn = z.strictObject({ part: id, place: id, lot: lot.exactOptional() });

/** Taken from one kit for another. */
export const itemRobbed = z.strictObject({
  item: id,
  quantity: z.int().min(1).max(1_000),
  to: id,
  finding: id,
  mode: id,
  effect,
  limit: line(300).exactOptional(),
  note,
});

/** A place's shelves; no kit stands on two of them. */
export const shelves = z
  .array(z.strictObject({ id, name: line(80), kits: z.array(id).max(200) }))
  .max(100)
  .refine((all) => isEachOnce(all.flatMap(({ kits }) => kits)), { error: "each kit on one shelf" })
  .refine((all) => isEachOnce(all.map((shelf) => shelf.id)), { error: "each shelf once" });

/** Bodies of entries about a part and its stock. */
export const stockSchemas = {
  "part-set": z.strictObject({
    number: line(40),
    name: line(80),
    unit: line(20),
    supplier: line(80).exactOptional(),
    supplierNumber: line(60).exactOptional(),
    cost: amountTo(1e7).exactOptional(),
    leadTime: span.exactOptional(),
    shelfLife: span.exactOptional(),
    printed: z.boolean(),
    keep: z.array(z.strictObject({ place: id, least: z.int().min(1).max(MOST) })).max(200),
    items: z.array(z.strictObject({ pattern: id, item: id })).max(200),
    sheet: fromSheet.exactOptional(),
  }),
  "part-retired": z.strictObject({ reason }),
  "stock-received": z.strictObject({
    ...onShelf,
    printed: dayOrMonth.exactOptional(),
    order: id.exactOptional(),
    note: note.exactOptional(),
  }),
  "stock-used": z.strictObject({ ...onShelf, note }),
  "stock-counted": z.strictObject({ place: id, found, note: note.exactOptional(), sheet: fromSheet.exactOptional() }),
  "stock-scrapped": z.strictObject({ ...onShelf, reason }),
  "stock-moved": z
    .strictObject({ from: id, to: id, count, day, lot: lot.exactOptional() })
    .refine(({ from, to }) => from !== to, { error: "another place than it comes from", path: ["to"] }),
  "stock-ordered": z.strictObject({
    order: id,
    place: id,
    count,
    day,
    expected: day.exactOptional(),
    note: note.exactOptional(),
  }),
  "order-closed": z.strictObject({ order: id, reason }),
  "lot-recalled": z
    .strictObject({ lot, reason, effect, limit: line(300).exactOptional() })
    .refine((given) => given.effect !== "limits" || given.limit !== undefined, {
      error: "the limit, as a vessel should hear it",
      path: ["limit"],
    }),
};

function isEachOnce(ids: readonly string[]): boolean {
  return new Set(ids).size === ids.length;
}
