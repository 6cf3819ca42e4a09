import { csvLines, formatDate } from "#base";
import type { OrderLine } from "#readiness";
import type { StationView } from "../../device/index.ts";

/** Why a part must be ordered: the shelf, what is to be kept, and the first thing that wants it. */
export function sayWhy({ usable, onOrder, least, needs, want, part }: OrderLine): string {
  const [first] = needs;
  return [
    `${usable} fit to use${onOrder > 0 ? `, ${onOrder} on order` : ""}`,
    least > 0 ? `keep ${least}` : "",
    first
      ? `${first.item} of ${first.kit} by ${formatDate(first.day)}${needs.length > 1 ? ` and ${needs.length - 1} more` : ""}`
      : "",
    `wanted by ${formatDate(want)}`,
    part.leadTime === undefined ? "no lead time on record" : `comes in ${part.leadTime}`,
  ]
    .filter((words) => words !== "")
    .join("; ");
}

const HEADS = [
  "number",
  "part",
  "supplier",
  "supplier number",
  "for",
  "count",
  "unit",
  "order by",
  "wanted by",
  "cost",
];

/** The order list as comma-separated values: one line for each part and place. */
export function orderCsv(lines: readonly OrderLine[], { places }: Pick<StationView, "places">): string {
  const rows = lines.map(({ part, place, count, by, want, cost }) => [
    part.number,
    part.name,
    part.supplier ?? "",
    part.supplierNumber ?? "",
    places.find(({ id }) => id === place)?.name ?? place,
    count,
    part.unit,
    by,
    want,
    cost?.toFixed(2) ?? "",
  ]);
  return [...csvLines([HEADS, ...rows])].join("");
}
