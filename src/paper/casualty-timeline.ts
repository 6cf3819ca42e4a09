import { sayDuration, sayLength } from "#words";
import type { CasualtyState } from "#readiness";
import {
  methodWords,
  positionsTold,
  pumpTracks,
  timelineLines,
  utcWords,
  writersOf,
  type KitOnPaper,
  type PumpTrack,
  type TimelineLine,
  type TimelineLog,
} from "#station";
import { writeTable, type Row } from "./rows.ts";
import { createSheet, type Sheet } from "./sheet.ts";
import { writeLevels } from "./casualty-levels.ts";

export interface CasualtyTimeline extends TimelineLog {
  readonly stationName: string;
  readonly casualty: CasualtyState;
  /** Name by person id. */
  readonly people: ReadonlyMap<string, string>;
  /** What the page said upon a line, by the line's entry id. */
  readonly said: ReadonlyMap<string, string>;
  /** RFC 3339 */
  readonly now: string;
}

/**
 * What happened to one casualty: each pump apart, then line by line with what the page said at that moment, who wrote it
 * and the soundings drawn.
 *
 * @returns a PDF
 */
export async function renderCasualtyTimeline(timeline: CasualtyTimeline): Promise<Uint8Array> {
  const { casualty, stationName, now } = timeline;
  const title = `${casualty.name}: timeline of ${casualty.opened.at.slice(0, 10)}`;
  const sheet = createSheet({ title, now, footer: `${stationName}   casualty ${casualty.id}` });
  const lines = timelineLines(timeline);
  sheet.title(title);
  writeSummary(sheet, timeline);
  writeLevels(sheet, casualty, timeline.units);
  for (const track of pumpTracks(casualty, lines)) writePump(sheet, timeline, track);
  writeLines(sheet, timeline, lines);
  return sheet.finish();
}

function writeSummary(sheet: Sheet, timeline: CasualtyTimeline): void {
  const { casualty, kits, units } = timeline;
  const { boat, closed, soundings, hole } = casualty;
  const columns = [
    { name: "What", part: 0.25 },
    { name: "Record", part: 0.75 },
  ];
  const rows: Row[] = [
    { cells: ["Boat", `${boat.kind}, ${sayLength(boat.length, units, "hull")}`] },
    { cells: ["Position", positionWords(timeline)] },
    { cells: ["Water in", casualty.spaces.map(({ name, part }) => `${name} (${part})`).join(", ")] },
    {
      cells: [
        "Hole, as told",
        hole?.diameter === undefined ? "not known" : `${sayLength(hole.diameter, units)} across`,
      ],
    },
    { cells: ["Opened", `${utcWords(casualty.opened.at)} by ${nameOf(timeline, casualty.opened.by)}`] },
    {
      cells: ["Closed", closed ? `${utcWords(closed.at)}: ${closed.outcome.replaceAll("-", " ")}` : "not closed"],
      bold: true,
    },
    { cells: ["Soundings", String(soundings.length)] },
    { cells: ["Kits handed over", kits.map(kitWords).join("; ") || "none"] },
    { cells: ["Written by", writerWords(timeline)] },
  ];
  sheet.gap(6);
  writeTable(sheet, columns, rows);
}

function positionWords(timeline: CasualtyTimeline): string {
  const told = positionsTold(timeline.lines).map(
    ({ at, position, by }) => `${utcWords(at).slice(11)} ${position} (${nameOf(timeline, by)})`,
  );
  return told.join("; ") || "not told";
}

function writerWords(timeline: CasualtyTimeline): string {
  return writersOf(timeline.lines)
    .map(({ by, lines }) => `${nameOf(timeline, by)}, ${lines} ${lines === 1 ? "line" : "lines"}`)
    .join("; ");
}

function kitWords({ name, handed }: KitOnPaper): string {
  if (handed === undefined) return `${name}, pumped on her; no hand-over written down`;
  return `${name}, ${utcWords(handed.at)}, ${methodWords(handed.method)}`;
}

function nameOf({ people }: CasualtyTimeline, person: string): string {
  return people.get(person) ?? person;
}

const PUMP_COLUMNS = [
  { name: "When (UTC)", part: 0.16 },
  { name: "What", part: 0.66 },
  { name: "By", part: 0.18 },
];

/** One pump apart, with how long it ran in all. */
function writePump(sheet: Sheet, timeline: CasualtyTimeline, { name, ran, lines }: PumpTrack): void {
  sheet.heading(`${name}: ${ran === undefined ? "still running by the log" : `ran ${ranWords(ran)} in all`}`);
  const rows = lines.map(({ at, words, by, isGrave }) => ({
    cells: [utcWords(at), words, nameOf(timeline, by)],
    bold: isGrave,
  }));
  writeTable(sheet, PUMP_COLUMNS, rows);
}

/** Running time [s], to the minute. */
function ranWords(ran: number): string {
  return ran === 0 ? "not" : sayDuration(Math.max(60, ran), "minutes");
}

const COLUMNS = [
  { name: "When (UTC)", part: 0.16 },
  { name: "What", part: 0.42 },
  { name: "The page said", part: 0.26 },
  { name: "By", part: 0.16 },
];

function writeLines(sheet: Sheet, timeline: CasualtyTimeline, lines: readonly TimelineLine[]): void {
  sheet.heading("Line by line");
  sheet.paragraph(SAID);
  sheet.gap(4);
  const rows = lines.map(({ at, words, by, isGrave, entry }) => ({
    cells: [utcWords(at), words, timeline.said.get(entry ?? "") ?? "nothing new", nameOf(timeline, by)],
    bold: isGrave,
  }));
  writeTable(sheet, COLUMNS, rows);
}

const SAID =
  "What the page said upon a line is computed anew from the lines that its writer's device had at that moment, by this program as it is now.";
