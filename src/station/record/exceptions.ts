import { allSteps, itemNamed } from "#kit";
import { recordOf, type Finding, type RecordLine } from "#readiness";
import type { RecordRead, RecordTable } from "./record.ts";
import { instantWords } from "./value-words.ts";
import { answersAt, findingsOf, labelOf, linesOfKind, nameOf, said, whoWhen } from "./record-reading.ts";
import { findingWords, labelsOf, remedyWords } from "./record-words.ts";

/** What is said where there is no exception. */
export const NO_EXCEPTIONS = "None: every line was found right, and no finding was raised.";

/**
 * What was not seen right at once, to be told first: findings, then lines found wrong, not possible or not answered,
 * readings taken more than once, clocks that fell short.
 *
 * @returns tables without rows where there is none of it
 */
export function exceptionsOf(record: RecordRead): { readonly findings: RecordTable; readonly amiss: RecordTable } {
  const rows = [...amissOf(record), ...shortClocks(record), ...datesNotRead(record)];
  return { findings: findingTable(record), amiss: { columns: AMISS_COLUMNS, rows } };
}

function findingTable(record: RecordRead): RecordTable {
  const columns = [
    { name: "Finding", part: 0.42 },
    { name: "Effect", part: 0.13 },
    { name: "Remedy", part: 0.3 },
    { name: "Closed", part: 0.15 },
  ];
  const rows = findingsOf(record).map((finding) => ({
    cells: [
      [findingWords(record.pattern, finding), finding.note].filter(Boolean).join(". "),
      [finding.effect, finding.limit].filter(Boolean).join(": "),
      finding.remedies
        .map(({ remedy }) => remedyWords(remedy, itemNamed(record.pattern, finding.item)?.quantity ?? 1))
        .join("; ") || noRemedy(finding),
      finding.closed ? instantWords(finding.closed.at) : "open",
    ],
    bold: finding.closed === undefined,
  }));
  return { columns, rows };
}

/** What a drill's own end closed was never wrong with the kit for long: it was planted. */
function noRemedy({ drill, closed }: Finding): string {
  return drill !== undefined && closed ? "of the drill, ended with it" : "none yet";
}

const AMISS_COLUMNS = [
  { name: "Line", part: 0.07 },
  { name: "What was asked", part: 0.43 },
  { name: "Answer", part: 0.3 },
  { name: "Who, when", part: 0.2 },
];

function amissOf(record: RecordRead): RecordTable["rows"] {
  const optional = new Set(allSteps(record.pattern).flatMap((step) => (step.optional ? [step.id] : [])));
  const labels = labelsOf(record.pattern);
  return recordOf(record.turnaround, record.pattern)
    .filter((line) => isAmiss(record, line) && !(line.answer === undefined && optional.has(line.step)))
    .map((line) => ({ cells: [labelOf(labels, line), line.text, said(record, line), whoWhen(record, line)] }));
}

/** True for a line to be told first: not seen right, or only after it had been read otherwise. */
export function isAmiss(record: RecordRead, line: RecordLine): boolean {
  const all = answersAt(record, line);
  const readings = all.filter(({ value }) => value !== undefined);
  return line.answer !== "seen" || readings.length > 1 || all.some(({ answer }) => answer === "wrong");
}

/** Dates that were looked for, and could not be read, of what was not renewed afterwards. */
function datesNotRead({ entries, pattern, people }: RecordRead): RecordTable["rows"] {
  return linesOfKind(entries, "date-read").flatMap(({ body: { item, step, date }, by, at }, order, all) => {
    const isLast = !all.slice(order + 1).some((later) => later.body.item === item);
    const isRenewed = linesOfKind(entries, "item-fitted").some((one) => one.body.item === item && one.at > at);
    if (date !== undefined || !isLast || isRenewed) return [];
    const line = allSteps(pattern).find(({ id }) => id === step)?.line ?? "";
    const who = `${nameOf({ people }, by)}, ${instantWords(at)}`;
    return [{ cells: [String(line), `Date of ${itemNamed(pattern, item)?.name ?? item}`, "NO DATE CAN BE READ", who] }];
  });
}

function shortClocks({ turnaround, pattern }: RecordRead): RecordTable["rows"] {
  return allSteps(pattern).flatMap((step) => {
    const timer = turnaround.timers[step.id];
    if (!step.timer || timer?.reached !== false) return [];
    const what = step.timer.kind === "pulls" ? "DID NOT START" : step.timer.kind === "prime" ? "NO WATER" : "CUT SHORT";
    return [{ cells: [String(step.line), step.text, what, instantWords(timer.mark.at)] }];
  });
}
