import { formatDate, formatQuantity, type UnitSystem } from "#base";
import { itemNamed, linesOf, modeNamed, stageNamed, type Pattern, type StageId } from "#kit";
import {
  answerKey,
  recordOf,
  type Finding,
  type KitState,
  type RecordLine,
  type Remedy,
  type Standing,
  type Turnaround,
} from "#readiness";
import type { Photo } from "#station";
import { writePhotos } from "./photos.ts";
import { writeTable, type Row } from "./rows.ts";
import { createSheet, type Sheet } from "./sheet.ts";
import { answerWords, dateWords, instantWords, secondsWords, valueWords } from "./value-words.ts";

export interface TurnaroundRecord {
  readonly stationName: string;
  readonly placeName: string;
  readonly kit: KitState;
  readonly turnaround: Turnaround;
  readonly pattern: Pattern;
  /** The kit's standing now. */
  readonly standing: Standing;
  /** Name by person id. */
  readonly people: ReadonlyMap<string, string>;
  /** Photos by hash, those that are to be had. */
  readonly photos: ReadonlyMap<string, Photo>;
  readonly units: UnitSystem;
  /** RFC 3339 */
  readonly now: string;
}

/**
 * The record of one turnaround: who, when, each line with what was seen, findings, photos, the new seal and what the
 * kit is good for.
 *
 * @returns a PDF
 */
export async function renderTurnaroundRecord(record: TurnaroundRecord): Promise<Uint8Array> {
  const { kit, turnaround, stationName, now } = record;
  const title = `${kit.name}, serial ${kit.serial}: turnaround of ${turnaround.opened.at.slice(0, 10)}`;
  const sheet = createSheet({ title, now, footer: `${stationName}   ${kit.serial}   turnaround ${turnaround.id}` });
  sheet.title(title);
  sheet.paragraph(`${stationName}, ${record.placeName}. Pattern ${kit.pattern}.`);
  writeSummary(sheet, record);
  writeLines(sheet, record);
  writeRuns(sheet, record);
  writeFindings(sheet, record);
  writePhotos(sheet, photosOf(record), record.photos);
  return sheet.finish();
}

function nameOf({ people }: TurnaroundRecord, person: string): string {
  return people.get(person) ?? person;
}

function writeSummary(sheet: Sheet, record: TurnaroundRecord): void {
  const { turnaround, standing, kit } = record;
  const { opened, closed } = turnaround;
  const columns = [
    { name: "What", part: 0.2 },
    { name: "Record", part: 0.8 },
  ];
  const rows: Row[] = [
    { cells: ["Opened", `${instantWords(opened.at)} by ${nameOf(record, opened.by)}, because: ${turnaround.because}`] },
    { cells: ["Seal seen", opened.sealSeen] },
    {
      cells: [
        "Closed",
        closed ? `${instantWords(closed.at)} by ${nameOf(record, closed.by)}: ${closed.how}` : "not closed",
      ],
    },
    { cells: ["New seal", closed?.seal ?? "none"], bold: true },
    ...(closed?.reason ? [{ cells: ["Reason", closed.reason] }] : []),
    { cells: ["Standing now", standingWords(standing)], bold: true },
    { cells: ["Because", standing.because.map(({ text }) => text).join(" ")] },
    ...(kit.toSettle.length > 0 ? [{ cells: ["To settle", kit.toSettle.map(({ about }) => about).join(" ")] }] : []),
  ];
  sheet.gap(6);
  writeTable(sheet, columns, rows);
}

function standingWords({ standing, lapse, limits }: Standing): string {
  const until = lapse ? `, until ${formatDate(lapse.day)} (${lapse.what})` : "";
  const limited = limits.length > 0 ? `. Limits: ${limits.join("; ")}` : "";
  return `${standing.replaceAll("-", " ")}${until}${limited}`;
}

const LINE_COLUMNS = [
  { name: "Line", part: 0.07 },
  { name: "What", part: 0.45 },
  { name: "Seen", part: 0.28 },
  { name: "Who, when", part: 0.2 },
];

function writeLines(sheet: Sheet, record: TurnaroundRecord): void {
  const lines = recordOf(record.turnaround, record.pattern);
  const labels = labelsOf(record.pattern);
  const stages = [...new Set(lines.map(({ stage }) => stage))];
  for (const stage of stages) {
    sheet.heading(stageNamed(record.pattern, stage as StageId)?.name ?? stage);
    writeTable(
      sheet,
      LINE_COLUMNS,
      lines.filter((line) => line.stage === stage).map((line) => lineRow(record, line, labels)),
    );
  }
}

