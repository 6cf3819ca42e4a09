import type { ParetoRow } from "#station";
import { printable } from "../printable.ts";
import { MARGIN, type Sheet } from "../sheet.ts";

/** So many bars are drawn; the table has more. */
const MOST_BARS = 8;
/** Of one bar with its name [pt]. */
const ROW = 22;
const BAR = 7;
const POINT = 2;

/** Bars, the longest first, with the line of their running share over the same axis from 0 to 100 %. */
export function drawPareto(sheet: Sheet, rows: readonly ParetoRow[]): void {
  const bars = rows.slice(0, MOST_BARS);
  sheet.need(ROW * (bars.length + 1) + 20);
  const top = sheet.pdf.y + 12;
  drawAxis(sheet, top, top + ROW * bars.length);
  for (const [at, bar] of bars.entries()) drawBar(sheet, bar, top + ROW * at);
  drawRunning(sheet, bars, top);
  sheet.pdf.y = top + ROW * bars.length + 4;
  sheet.paragraph("Bar: share of all findings. Line and points: its running share.", { size: 8 });
  sheet.gap(4);
}

function across({ width }: Sheet, share: number): number {
  return MARGIN + share * (width - 30);
}

function middle(top: number): number {
  return top + ROW - BAR / 2 - 2;
}

function drawAxis(sheet: Sheet, top: number, bottom: number): void {
  const { pdf } = sheet;
  for (const share of [0, 0.25, 0.5, 0.75, 1]) {
    const x = across(sheet, share);
    pdf.lineWidth(0.3).moveTo(x, top).lineTo(x, bottom).stroke("#999");
    pdf.font("regular").fontSize(7).fillColor("#000");
    pdf.text(`${100 * share} %`, x, top - 9, { lineBreak: false });
  }
}

function drawBar(sheet: Sheet, { label, count, share }: ParetoRow, top: number): void {
  const { pdf } = sheet;
  pdf.font("regular").fontSize(8).fillColor("#000");
  pdf.text(printable(`${label}: ${count}`), MARGIN + 2, top + 2, { lineBreak: false });
  pdf.rect(MARGIN, middle(top) - BAR / 2, Math.max(1, across(sheet, share) - MARGIN), BAR).fill("#555");
}

function drawRunning(sheet: Sheet, bars: readonly ParetoRow[], top: number): void {
  const { pdf } = sheet;
  const points = bars.map(({ upTo }, at) => [across(sheet, upTo), middle(top + ROW * at)] as const);
  for (const [at, [x, y]] of points.entries()) {
    if (at === 0) pdf.moveTo(x, y);
    else pdf.lineTo(x, y);
  }
  pdf.lineWidth(0.8).stroke("#000");
  for (const [x, y] of points) pdf.circle(x, y, POINT).fill("#000");
}
