import { dayWritten, formatDate } from "#base";
import { briefingOf, itemNamed, type Pattern } from "#kit";
import type { Bodies, KitState, StandingInWords } from "#readiness";
import { instantWords, methodWords, PAD, strokesOf } from "#station";
import { MARGIN, createSheet, type Sheet } from "../sheet.ts";
import { writeTable } from "../rows.ts";

/** What the receipt for a kit that was handed over tells. */
export interface Receipt {
  readonly stationName: string;
  readonly kit: KitState;
  readonly pattern: Pattern;
  readonly placeName: string;
  /** How it stood: the vessel must know its limits, and that it is not ready. */
  readonly standing: Pick<StandingInWords, "standing" | "because" | "limits">;
  readonly handedBy: string;
  /** RFC 3339, when it went. */
  readonly at: string;
  readonly handOver: Bodies["handed-over"];
  /** RFC 3339 */
  readonly now: string;
}

/** Height of the place to sign [pt]. */
const SIGN_HEIGHT = 60;

/**
 * One page for the vessel: which kit, what goes with it, by when it is expected back, what its people were told, and who
 * took it.
 *
 * @returns a PDF
 */
export async function renderReceipt(receipt: Receipt): Promise<Uint8Array> {
  const { stationName, kit, now } = receipt;
  const title = `Receipt for ${kit.name}`;
  const sheet = createSheet({ title, now, footer: `${stationName}   ${title}` });
  sheet.title(title);
  writeWhat(sheet, receipt);
  writeContents(sheet, receipt);
  writeBriefing(sheet, receipt);
  writeTaken(sheet, receipt);
  return sheet.finish();
}

function writeWhat(
  sheet: Sheet,
  { stationName, kit, pattern, placeName, standing, handedBy, at, handOver }: Receipt,
): void {
  const { to, method, sealBroken, back, note } = handOver;
  sheet.paragraph(`${pattern.name}, serial ${kit.serial}, of ${stationName}, ${placeName}.`);
  sheet.paragraph(`Handed over to ${to}, ${methodWords(method)}, on ${instantWords(at)} by ${handedBy}.`);
  sheet.paragraph(sealWords(kit, sealBroken));
  const expected = back === undefined ? "No day was agreed." : `By ${formatDate(back)}.`;
  sheet.paragraph(`Expected back: ${expected}`, { bold: true });
  for (const line of standingLines(standing)) sheet.paragraph(line, { bold: true });
  if (note !== undefined) sheet.paragraph(`Note: ${note}`);
}

/** What keeps the kit from being ready, or each of its limits; nothing of one that is ready without limits. */
export function standingLines({ standing, because, limits }: Receipt["standing"]): readonly string[] {
  const limited = limits.map((limit) => `Limit: ${limit}`);
  if (standing === "ready" || standing === "ready-with-limits") return limited;
  const reasons = because.map(({ text }) => text).join(" ");
  return [`WARNING: not ready when it went: ${standing}. ${reasons}`, ...limited];
}

/** No seal is called whole that nobody ever read. */
export function sealWords({ seal }: Pick<KitState, "seal">, isBroken: boolean): string {
  if (isBroken) return "Its seal was broken or taken off.";
  return seal === undefined ? "No seal of it is on record." : `Its seal was whole, number ${seal.number}.`;
}

const CONTENTS = [
  { name: "Item", part: 0.62 },
  { name: "Number", part: 0.14 },
  { name: "Back", part: 0.24 },
];

/** What belongs in it, with a column to tick when it comes back. */
function writeContents(sheet: Sheet, { pattern, standing, handOver: { lent = [] } }: Receipt): void {
  const counted = pattern.afterUse?.counted ?? [];
  const items = counted.length === 0 ? pattern.items : counted.flatMap(({ item }) => itemNamed(pattern, item) ?? []);
  sheet.heading(standing.standing.startsWith("ready") ? "What goes with it" : "What belongs to it: count it");
  writeTable(sheet, CONTENTS, [
    ...items.map(({ name, quantity }) => ({ cells: [name, String(quantity), ""] })),
    ...lent.map(({ name, count }) => ({ cells: [`Lent with it: ${name}`, String(count), ""] })),
  ]);
}

const SAID = { true: "Said, and understood.", false: "There was no time to say it. Read it before starting." } as const;

function writeBriefing(sheet: Sheet, { pattern, handOver: { briefed } }: Receipt): void {
  const briefing = briefingOf(pattern);
  if (briefing === undefined) return;
  sheet.heading("Before it is started");
  for (const [at, line] of briefing.entries()) sheet.paragraph(`${at + 1}. ${line}`, { size: 10 });
  if (briefed !== undefined) sheet.paragraph(SAID[`${briefed}`]);
  sheet.paragraph("The kit's own manual and the rules of whoever commands come before this page.");
}

function writeTaken(sheet: Sheet, { handOver: { taken }, at }: Receipt): void {
  sheet.heading("Taken by");
  sheet.need(SIGN_HEIGHT + 30);
  const name = taken?.name ?? "______________________________";
  sheet.paragraph(`${name}   ${formatDate(dayWritten(at))}`);
  const top = sheet.pdf.y + 4;
  sheet.pdf
    .lineWidth(0.5)
    .rect(MARGIN, top, (SIGN_HEIGHT * PAD.width) / PAD.height, SIGN_HEIGHT)
    .stroke("#555");
  if (taken?.strokes !== undefined) drawStrokes(sheet, taken.strokes, top);
  sheet.pdf.y = top + SIGN_HEIGHT + 6;
}

/** A signature as it was drawn, scaled to its place. */
function drawStrokes({ pdf }: Sheet, strokes: string, top: number): void {
  const scale = SIGN_HEIGHT / PAD.height;
  for (const [[x, y], ...more] of strokesOf(strokes)) {
    pdf.moveTo(MARGIN + x * scale, top + y * scale);
    for (const [nextX, nextY] of more.length === 0 ? [[x + 1, y] as const] : more)
      pdf.lineTo(MARGIN + nextX * scale, top + nextY * scale);
    pdf.lineWidth(1.2).lineCap("round").lineJoin("round").stroke("#000");
  }
}
