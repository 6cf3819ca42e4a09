import { formatDate, type PlainDate } from "#base";
import type { Person } from "#readiness";
import { sayCounts, sayTies, sayWhere, type Naming, type Training, type TrainingLine } from "#station";
import { ENGLISH } from "#words";
import { writeTable, type Column } from "../rows.ts";
import { createSheet } from "../sheet.ts";

/** What the training record of a person tells. */
export interface TrainingRecord {
  readonly stationName: string;
  readonly person: Person;
  /** The day at which it is told. */
  readonly day: PlainDate;
  readonly training: Training;
  readonly naming: Naming;
  /** RFC 3339 */
  readonly now: string;
}

const HELD: readonly Column[] = [
  { name: "Qualification", part: 0.24 },
  { name: "For", part: 0.34 },
  { name: "Last counted", part: 0.21 },
  { name: "Holds it until", part: 0.21 },
];
const DONE: readonly Column[] = [
  { name: "Day", part: 0.18 },
  { name: "Qualification", part: 0.22 },
  { name: "Where", part: 0.29 },
  { name: "Counts as", part: 0.31 },
];

/**
 * What a person holds and did, as the log says it.
 *
 * @returns a PDF
 */
export async function renderTrainingRecord(record: TrainingRecord): Promise<Uint8Array> {
  const { stationName, person, day, training, naming, now } = record;
  const title = `Training record of ${person.name}`;
  const sheet = createSheet({ title, now, footer: `${stationName}   ${title}` });
  sheet.title(title);
  sheet.paragraph(`${stationName}. As the log has it on ${formatDate(day)}: nobody writes this record, it follows.`);
  sheet.heading("Qualifications");
  if (training.lines.length === 0) sheet.paragraph("The station has set none.");
  else
    writeTable(
      sheet,
      HELD,
      training.lines.map((line) => ({ cells: heldCells(line, naming) })),
    );
  sheet.heading("Done, newest first");
  if (training.doings.length === 0) sheet.paragraph("Nothing yet.");
  const names = new Map(training.lines.map(({ qualification: { id, name } }) => [id, name]));
  const rows = training.doings.map((one) => ({
    cells: [
      formatDate(one.day),
      names.get(one.qualification) ?? "",
      sayWhere(one, naming, ENGLISH.practice),
      sayCounts(one, naming, ENGLISH.practice),
    ],
  }));
  if (rows.length > 0) writeTable(sheet, DONE, rows);
  return sheet.finish();
}

function heldCells({ qualification, holding, isHeld }: TrainingLine, naming: Naming): readonly string[] {
  const until = holding === undefined ? "never held" : formatDate(holding.until);
  return [
    qualification.name,
    sayTies(qualification, naming, ENGLISH.practice).join(", "),
    holding === undefined
      ? "nothing yet"
      : `${formatDate(holding.last.day)}, ${sayCounts(holding.last, naming, ENGLISH.practice)}`,
    isHeld || holding === undefined ? until : `lapsed on ${until}`,
  ];
}
