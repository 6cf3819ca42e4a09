import { cautionNamed, formatQuantity, type CautionId, type Dimension, type UnitSystem } from "#base";
import { linesOf, patternKey, type Check, type Pattern, type PatternLine, type Step, type StepTimer } from "#kit";
import { sayMet } from "#readiness";
import { writeCautions } from "./caution-panel.ts";
import { writeDeliveryTable, type DeliveryRow } from "./delivery-table.ts";
import { writeTable, type Row } from "./rows.ts";
import { createSheet, type Sheet } from "./sheet.ts";
import { secondsWords } from "#station";

export interface PatternCard {
  readonly stationName: string;
  readonly pattern: Pattern;
  /** The kit it is printed for; without it both are written in by hand. */
  readonly kit?: { readonly name: string; readonly serial: string };
  readonly units: UnitSystem;
  /** RFC 3339 */
  readonly now: string;
  /** What the kit delivers at several lifts, where the pattern says enough to know. */
  readonly delivery?: { readonly rows: readonly DeliveryRow[]; readonly setting: string };
}

/**
 * The pattern as a card to work from and fill in without a device, with the screen's own line numbers.
 *
 * @returns a PDF
 */
export async function renderPatternCard(card: PatternCard): Promise<Uint8Array> {
  const { pattern, stationName, now, kit } = card;
  const title = `${kit ? `${kit.name}, serial ${kit.serial}` : pattern.name}: card for one turnaround`;
  const of = kit ? `${kit.name}   serial ${kit.serial}   ` : "";
  const sheet = createSheet({ title, now, footer: `${stationName}   ${of}pattern ${patternKey(pattern)}` });
  sheet.title(title);
  sheet.paragraph(pattern.summary);
  writeHead(sheet, card);
  const shown = new Set<string>();
  const lines = linesOf(pattern);
  for (const { id } of pattern.stages) {
    const own = lines.filter((line) => line.stage === id);
    writeStage(sheet, own, shown);
  }
  if (card.delivery) writeDelivery(sheet, card, card.delivery);
  return sheet.finish();
}

function writeDelivery(sheet: Sheet, card: PatternCard, { rows, setting }: NonNullable<PatternCard["delivery"]>): void {
  const height = card.pattern.hydraulics?.suction ? "Suction lift" : "Height of hose end";
  writeDeliveryTable(sheet, rows, setting, card.units, height);
}

function writeHead(sheet: Sheet, { pattern, units, kit }: PatternCard): void {
  const mass = formatQuantity(pattern.container.mass, "mass", { system: units });
  const { lifters } = pattern.container;
  const lift = lifters === 1 ? "one person lifts it" : `${lifters} people lift it`;
  sheet.paragraph(`Gross ${mass}; ${lift}. The unit's own manual comes first.`);
  sheet.gap(6);
  const columns = [
    { name: "Kit and serial", part: 0.3 },
    { name: "Seal seen", part: 0.2 },
    { name: "Date and time", part: 0.25 },
    { name: "Name", part: 0.25 },
  ];
  writeTable(sheet, columns, [{ cells: kit ? [`${kit.name}, ${kit.serial}`] : [], height: 22 }]);
}

const COLUMNS = [
  { name: "Line", part: 0.06 },
  { name: "What to do or look at, and what right looks like", part: 0.61 },
  { name: "Reading", part: 0.19 },
  { name: "Seen / wrong / not possible: why", part: 0.14 },
];

/** One stage. The panel of a caution stands where its danger first comes up; after that its signal word at each line. */
function writeStage(sheet: Sheet, lines: readonly PatternLine[], shown: Set<string>): void {
  const [first] = lines;
  if (first === undefined) return;
  sheet.heading(first.stageName);
  const fresh = new Set(lines.flatMap(({ step }) => step.cautions).filter((id) => !shown.has(id)));
  writeCautions(sheet, [...fresh]);
  for (const id of fresh) shown.add(id);
  writeTable(
    sheet,
    COLUMNS,
    lines.map((line) => cardRow(line)),
  );
}

function cardRow(line: PatternLine): Row {
  const { check, step } = line;
  const own = check === undefined;
  const text = own ? `${signalsOf(step)}${onlyAfter(step)}${line.text}` : `${line.text} Right: ${check.expect}`;
  const reading = own ? timerWords(step.timer) : checkWords(check);
  return {
    cells: [line.label, text, reading, line.answered ? "S    W    N" : ""],
    bold: own && !line.answered,
    height: line.answered ? 16 : 0,
  };
}

/** Signal word and hazard of each caution of a step; the whole panel stands where the danger first comes up. */
function signalsOf(step: Step): string {
  const named = step.cautions.map((id) => cautionNamed(id as CautionId));
  return named.map(({ signal, hazard }) => `${signal}: ${hazard.toLowerCase()}. `).join("");
}

/** Which turnarounds the line belongs to, where not to every one. */
function onlyAfter({ after }: Step): string {
  return after ? `Only after ${sayMet(after)}. ` : "";
}

function timerWords(timer: StepTimer | undefined): string {
  if (timer === undefined) return "";
  if (timer.kind === "pulls") return `pulls, at most ${timer.atMost}:`;
  if (timer.kind === "prime") return `to water, at most ${secondsWords(timer.atMost)}:`;
  return `at least ${secondsWords(timer.atLeast)}; from            to`;
}

function checkWords(check: Check): string {
  if (check.kind === "measure") return `${limitWords(check)}:`;
  if (check.kind === "count") return `${check.of}, ${check.exactly}:`;
  if (check.kind === "match" && check.against) return `${check.first}:`;
  if (check.kind === "match") return `${check.first}:\n${check.second}:`;
  if (check.kind === "date") return "printed date:";
  if (check.kind === "timed") return `${limitWords({ ...check, dimension: "time", unit: "s" })}:`;
  return "";
}

/** Limits in the unit that the pattern was written in, which is the one on the gauge. */
function limitWords({ atLeast, atMost, dimension, unit }: Limited): string {
  const say = (si: number): string => formatQuantity(si, dimension as Dimension, { unit });
  const parts = [
    atLeast === undefined ? "" : `at least ${say(atLeast)}`,
    atMost === undefined ? "" : `at most ${say(atMost)}`,
  ];
  return parts.filter(Boolean).join(", ") || unit;
}

interface Limited {
  readonly atLeast?: number;
  readonly atMost?: number;
  readonly dimension: string;
  readonly unit: string;
}
