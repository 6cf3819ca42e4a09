import { cautionNamed, formatQuantity, type CautionId, type Dimension, type UnitSystem } from "#base";
import { linesOf, patternKey, type Check, type Pattern, type PatternLine, type Step, type StepTimer } from "#kit";
import { writeCautions } from "./caution-panel.ts";
import { writeDeliveryTable, type DeliveryRow } from "./delivery-table.ts";
import { writeTable, type Row } from "./rows.ts";
import { createSheet, type Sheet } from "./sheet.ts";
import { secondsWords } from "./value-words.ts";

export interface PatternCard {
  readonly stationName: string;
  readonly pattern: Pattern;
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
  const { pattern, stationName, now } = card;
  const title = `${pattern.name}: card for one turnaround`;
  const sheet = createSheet({ title, now, footer: `${stationName}   pattern ${patternKey(pattern)}` });
  sheet.title(title);
  sheet.paragraph(pattern.summary);
  writeHead(sheet, pattern, card.units);
  const lines = linesOf(pattern);
  for (const stage of pattern.stages)
    writeStage(
      sheet,
      lines.filter((line) => line.stage === stage.id),
    );
  if (card.delivery) writeDelivery(sheet, card, card.delivery);
  return sheet.finish();
}

function writeDelivery(sheet: Sheet, card: PatternCard, { rows, setting }: NonNullable<PatternCard["delivery"]>): void {
  const height = card.pattern.hydraulics?.suction ? "Suction lift" : "Height of hose end";
  writeDeliveryTable(sheet, rows, setting, card.units, height);
}

function writeHead(sheet: Sheet, pattern: Pattern, units: UnitSystem): void {
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
  writeTable(sheet, columns, [{ cells: [], height: 22 }]);
}

const COLUMNS = [
  { name: "Line", part: 0.07 },
  { name: "What to do or look at, and what right looks like", part: 0.53 },
  { name: "Reading", part: 0.2 },
  { name: "Seen / wrong / not possible: why", part: 0.2 },
];

function writeStage(sheet: Sheet, lines: readonly PatternLine[]): void {
  const [first] = lines;
  if (first === undefined) return;
  sheet.heading(first.stageName);
  writeCautions(
    sheet,
    [...new Set(lines.map(({ step }) => step))].flatMap(({ cautions }) => cautions),
  );
  writeTable(
    sheet,
    COLUMNS,
    lines.map((line) => cardRow(line)),
  );
}

function cardRow(line: PatternLine): Row {
  const { check, step } = line;
  const own = check === undefined;
  const text = own ? `${signalsOf(step)}${line.text}` : `${line.text} Right: ${check.expect}`;
  const reading = own ? timerWords(step.timer) : checkWords(check);
  return {
    cells: [line.label, text, reading, line.answered ? "S    W    N" : ""],
    bold: own && !line.answered,
    height: line.answered ? 16 : 0,
  };
}

/** Signal word and hazard of each caution of a step; the whole panel stands at the head of its stage. */
function signalsOf(step: Step): string {
  const named = step.cautions.map((id) => cautionNamed(id as CautionId));
  return named.map(({ signal, hazard }) => `${signal}: ${hazard.toLowerCase()}. `).join("");
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
