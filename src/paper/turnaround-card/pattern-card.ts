import { formatQuantity, type UnitSystem } from "#base";
import { patternKey, sayLifting, type Pattern } from "#kit";
import { writeDeliveryTable, type PaperDeliveryRow } from "../delivery-table.ts";
import { writeFlow } from "../flow/flow.ts";
import {
  PICTURES_IN_A_ROW,
  pictureNumbers,
  roomForPictures,
  writePictures,
  type PictureNumbers,
} from "../pictures/picture-page.ts";
import { writeTable } from "../rows.ts";
import { cardPieces } from "./card-pieces.ts";
import { createSheet, pagesOf, writeToFit, type Sheet } from "../sheet.ts";

export interface PatternCard {
  readonly stationName: string;
  readonly pattern: Pattern;
  /** The kit it is printed for; without it both are written in by hand. */
  readonly kit?: { readonly name: string; readonly serial: string };
  readonly units: UnitSystem;
  /** RFC 3339 */
  readonly now: string;
  /** What the kit delivers at several lifts, where the pattern says enough to know. */
  readonly delivery?: { readonly rows: readonly PaperDeliveryRow[]; readonly setting: string };
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
  const every = pictureNumbers(card.pattern, Number.POSITIVE_INFINITY);
  const write = (size: number) => writeCard(card, size, every);
  const smallest = SIZES.at(-1)!;
  const fitting = writeToFit(SIZES, MOST_PAGES, write);
  const { size, sheet: words } = fitting ?? { size: smallest, sheet: write(smallest) };
  const most = roomForPictures(words, MOST_PAGES - pagesOf(words));
  // With fewer drawings fewer numbers stand in the lines, and that may make room for one row more.
  const more = writeDrawn(card, size, most + PICTURES_IN_A_ROW);
  return (pagesOf(more) <= MOST_PAGES ? more : writeDrawn(card, size, most)).finish();
}

function writeDrawn(card: PatternCard, size: number, most: number): Sheet {
  const numbers = pictureNumbers(card.pattern, most);
  const sheet = writeCard(card, size, numbers);
  writePictures(sheet, card.pattern, numbers);
  return sheet;
}

/** The card without its drawings, which go where it leaves room. */
function writeCard(card: PatternCard, size: number, numbers: PictureNumbers): Sheet {
  const { pattern, stationName, now, kit } = card;
  const title = `${kit ? `${kit.name}, serial ${kit.serial}` : pattern.name}: card for one turnaround`;
  const of = kit ? `${kit.name}   serial ${kit.serial}   ` : "";
  const sheet = createSheet({ title, now, footer: `${stationName}   ${of}pattern ${patternKey(pattern)}` });
  sheet.title(title);
  sheet.paragraph(pattern.summary);
  writeHead(sheet, card, numbers.size > 0);
  sheet.gap(4);
  writeFlow(sheet, cardPieces(card, size, numbers));
  if (card.delivery) writeDelivery(sheet, card, card.delivery);
  return sheet;
}

function sayLift(container: Pattern["container"]): string {
  if (container.machines) return sayLifting(container);
  return container.lifters === 1 ? "one person lifts it" : `${container.lifters} people lift it`;
}

function writeDelivery(sheet: Sheet, card: PatternCard, { rows, setting }: NonNullable<PatternCard["delivery"]>): void {
  const height = card.pattern.hydraulics?.suction ? "Suction lift" : "Height of hose end";
  writeDeliveryTable(sheet, rows, setting, card.units, height);
}

function writeHead(sheet: Sheet, { pattern, units, kit }: PatternCard, isDrawn: boolean): void {
  const mass = formatQuantity(pattern.container.mass, "mass", { system: units });
  const lift = sayLift(pattern.container);
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
  const drawn = isDrawn ? " A number in [ ] is that of a drawing at the end." : "";
  sheet.paragraph(
    `At each line ring S for seen as it should be, W for found wrong, N for not possible, and write why beside it.${drawn}`,
  );
}
