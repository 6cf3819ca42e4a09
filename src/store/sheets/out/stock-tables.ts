import {
  isLeadSupposed,
  isSameLot,
  orderList,
  partShelf,
  stockOf,
  SUPPOSED_LEAD,
  type PartShelf,
  type StockLine,
  type StockPart,
} from "#readiness";
import { nameIn, type OutRow, type TableSource } from "./table-source.ts";

/** How far the order list looks ahead [day]; as on the screen. */
const DAYS = 182;

const PART_HEADS = [
  "Number",
  "Part",
  "Unit",
  "Supplier",
  "Supplier number",
  "Cost of one",
  "Lead time",
  "Shelf life",
  "Printed date on each",
  "Fitted as",
  "Place",
  "Keep at least",
  "Count",
  "Lot",
  "Printed date",
  "Good until (last day)",
];

/** Parts on the list with what lies on each shelf: a row for each lot. */
export function partRows(source: TableSource): readonly OutRow[] {
  const stock = stockOf(source.parts, source.kits);
  const listed = source.parts.filter(({ retired }) => retired === undefined);
  const rows = listed.flatMap((part) => {
    const places = new Set([...part.keep.map(({ place }) => place), ...(stock.get(part.id)?.keys() ?? [])]);
    const shelves = [...places].map((place) => partShelf(stock, part.id, place));
    const lots = shelves.flatMap((shelf) => lotRows(part, shelf, source));
    return lots.length === 0 ? [[...partCells(part), "", "", "", "", "", ""]] : lots;
  });
  return [PART_HEADS, ...rows];
}

function partCells(part: StockPart): OutRow {
  return [
    part.number,
    part.name,
    part.unit,
    part.supplier ?? "",
    part.supplierNumber ?? "",
    part.cost ?? "",
    part.leadTime ?? "",
    part.shelfLife ?? "",
    part.printed ? "yes" : "no",
    part.items.map(({ pattern, item }) => `${pattern}/${item}`).join("; "),
  ];
}

function lotRows(part: StockPart, shelf: PartShelf, { places }: TableSource): readonly OutRow[] {
  const least = part.keep.find(({ place }) => place === shelf.place)?.least ?? "";
  const begin = [...partCells(part), nameIn(places, shelf.place), least];
  if (shelf.lots.length === 0) return [[...begin, shelf.lines.length === 0 ? "" : 0, "", "", ""]];
  return shelf.lots.map(({ lot, count, goodTo }) => [
    ...begin,
    count,
    lot ?? "",
    printedOn(shelf.lines, lot) ?? "",
    goodTo ?? "",
  ]);
}

/** The date that stands on a lot, as it was last written down. */
function printedOn(lines: readonly StockLine[], lot: string | undefined): string | undefined {
  const same = (other: string | undefined) =>
    lot === undefined || other === undefined ? lot === other : isSameLot(lot, other);
  const told = lines.flatMap((line) => {
    if (line.what === "received") return same(line.lot) ? [line.printed] : [];
    return line.what === "counted" ? line.found.filter((one) => same(one.lot)).map(({ printed }) => printed) : [];
  });
  return told.findLast((printed) => printed !== undefined);
}

/** What must be ordered by which day. */
export function orderRows(source: TableSource): readonly OutRow[] {
  const heads = [
    "Number",
    "Part",
    "Supplier",
    "Supplier number",
    "For",
    "Count",
    "Unit",
    "Order by",
    "Wanted by",
    "Cost",
    "Lead time",
  ];
  const stock = stockOf(source.parts, source.kits);
  const kits = source.kits.filter(({ retired }) => retired === undefined);
  const rows = orderList({ ...source, kits, stock, days: DAYS }).map(({ part, place, count, by, want, cost }) => [
    part.number,
    part.name,
    part.supplier ?? "",
    part.supplierNumber ?? "",
    nameIn(source.places, place),
    count,
    part.unit,
    by,
    want,
    cost?.toFixed(2) ?? "",
    isLeadSupposed(part) ? `${SUPPOSED_LEAD} supposed: none given` : (part.leadTime ?? ""),
  ]);
  return [heads, ...rows];
}
