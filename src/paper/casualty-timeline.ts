import { formatQuantity, type UnitSystem } from "#base";
import type { Entry } from "#log";
import { isCasualtyKind, type Bodies, type CasualtyBodies, type CasualtyState } from "#readiness";
import { writeTable, type Row } from "./rows.ts";
import { createSheet, type Sheet } from "./sheet.ts";
import { writeLevels } from "./casualty-levels.ts";
import { instantWords } from "./value-words.ts";

export interface CasualtyTimeline {
  readonly stationName: string;
  readonly casualty: CasualtyState;
  /** Every line in order, struck ones too, with the reason where one was struck. */
  readonly lines: readonly { readonly entry: Entry; readonly struck?: string }[];
  /** Kits handed over to her. */
  readonly kits: readonly { readonly name: string; readonly at: string; readonly method: string }[];
  /** Name by person id. */
  readonly people: ReadonlyMap<string, string>;
  readonly units: UnitSystem;
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
    { cells: ["Opened", `${instantWords(casualty.opened.at)} by ${nameOf(timeline, casualty.opened.by)}`] },
    {
      cells: ["Closed", closed ? `${instantWords(closed.at)}: ${closed.outcome.replaceAll("-", " ")}` : "not closed"],
      bold: true,
    },
    { cells: ["Soundings", String(soundings.length)] },
    {
      cells: [
        "Kits handed over",
        kits.map(({ name, at, method }) => `${name} ${instantWords(at)} (${method})`).join("; ") || "none",
      ],
    },
  ];
  sheet.gap(6);
  writeTable(sheet, columns, rows);
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
  const rows = timeline.lines
    .filter(({ entry }) => isCasualtyKind(entry.kind))
    .map(({ entry, struck }) => ({
      cells: [instantWords(entry.at), lineWords(entry, timeline.units, struck), nameOf(timeline, entry.by)],
      bold: entry.kind === "fuel-smelt",
    }));
  writeTable(sheet, COLUMNS, rows);
}

function lineWords(entry: Entry, units: UnitSystem, struck: string | undefined): string {
  const tell = TELLERS[entry.kind as keyof CasualtyBodies] as Tell<keyof CasualtyBodies>;
  const words = tell(entry.body as never, units);
  return struck === undefined ? words : `STRUCK (${struck}): ${words}`;
}

type Tell<Kind extends keyof CasualtyBodies> = (body: Bodies[Kind], units: UnitSystem) => string;

const TELLERS: { readonly [Kind in keyof CasualtyBodies]: Tell<Kind> } = {
  "casualty-opened": ({ name, note }) => joined(`Sheet opened: ${name}${note ? "." : ""}`, note),
  "casualty-changed": ({ boat, space, hole }) =>
    joined("Better known:", boat && "the boat's measures", space && `water in ${space.name}`, hole && "the hole"),
  "sounding-taken": ({ level, text }, units) =>
    `Sounded ${text}${units === "us" ? ` (${formatQuantity(level, "length", { unit: "in", digits: 2 })})` : ""}`,
  "pump-set": ({ name, running, flow }, units) =>
    running ? `${name} pumping, about ${formatQuantity(flow, "flow", { system: units, digits: 2 })}` : `${name} off`,
  "pump-refuelled": ({ pump }) => `Refuelled ${pump}`,
  "hole-patched": ({ open }) => `Plugged or patched: ${Math.round(100 * open)} % still open`,
  "stability-seen": ({ list, rollPeriod, righting }) =>
    joined(
      "Seen:",
      list === undefined ? undefined : listWords(list),
      rollPeriod === undefined ? undefined : `roll of ${rollPeriod.toFixed(1)} s`,
      righting && RIGHTING_WORDS[righting],
    ),
  "fuel-smelt": ({ note }) => joined("Fuel smelt: all pumps stopped", note),
  "fuel-cleared": ({ note }) => joined("Found clear of fuel:", note),
  "casualty-noted": ({ note }) => note,
  "casualty-closed": ({ outcome, note }) => joined(`Closed: ${outcome.replaceAll("-", " ")}${note ? "." : ""}`, note),
};

const RIGHTING_WORDS = {
  "comes-back": "comes back from a roll",
  slowly: "comes back slowly from a roll",
  stays: "stays over: does not come back",
} as const;

function joined(...parts: readonly (string | undefined)[]): string {
  return parts.filter((part) => part !== undefined && part !== "").join(" ");
}

function listWords(list: number): string {
  const degrees = Math.round((Math.abs(list) * 180) / Math.PI);
  return degrees === 0 ? "no list" : `list ${degrees}° to ${list > 0 ? "starboard" : "port"}`;
}
