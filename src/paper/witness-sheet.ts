import { headCode, keyMark, type SignedHead } from "#log";
import { drawQr } from "./qr.ts";
import { createSheet, MARGIN, type Sheet } from "./sheet.ts";
import { instantWords } from "#station";

/** Side of a code with its quiet zone [pt]: 65 mm. */
const SIDE = (65 * 72) / 25.4;

/** What the sheet of heads tells. */
export interface WitnessSheet {
  readonly stationName: string;
  readonly heads: readonly SignedHead[];
  /** RFC 3339 */
  readonly now: string;
}

/**
 * Heads of the log on paper, each as a code to scan and to read: to be kept where whoever keeps the database cannot
 * reach it.
 *
 * @returns a PDF
 */
export async function renderWitnessSheet({ stationName, heads, now }: WitnessSheet): Promise<Uint8Array> {
  const title = "Heads of the log";
  const sheet = createSheet({ title, now, footer: `${stationName}   ${title}` });
  sheet.title(title);
  sheet.paragraph(
    `${stationName}. Keep this sheet away from the computer that has the log: in a safe, with an assessor.`,
  );
  sheet.paragraph(
    "Later, scan the codes into a text file and run: drykeel verify --witness FILE. It tells whether the log still begins with every line that was there when this was printed. It does not tell whether a line is true.",
  );
  for (const head of heads) writeHead(sheet, head);
  return sheet.finish();
}

/**
 * A head in words, as a code to scan, and as text.
 *
 * @param side - side of the code with its quiet zone [pt]
 */
export function writeHead(sheet: Sheet, head: SignedHead, side: number = SIDE): void {
  const { pdf, width } = sheet;
  const code = headCode(head);
  sheet.need(side + 40);
  sheet.heading(`${head.place}, line ${head.number}`);
  const top = pdf.y;
  drawQr(pdf, code, { x: MARGIN - 8, y: top, side });
  const [left, room] = [MARGIN + side, width - side];
  const lines = [
    `Signed ${instantWords(head.at)} UTC`,
    `Key ${keyMark(head.key)}`,
    `Chain ${head.hash}`,
    `Tree ${head.root}`,
    code,
  ];
  pdf.font("regular").fontSize(8).fillColor("#000");
  pdf.y = top + 8;
  for (const line of lines) {
    pdf.text(line, left, pdf.y, { width: room });
    pdf.moveDown(0.4);
  }
  pdf.y = Math.max(pdf.y, top + side) + 6;
}
