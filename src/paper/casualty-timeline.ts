import { formatQuantity } from "#base";
import type { CasualtyState } from "#readiness";
import { writeTable, type Row } from "./rows.ts";
import { createSheet, type Sheet } from "./sheet.ts";
import { writeLevels } from "./casualty-levels.ts";
import { methodWords, timelineLines, utcWords, type KitOnPaper, type TimelineLog } from "./casualty-lines.ts";

export interface CasualtyTimeline extends TimelineLog {
  readonly stationName: string;
  readonly casualty: CasualtyState;
  /** Name by person id. */
  readonly people: ReadonlyMap<string, string>;
  /** RFC 3339 */
  readonly now: string;
}

/**
 * What happened to one casualty, line by line, with the soundings drawn.
 *
 * @returns a PDF
 */
export async function renderCasualtyTimeline(timeline: CasualtyTimeline): Promise<Uint8Array> {
  const { casualty, stationName, now } = timeline;
  const title = `${casualty.name}: timeline of ${casualty.opened.at.slice(0, 10)}`;
  const sheet = createSheet({ title, now, footer: `${stationName}   casualty ${casualty.id}` });
  sheet.title(title);
  writeSummary(sheet, timeline);
  writeLevels(sheet, casualty, timeline.units);
  writeLines(sheet, timeline);
  return sheet.finish();
}

function writeSummary(sheet: Sheet, timeline: CasualtyTimeline): void {
  const { casualty, kits, units } = timeline;
  const { boat, closed, soundings, hole } = casualty;
  const length = (si: number) => formatQuantity(si, "length", { system: units });
  const columns = [
    { name: "What", part: 0.25 },
    { name: "Record", part: 0.75 },
  ];
  const rows: Row[] = [
    { cells: ["Boat", `${boat.kind}, ${length(boat.length)}`] },
    { cells: ["Water in", casualty.spaces.map(({ name, part }) => `${name} (${part})`).join(", ")] },
    { cells: ["Hole, as told", hole?.diameter === undefined ? "not known" : `${length(hole.diameter)} across`] },
    { cells: ["Opened", `${utcWords(casualty.opened.at)} by ${nameOf(timeline, casualty.opened.by)}`] },
    {
      cells: ["Closed", closed ? `${utcWords(closed.at)}: ${closed.outcome.replaceAll("-", " ")}` : "not closed"],
      bold: true,
    },
    { cells: ["Soundings", String(soundings.length)] },
    { cells: ["Kits handed over", kits.map(kitWords).join("; ") || "none"] },
  ];
  sheet.gap(6);
  writeTable(sheet, columns, rows);
}

function kitWords({ name, handed }: KitOnPaper): string {
  if (handed === undefined) return `${name}, pumped on her; no hand-over written down`;
  return `${name}, ${utcWords(handed.at)}, ${methodWords(handed.method)}`;
}

function nameOf({ people }: CasualtyTimeline, person: string): string {
  return people.get(person) ?? person;
}

const COLUMNS = [
  { name: "When (UTC)", part: 0.18 },
  { name: "What", part: 0.62 },
  { name: "By", part: 0.2 },
];

function writeLines(sheet: Sheet, timeline: CasualtyTimeline): void {
  sheet.heading("Line by line");
  const rows = timelineLines(timeline).map(({ at, words, by, isGrave }) => ({
    cells: [utcWords(at), words, nameOf(timeline, by)],
    bold: isGrave,
  }));
  writeTable(sheet, COLUMNS, rows);
}
