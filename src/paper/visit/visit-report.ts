import { sayPercent } from "#words";
import { formatDate } from "#base";
import type { LinesProof } from "#log";
import { drawnIn, type Visit, type VisitedLine } from "#readiness";
import {
  instantWords,
  sayAssessorSaw,
  sayCounted,
  sayFoundWrong,
  sayKappa,
  sayKeeperWrote,
  reachOf,
  sayReach,
  sayVisitedLine,
  type LeftOut,
  type ParetoRow,
  type VisitedKitResult,
  type VisitResult,
} from "#station";
import type { TurnaroundRecord } from "../record/record.ts";
import { writeProof } from "../record-proof.ts";
import { writeTable, type Column, type Row } from "../rows.ts";
import { createSheet, type Sheet } from "../sheet.ts";
import { writeTurnaround } from "../turnaround-record.ts";
import { drawPareto } from "./pareto-picture.ts";

/** What the report of a visit that has ended is printed from. */
export interface VisitReport {
  readonly stationName: string;
  /** Of the places visited. */
  readonly placeNames: readonly string[];
  readonly visit: Visit;
  readonly result: VisitResult;
  /** By id. */
  readonly people: ReadonlyMap<string, string>;
  /** Findings of the year up to the end of the visit, in all the station. */
  readonly pareto: {
    readonly items: readonly ParetoRow[];
    readonly modes: readonly ParetoRow[];
    /** Those that count as nothing found. */
    readonly leftOut: LeftOut;
  };
  /** Of each kit drawn the record of the turnaround that it was compared with, appended whole. */
  readonly records: readonly TurnaroundRecord[];
  /** Lines behind the report with what shows that they are in the log, by place; empty where nothing signs. */
  readonly proofs: readonly LinesProof[];
  /** RFC 3339 */
  readonly now: string;
}

/** So many rows of a Pareto table are printed. */
const MOST_ROWS = 15;

const FACTS: readonly Column[] = [
  { name: "What", part: 0.24 },
  { name: "Visit", part: 0.76 },
];
const DIFFERED: readonly Column[] = [
  { name: "Kit", part: 0.12 },
  { name: "Line", part: 0.38 },
  { name: "Keeper wrote", part: 0.2 },
  { name: "Assessor saw", part: 0.3 },
];
const KIT_LINES: readonly Column[] = [
  { name: "Line", part: 0.42 },
  { name: "Keeper wrote", part: 0.29 },
  { name: "Assessor saw", part: 0.29 },
];
const PARETO: readonly Column[] = [
  { name: "What", part: 0.58 },
  { name: "Findings", part: 0.14 },
  { name: "Share", part: 0.14 },
  { name: "Up to here", part: 0.14 },
];

/**
 * The report of a visit: how it was drawn, how far assessor and keeper agree, what differed, each kit line by line, where
 * findings fall, the proof of the lines behind it, and the whole record that each kit was compared with.
 *
 * @param report - of a visit that has ended
 * @returns a PDF
 */
export async function renderVisitReport(report: VisitReport): Promise<Uint8Array> {
  const { visit, stationName, placeNames, now } = report;
  const title = `Visit to ${placeNames.join(", ")}, ${formatDate(visit.begun.at.slice(0, 10))}`;
  const sheet = createSheet({ title, now, footer: `${stationName}   visit ${visit.id}` });
  sheet.title(title);
  sheet.paragraph(`${stationName}. Lines drawn by chance, looked at again without sight of what the keeper wrote.`);
  sheet.gap(6);
  writeTable(sheet, FACTS, factRows(report));
  writeDiffered(sheet, report.result);
  writeTurnRound(sheet, report.result.kits);
  for (const kit of report.result.kits) writeKit(sheet, report, kit);
  writePareto(sheet, "Findings of the year by item", report.pareto.items);
  writePareto(sheet, "Findings of the year by what was wrong", report.pareto.modes);
  const { robbed, recalled, drill } = report.pareto.leftOut;
  sheet.paragraph(
    `Left out, for nobody found something wrong: ${robbed} taken out for another kit, ${recalled} by the recall of a lot, ${drill} planted in a drill.`,
  );
  writeProof(sheet, report.proofs);
  for (const record of report.records) {
    sheet.pdf.addPage();
    writeTurnaround(sheet, record);
  }
  return sheet.finish();
}

