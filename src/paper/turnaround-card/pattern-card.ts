import { formatQuantity, type UnitSystem } from "#base";
import { patternKey, type Pattern } from "#kit";
import { writeDeliveryTable, type DeliveryRow } from "../delivery-table.ts";
import { writeFlow } from "../flow/flow.ts";
import { writeTable } from "../rows.ts";
import { cardPieces } from "./card-pieces.ts";
import { createSheet, type Sheet } from "../sheet.ts";

export interface PatternCard {
  readonly stationName: string;
  readonly pattern: Pattern;
  /** The kit it is printed for; without it both are written in by hand. */
  readonly kit?: { readonly name: string; readonly serial: string };
  readonly units: UnitSystem;
  /** RFC 3339 */
  readonly now: string;
  /** What the kit delivers at several lifts, where the pattern says enough to know. */
  readonly delivery?: { readonly rows: readonly DeliveryRow[]; readonly setting: string };
}

/** More than this many pages is a book to be turned over in wet gloves [pages]. */
const MOST_PAGES = 6;
/**
 * Sizes of the letters, the largest that keeps to that many pages is taken [pt].
 *
 * @source 10 pt is 3.5 mm, the size that the project holds readable at arm's length; the rest is common practice
 */
const SIZES = [11, 10.5, 10, 9.5, 9, 8.5] as const;

/**
 * The pattern as a card to work from and fill in without a device, with the screen's own line numbers.
 *
 * @returns a PDF
 */
export async function renderPatternCard(card: PatternCard): Promise<Uint8Array> {
  const size = SIZES.find((one) => pagesOf(writeCard(card, one)) <= MOST_PAGES) ?? SIZES.at(-1)!;
  return writeCard(card, size).finish();
}

function pagesOf({ pdf }: Sheet): number {
  return pdf.bufferedPageRange().count;
}

function writeCard(card: PatternCard, size: number): Sheet {
  const { pattern, stationName, now, kit } = card;
  const title = `${kit ? `${kit.name}, serial ${kit.serial}` : pattern.name}: card for one turnaround`;
  const of = kit ? `${kit.name}   serial ${kit.serial}   ` : "";
  const sheet = createSheet({ title, now, footer: `${stationName}   ${of}pattern ${patternKey(pattern)}` });
  sheet.title(title);
  sheet.paragraph(pattern.summary);
  writeHead(sheet, card);
  sheet.gap(4);
  writeFlow(sheet, cardPieces(pattern, size));
  if (card.delivery) writeDelivery(sheet, card, card.delivery);
  return sheet;
}

function writeDelivery(sheet: Sheet, card: PatternCard, { rows, setting }: NonNullable<PatternCard["delivery"]>): void {
  const height = card.pattern.hydraulics?.suction ? "Suction lift" : "Height of hose end";
  writeDeliveryTable(sheet, rows, setting, card.units, height);
}

function writeHead(sheet: Sheet, { pattern, units, kit }: PatternCard): void {
  const mass = formatQuantity(pattern.container.mass, "mass", { system: units });
  const { lifters } = pattern.container;
  const lift = lifters === 1 ? "one person lifts it" : `${lifters} people lift it`;
  sheet.paragraph(`Gross ${mass}; ${lift}. The unit's own manual comes first.`);
  sheet.gap(6);
  const columns = [
    { name: "Kit and serial", part: 0.3 },
    { name: "Seal seen", part: 0.2 },
    { name: "Date and time", part: 0.25 },
    { name: "Name", part: 0.25 },
  ];
  writeTable(sheet, columns, [{ cells: kit ? [`${kit.name}, ${kit.serial}`] : [], height: 22 }]);
  sheet.gap(4);
  sheet.paragraph(
    "At each line ring S for seen as it should be, W for found wrong, N for not possible, and write why beside it.",
  );
}