/** Line labels as the card and the screen print them, by step or "step/check". */
function labelsOf(pattern: Pattern): ReadonlyMap<string, string> {
  return new Map(linesOf(pattern).map(({ label, step, check }) => [answerKey(step.id, check?.id), label]));
}

function lineRow(record: TurnaroundRecord, line: RecordLine, labels: ReadonlyMap<string, string>): Row {
  const when = line.mark ? `${nameOf(record, line.mark.by)}, ${instantWords(line.mark.at)}` : "";
  return {
    cells: [labels.get(answerKey(line.step, line.check)) ?? String(line.line), line.text, seenWords(line), when],
    bold: line.answer === "wrong",
  };
}

function seenWords({ answer, value, why, note }: RecordLine): string {
  if (answer === undefined) return "no answer";
  const parts = [answerWords(answer), value && valueWords(value), why && `because ${why}`, note];
  return parts.filter(Boolean).join("; ");
}

function writeRuns(sheet: Sheet, record: TurnaroundRecord): void {
  const { turnaround, pattern, units } = record;
  const timers = Object.entries(turnaround.timers);
  if (timers.length === 0 && turnaround.measured.length === 0) return;
  sheet.heading("Waits, starts and runs");
  const steps = new Map(pattern.stages.flatMap(({ steps }) => steps).map((step) => [step.id, step]));
  const rows = timers.map(([id, timer]) => {
    const step = steps.get(id);
    const found = [
      timer.pulls === undefined ? "" : `${timer.pulls} pulls`,
      timer.seconds === undefined ? "" : secondsWords(timer.seconds),
      timer.reached === false ? "not reached" : "",
    ];
    return {
      cells: [
        String(step?.line ?? ""),
        step?.text ?? id,
        found.filter(Boolean).join(", ") || "running",
        nameOf(record, timer.mark.by),
      ],
    };
  });
  const measured = turnaround.measured.map((run) => ({
    cells: [
      String(steps.get(run.step)?.line ?? ""),
      `Delivery by ${run.method.replaceAll("-", " ")}, lift ${formatQuantity(run.lift, "length", { system: units })}`,
      `${formatQuantity(run.flow, "flow", { system: units })}, ${Math.round(run.ratio * 100)} % of expected: ${run.verdict.replaceAll("-", " ")}`,
      nameOf(record, run.mark.by),
    ],
  }));
  writeTable(sheet, LINE_COLUMNS, [...rows, ...measured]);
}

function findingsOf({ kit, turnaround }: TurnaroundRecord): readonly Finding[] {
  return kit.findings.filter((finding) => finding.turnaround === turnaround.id);
}

function photosOf(record: TurnaroundRecord): readonly { readonly hash: string; readonly caption: string }[] {
  const ofFindings = findingsOf(record).flatMap((finding) =>
    finding.photos.map(({ hash }) => ({ hash, caption: `Finding: ${findingWords(record.pattern, finding)}` })),
  );
  const ofLines = Object.values(record.turnaround.answers).flatMap((answer) =>
    (answer.photos ?? []).map(({ hash }) => ({
      hash,
      caption: `Step ${answer.step}, ${instantWords(answer.mark.at)}`,
    })),
  );
  return [...ofFindings, ...ofLines];
}

function writeFindings(sheet: Sheet, record: TurnaroundRecord): void {
  const findings = findingsOf(record);
  sheet.heading("Findings");
  if (findings.length === 0) return sheet.paragraph("None raised in this turnaround.");
  const columns = [
    { name: "Finding", part: 0.42 },
    { name: "Effect", part: 0.13 },
    { name: "Remedy", part: 0.3 },
    { name: "Closed", part: 0.15 },
  ];
  const rows = findings.map((finding) => ({
    cells: [
      [findingWords(record.pattern, finding), finding.note].filter(Boolean).join(". "),
      finding.effect,
      finding.remedies.map(({ remedy }) => remedyWords(remedy)).join("; ") || "none yet",
      finding.closed ? instantWords(finding.closed.at) : "open",
    ],
  }));
  writeTable(sheet, columns, rows);
}

function findingWords(pattern: Pattern, finding: Finding): string {
  const item = itemNamed(pattern, finding.item)?.name ?? finding.item;
  return `${item}: ${modeNamed(pattern, finding.mode)?.name ?? finding.mode}`;
}

function remedyWords(remedy: Remedy): string {
  if (remedy.how === "mended") return `mended: ${remedy.note}`;
  if (remedy.how === "replaced") return `replaced: ${remedy.quantity} x ${remedy.part}`;
  return `lived with by ${remedy.name} until ${dateWords(remedy.until)}: ${remedy.limit}`;
}