function factRows({ visit, result, people }: VisitReport): readonly Row[] {
  const { begun, ended } = visit;
  const name = (id: string) => people.get(id) ?? id;
  const drawn = begun.of.filter(({ lines }) => lines !== undefined).length;
  const { agreed, wrong, kappa } = result;
  return [
    { cells: ["Begun", `${instantWords(begun.at)}, ${name(begun.by)}`] },
    { cells: ["Ended", ended ? `${instantWords(ended.at)}, ${name(ended.by)}` : ""] },
    {
      cells: [
        "Asked for",
        `At least one wrong seen with a chance of ${sayPercent(begun.chance)} where ${sayPercent(begun.share)} are wrong`,
      ],
    },
    { cells: ["Sample", `${drawn} of ${begun.of.length} kits, and ${drawnIn(visit).length} lines in them`] },
    { cells: ["Reached", sayReach(visit, reachOf(visit, result))], bold: true },
    { cells: ["Seed", `${begun.seed}. ${DRAWN_AGAIN[result.drawnAgain]}`] },
    ...(ended?.reason === undefined ? [] : [{ cells: ["Lines left out", ended.reason] }]),
    { cells: ["Both say the same", agreed ? `on ${sayCounted(agreed)}` : "nothing was compared"], bold: true },
    { cells: ["Beyond chance", sayKappa(kappa)] },
    ...(wrong ? [{ cells: ["Found wrong", `${sayCounted(wrong)} of the lines looked at`] }] : []),
    { cells: ["In brackets", "From where to where it may lie, nineteen times in twenty, if lines were independent."] },
  ];
}

const DRAWN_AGAIN: Readonly<Record<VisitResult["drawnAgain"], string>> = {
  same: "Drawn again from it, the sample is the same.",
  other: "Drawn again from it, the sample is another.",
  "not-known": "It could not be drawn again here.",
};

function writeDiffered(sheet: Sheet, { missed, falseAlarms, readOtherwise }: VisitResult): void {
  writeLines(sheet, "Missed by the keeper", missed);
  writeLines(sheet, "False alarms", falseAlarms);
  writeLines(sheet, "Right by both, and read otherwise", readOtherwise);
}

function writeLines(sheet: Sheet, heading: string, lines: readonly VisitedLine[]): void {
  sheet.heading(`${heading}: ${lines.length}`);
  if (lines.length === 0) return;
  const rows = lines.map((line) => ({
    cells: [line.ofKit?.name ?? line.kit, sayVisitedLine(line), sayKeeperWrote(line), whatSeen(line)],
  }));
  writeTable(sheet, DIFFERED, rows);
}

function whatSeen(line: VisitedLine): string {
  return [sayAssessorSaw(line), sayFoundWrong(line), line.seen?.note].filter((one) => one !== undefined).join(". ");
}

function writeTurnRound(sheet: Sheet, kits: VisitResult["kits"]): void {
  const left = kits.filter(({ isNotTurnedRound }) => isNotTurnedRound);
  if (left.length === 0) return;
  const names = left.map(({ kit, id }) => kit?.name ?? id).join(", ");
  const words = `WARNING: looked into, and by the log never opened: ${names}. A pump that was looked into and not turned round may fail on the boat that needs it.`;
  sheet.gap(6);
  sheet.paragraph(words, { bold: true });
}

/** The record of one kit: with which turnaround it was compared, by whom it was closed, and every line of the visit. */
function writeKit(sheet: Sheet, { people }: VisitReport, { kit, id, turnaround, lines }: VisitedKitResult): void {
  const compared = kit?.turnarounds.find((one) => one.id === turnaround);
  const closed = compared?.closed;
  const by = closed ? `, closed ${instantWords(closed.at)} by ${people.get(closed.by) ?? closed.by}` : "";
  sheet.heading(kit ? `${kit.name}, serial ${kit.serial}` : id);
  sheet.paragraph(`Compared with turnaround ${turnaround}${by}. Pattern ${compared?.pattern ?? kit?.pattern ?? ""}.`);
  sheet.gap(3);
  const rows = lines.map((line) => ({
    cells: [sayVisitedLine(line), `${sayKeeperWrote(line)}${whenWrote(line)}`, whatSeen(line)],
    bold: !["both-right", "both-wrong"].includes(line.outcome),
  }));
  if (rows.length > 0) writeTable(sheet, KIT_LINES, rows);
}

function whenWrote({ wrote }: VisitedLine): string {
  return wrote ? `, ${instantWords(wrote.mark.at)}` : "";
}

function writePareto(sheet: Sheet, heading: string, rows: readonly ParetoRow[]): void {
  sheet.heading(heading);
  if (rows.length === 0) {
    sheet.paragraph("None.");
    return;
  }
  const told = rows.slice(0, MOST_ROWS).map(({ label, count, share, upTo }) => ({
    cells: [label, String(count), sayPercent(share), sayPercent(upTo)],
  }));
  drawPareto(sheet, rows);
  writeTable(sheet, PARETO, told);
  if (rows.length > MOST_ROWS) sheet.paragraph(`And ${rows.length - MOST_ROWS} more, each found no oftener.`);
}
