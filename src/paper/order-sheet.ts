import { formatDate } from "#base";
import { isLeadSupposed, SUPPOSED_LEAD, type OrderLine } from "#readiness";
import { writeTable, type Column } from "./rows.ts";
import { createSheet } from "./sheet.ts";

/** What the order list tells. */
export interface OrderSheet {
  readonly stationName: string;
  readonly lines: readonly OrderLine[];
  /** Names of places by id. */
  readonly places: ReadonlyMap<string, string>;
  /** In which costs are told; where it is not known, that is said once. */
  readonly currency?: string;
  /** RFC 3339 */
  readonly now: string;
}

const COLUMNS: readonly Column[] = [
  { name: "Order by", part: 0.13 },
  { name: "Part", part: 0.29 },
  { name: "Supplier, number", part: 0.22 },
  { name: "How many", part: 0.12 },
  { name: "For", part: 0.14 },
  { name: "Cost", part: 0.1 },
];

/**
 * What must be ordered by which day, as a sheet to order from.
 *
 * @returns a PDF
 */
export async function renderOrderSheet({ stationName, lines, places, now, currency }: OrderSheet): Promise<Uint8Array> {
  const title = "Parts to order";
  const sheet = createSheet({ title, now, footer: `${stationName}   ${title}` });
  sheet.title(title);
  sheet.paragraph(
    `${stationName}. Worked out from what was on the shelves and on order when this was printed. Costs in ${currency ?? "the station's own money"}.`,
  );
  sheet.gap(6);
  if (lines.length === 0) sheet.paragraph("Nothing falls short.");
  else
    writeTable(
      sheet,
      COLUMNS,
      lines.map((line) => ({ cells: cellsOf(line, places) })),
    );
  return sheet.finish();
}

function cellsOf({ part, place, count, by, cost }: OrderLine, places: OrderSheet["places"]): readonly string[] {
  return [
    isLeadSupposed(part) ? `${formatDate(by)} (${SUPPOSED_LEAD} supposed: none given)` : formatDate(by),
    `${part.name} (${part.number})`,
    [part.supplier, part.supplierNumber].filter((words) => words !== undefined).join(", "),
    `${count} ${part.unit}`,
    places.get(place) ?? place,
    cost?.toFixed(2) ?? "",
  ];
}
