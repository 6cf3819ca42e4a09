import { plainName } from "#base";
import type { LotCount, PartSetting, StockPart } from "#readiness";
import { countStock, setPart, type ActContext, type Draft } from "#station";
import type { SheetField } from "./fields.ts";
import { unitBeside } from "./read-count.ts";
import type { RowIn } from "./row-in.ts";

export const PART_FIELDS: readonly SheetField[] = [
  { key: "number", label: "Number", also: ["part number", "part no", "our number"], isNeeded: true },
  { key: "name", label: "Part", also: ["name", "part name", "description", "what"], isNeeded: true },
  { key: "unit", label: "Unit", also: ["counted in"] },
  { key: "supplier", label: "Supplier", also: ["from", "vendor"] },
  { key: "supplierNumber", label: "Supplier number", also: ["supplier part number", "order number"] },
  { key: "cost", label: "Cost of one", also: ["cost", "price"] },
  { key: "leadTime", label: "Lead time", also: ["comes in", "delivery time"] },
  { key: "shelfLife", label: "Shelf life", also: ["keeps"] },
  { key: "printedEach", label: "Printed date on each", also: ["has a printed date"] },
  { key: "items", label: "Fitted as", also: ["items", "used for"] },
  { key: "place", label: "Place", also: ["location", "shelf", "where", "store"], mayBeFixed: true },
  { key: "least", label: "Keep at least", also: ["keep", "minimum", "min", "least"] },
  { key: "count", label: "Count", also: ["on the shelf", "quantity", "qty", "stock", "how many"] },
  { key: "lot", label: "Lot", also: ["batch", "lot number", "batch number"] },
  { key: "printed", label: "Printed date", also: ["expiry", "expires", "use by", "best before", "good until", "date"] },
];

/** Fields of the part itself: the same in every row of one number, or written once. */
const OF_PART = ["name", "unit", "supplier", "supplierNumber", "cost", "leadTime", "shelfLife", "printedEach", "items"];

/** Rows of one number, while they are read. */
interface PartRows {
  readonly first: RowIn;
  readonly setting: PartSetting;
  readonly keep: { place: string; least: number; row: RowIn }[];
  readonly shelves: Map<string, { row: RowIn; found: LotCount[] }>;
}

/** Parts with what lies on their shelves: a row for each lot, or for each place, those of one number together. */
export function readParts(rows: readonly RowIn[], doing: ActContext, newId: () => string): readonly Draft[] {
  const parts = new Map<string, PartRows>();
  for (const row of rows) readPartRow(row, doing, parts);
  return [...parts.values()].flatMap((part) => draftsOf(part, doing, newId()));
}

function readPartRow(row: RowIn, doing: ActContext, parts: Map<string, PartRows>): void {
  const number = row.needed("number");
  if (number === "") return;
  const known = parts.get(plainName(number));
  const part = known ?? beginPart(row, number);
  parts.set(plainName(number), part);
  if (known) needSame(row, known);
  readShelf(row, doing, part);
}

function beginPart(row: RowIn, number: string): PartRows {
  const word = (key: string) => {
    const text = row.text(key);
    return text === "" ? {} : { [key]: text };
  };
  const cost = row.amount("cost");
  const unit = row.text("unit") || (unitBeside(row.text("count")) ?? "piece");
  const setting = {
    number,
    name: row.needed("name"),
    unit,
    ...word("supplier"),
    ...word("supplierNumber"),
    ...word("leadTime"),
    ...word("shelfLife"),
    ...(cost !== undefined && { cost }),
    printed: row.yesOrNo("printedEach") ?? row.text("printed") !== "",
    keep: [],
    items: readItems(row),
    sheet: row.sheet,
  };
  return { first: row, setting, keep: [], shelves: new Map() };
}

/** "small/cells; large/cells": the item of each pattern. */
function readItems(row: RowIn): PartSetting["items"] {
  const named = row
    .text("items")
    .split(/[;,\n]/)
    .map((one) => one.trim())
    .filter(Boolean);
  return named.flatMap((text) => {
    const [pattern = "", item = ""] = text.split("/").map((one) => one.trim());
    if (pattern !== "" && item !== "") return [{ pattern, item }];
    row.fault(
      "ST-222",
      "items",
      text,
      "pattern/item, several divided by semicolons",
      "Leave it empty where you do not know it.",
    );
    return [];
  });
}

/** A later row of the same number says nothing else of the part. */
function needSame(row: RowIn, { first }: PartRows): void {
  for (const key of OF_PART) {
    const text = row.text(key);
    if (text === "" || plainName(text) === plainName(first.text(key))) continue;
    row.fault(
      "ST-226",
      key,
      text,
      `what row ${first.number} says, or nothing`,
      "Give each part its own number, or write the same.",
    );
  }
}

function readShelf(row: RowIn, doing: ActContext, part: PartRows): void {
  const open = doing.places.filter(({ closed }) => !closed);
  const count = row.count("count", part.setting.unit);
  const least = row.count("least", part.setting.unit);
  const printed = row.date("printed");
  const lot = row.text("lot");
  const isEmpty = count === undefined && least === undefined;
  const place = row.oneOf(
    "place",
    open,
    (one) => [one.name, one.id],
    isEmpty ? row.text("place") : row.needed("place"),
  );
  if (!place) return;
  if (least !== undefined && least > 0) keepLeast(row, part, place.id, least);
  if (count === undefined) return;
  const shelf = part.shelves.get(place.id) ?? { row, found: [] };
  part.shelves.set(place.id, shelf);
  if (count === 0) return;
  if (shelf.found.some((one) => plainName(one.lot ?? "") === plainName(lot))) return twice(row, "lot", lot || "no lot");
  shelf.found.push({ ...(lot !== "" && { lot }), ...(printed !== undefined && { printed }), count });
}

function keepLeast(row: RowIn, { keep }: PartRows, place: string, least: number): void {
  const known = keep.find((one) => one.place === place);
  if (known === undefined) keep.push({ place, least, row });
  else if (known.least !== least) {
    row.fault(
      "ST-226",
      "least",
      least,
      `${known.least}, as row ${known.row.number} says`,
      "Write the same for one place.",
    );
  }
}

function twice(row: RowIn, key: string, got: string): void {
  row.fault("ST-225", key, got, "each lot once at a place", "Add the rows up, or name their lots.");
}

function draftsOf({ first, setting, keep, shelves }: PartRows, doing: ActContext, id: string): readonly Draft[] {
  const whole: PartSetting = { ...setting, keep: keep.map(({ place, least }) => ({ place, least })) };
  const set = first.take(setPart(doing, id, whole), SETTING_KEYS);
  if (set.length === 0) return [];
  const part: StockPart = { id, ...whole, lines: [], orders: [], recalls: [] };
  const then: ActContext = { ...doing, parts: [...doing.parts, part] };
  const counts = [...shelves].flatMap(([place, { row, found }]) =>
    row.take(countStock(then, id, { place, found, sheet: row.sheet }), { "body.place": "place" }),
  );
  return [...set, ...counts];
}

const SETTING_KEYS = Object.fromEntries(
  ["number", "name", "unit", "supplier", "supplierNumber", "cost", "leadTime", "shelfLife"].map((key) => [
    `body.${key}`,
    key,
  ]),
);
