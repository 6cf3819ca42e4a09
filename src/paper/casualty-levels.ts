import { inUnit, type UnitSystem } from "#base";
import type { CasualtyState } from "#readiness";
import { MARGIN, type Sheet } from "./sheet.ts";

/** Height of the drawing with its axis [pt]. */
const HEIGHT = 150;
const LEFT = 34;
const FOOT = 20;

/** Soundings over time, a mark for each space, with a bar where pumps ran. */
export function writeLevels(sheet: Sheet, casualty: CasualtyState, units: UnitSystem): void {
  if (casualty.soundings.length < 2) return;
  sheet.heading("Soundings");
  sheet.need(HEIGHT + 20);
  const frame = frameOf(sheet, casualty);
  drawAxes(sheet, frame, units);
  for (const space of casualty.spaces) drawSpace(sheet, frame, casualty, space.id);
  drawRuns(sheet, frame, casualty);
  sheet.pdf.x = MARGIN;
  sheet.pdf.y = frame.bottom + FOOT;
}

interface Frame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly from: number;
  readonly to: number;
  readonly highest: number;
}

function frameOf(sheet: Sheet, { soundings }: CasualtyState): Frame {
  const times = soundings.map(({ at }) => Date.parse(at));
  return {
    left: MARGIN + LEFT,
    right: MARGIN + sheet.width,
    top: sheet.pdf.y + 12,
    bottom: sheet.pdf.y + HEIGHT - FOOT,
    from: Math.min(...times),
    to: Math.max(...times, Math.min(...times) + 60_000),
    highest: 1.1 * Math.max(0.1, ...soundings.map(({ level }) => level)),
  };
}

function placeX({ left, right, from, to }: Frame, at: number): number {
  return left + ((right - left) * (Math.min(to, Math.max(from, at)) - from)) / (to - from);
}

function placeY({ top, bottom, highest }: Frame, level: number): number {
  return bottom - ((bottom - top) * level) / highest;
}

function drawAxes({ pdf }: Sheet, frame: Frame, units: UnitSystem): void {
  const unit = units === "metric" ? "cm" : "in";
  pdf.lineWidth(0.8).strokeColor("#000");
  pdf.moveTo(frame.left, frame.top).lineTo(frame.left, frame.bottom).lineTo(frame.right, frame.bottom).stroke();
  pdf.font("regular").fontSize(8).fillColor("#000");
  for (const share of [0, 0.5, 1]) {
    const figure = Math.round(inUnit(share * frame.highest, unit, "length"));
    const y = placeY(frame, share * frame.highest);
    pdf.text(`${figure} ${unit}`, MARGIN, y - 4, { width: LEFT - 4, align: "right", lineBreak: false });
  }
  for (const share of [0, 0.5, 1]) {
    const at = new Date(frame.from + share * (frame.to - frame.from)).toISOString();
    const x = frame.left + share * (frame.right - frame.left) - (share === 1 ? 44 : 0);
    pdf.text(`${at.slice(11, 16)} UTC`, x, frame.bottom + 5, { width: 60, lineBreak: false });
  }
}

function drawSpace({ pdf }: Sheet, frame: Frame, { soundings }: CasualtyState, space: string): void {
  const own = soundings.filter((one) => one.space === space);
  own.forEach(({ at, level }, i) => {
    const [x, y] = [placeX(frame, Date.parse(at)), placeY(frame, level)];
    const before = own[i - 1];
    if (before)
      pdf
        .moveTo(placeX(frame, Date.parse(before.at)), placeY(frame, before.level))
        .lineTo(x, y)
        .stroke();
    pdf.circle(x, y, 2.4).fill("#000");
  });
}

function drawRuns({ pdf }: Sheet, frame: Frame, { pumps }: CasualtyState): void {
  for (const { from, to } of pumps.flatMap(({ runs }) => runs)) {
    const start = placeX(frame, Date.parse(from));
    const end = to === undefined ? frame.right : placeX(frame, Date.parse(to));
    pdf.rect(start, frame.bottom - 3, Math.max(1, end - start), 3).fill("#000");
  }
}
