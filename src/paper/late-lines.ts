import { lateBy, sayLateness, type Entry } from "#log";
import { writeTable, type Row } from "./rows.ts";
import type { Sheet } from "./sheet.ts";
import { instantWords } from "#station";

/** A line that the station received long after it was written. */
export interface LateLine {
  readonly entry: Entry;
  /** RFC 3339. */
  readonly received: string;
}

const COLUMNS = [
  { name: "Written", part: 0.18 },
  { name: "Line", part: 0.32 },
  { name: "By", part: 0.2 },
  { name: "Received (UTC)", part: 0.3 },
];

/** Lines of a record that came late, each with when: what a reader must know who asks what others saw at the time. */
export function writeLateLines(sheet: Sheet, lines: readonly LateLine[], nameOf: (person: string) => string): void {
  if (lines.length === 0) return;
  sheet.heading("Received late");
  sheet.paragraph(
    "The station received these lines more than a day after they were written. Until then nobody else saw them, and when they were written is known from their device's clock alone.",
  );
  writeTable(
    sheet,
    COLUMNS,
    lines.map((line) => lateRow(line, nameOf)),
  );
}

/** When it was written, what it is, who wrote it, and when it was received. */
export function lateRow({ entry, received }: LateLine, nameOf: (person: string) => string): Row {
  const { at, kind, by, body } = entry;
  return { cells: [instantWords(at), lineWords(kind, body), nameOf(by), receiptWords(at, received)] };
}

function lineWords(kind: string, body: unknown): string {
  const { step } = (body ?? {}) as { readonly step?: unknown };
  return `${kind.replaceAll("-", " ")}${typeof step === "string" ? `: ${step}` : ""}`;
}

/** "2027-03-14 10:02, 3 days after it was written" */
function receiptWords(at: string, received: string): string {
  return `${instantWords(received)}, ${sayLateness(lateBy(at, received) ?? 0)}`;
}
