import { formatDate } from "#base";
import type { Entry } from "#log";
import { allSteps, itemNamed, type Pattern } from "#kit";
import type { Bodies } from "#readiness";
import type { RecordRead, RecordTable } from "./record.ts";
import { sayDuration, sayFlow, sayLength } from "#words";
import { dateWords, instantWords } from "./value-words.ts";
import { linesOfKind, nameOf } from "./record-reading.ts";

/* What was renewed and timed: from the lines of the log that stand, each try for itself. */

const NEW_COLUMNS = [
  { name: "Line", part: 0.07 },
  { name: "Item", part: 0.35 },
  { name: "Fitted, date on it, lot", part: 0.38 },
  { name: "Who, when", part: 0.2 },
];

/** What was renewed, each by the part that is in it now and what that replaced, and dates read off what stayed in. */
export function renewalsOf(record: RecordRead): RecordTable {
  const { entries, pattern } = record;
  const rowOf = (entry: Entry, step: string | undefined, item: string, words: string) => ({
    cells: [lineOf(pattern, step), itemNamed(pattern, item)?.name ?? item, words, writer(record, entry)],
  });
  const fitted = lastFitted(record).map(({ entry, item, step, words }) => rowOf(entry, step, item, words));
  const read = linesOfKind(entries, "date-read").map((entry) => {
    const { of, date, step, item } = entry.body;
    return rowOf(entry, step, item, date === undefined ? "no date can be read" : `read: ${of} ${dateWords(date)}`);
  });
  return { columns: NEW_COLUMNS, rows: [...fitted, ...read] };
}

interface Fitted extends Pick<Bodies["item-fitted"], "item" | "quantity" | "fitted" | "printed" | "batch"> {
  readonly entry: Entry;
  readonly step?: string;
}

/** The last of each item that was fitted, at its line or as the remedy of a finding, in words with what it replaced. */
function lastFitted(record: RecordRead) {
  const all = record.entries.flatMap((entry) => fittedBy(record, entry) ?? []);
  return all.flatMap((one, at) => {
    if (all.slice(at + 1).some(({ item }) => item === one.item)) return [];
    const before = all.slice(0, at).findLast(({ item }) => item === one.item);
    return [
      { ...one, words: isSealWithout(record, one.item) ? NO_SEAL : fittedWords(record, one) + replacedWords(before) },
    ];
  });
}

function fittedBy({ kit }: RecordRead, entry: Entry): Fitted | undefined {
  if (entry.kind === "item-fitted") return { ...(entry.body as Bodies["item-fitted"]), entry };
  if (entry.kind !== "remedy-made") return undefined;
  const remedy = entry.body as Bodies["remedy-made"];
  const item = kit.findings.find(({ id }) => id === remedy.finding)?.item;
  if (remedy.how !== "replaced" || remedy.fitted === undefined || item === undefined) return undefined;
  return { ...remedy.fitted, item, quantity: remedy.quantity, entry };
}

const NO_SEAL = "marked as new, but closed without a seal";

/** A kit closed without a number has no seal on it, whatever line was answered. */
function isSealWithout({ pattern, turnaround: { closed } }: RecordRead, item: string): boolean {
  if (!closed || closed.seal !== undefined) return false;
  return pattern.checks.some(
    (check) => check.kind === "match" && check.against === "recorded-seal" && check.item === item,
  );
}

function replacedWords(before: Fitted | undefined): string {
  if (!before) return "";
  return before.batch === undefined ? "; in place of one fitted before it" : `; in place of lot ${before.batch}`;
}

function lineOf(pattern: Pattern, step: string | undefined): string {
  return String(allSteps(pattern).find(({ id }) => id === step)?.line ?? "");
}

/** Who and when; the day only where it is not that of the opening. */
function writer(record: RecordRead, { by, at }: Entry): string {
  const isSameDay = at.slice(0, 10) === record.turnaround.opened.at.slice(0, 10);
  return `${nameOf(record, by)}, ${isSameDay ? at.slice(11, 16) : instantWords(at)}`;
}

function fittedWords({ pattern }: RecordRead, { item, quantity, fitted, printed, batch }: Fitted): string {
  const known = itemNamed(pattern, item);
  const isToRead = known?.life.kind === "printed";
  const count = known && quantity < known.quantity ? `${quantity} of ${known.quantity}` : quantity;
  const unread = isToRead ? ", the date printed on it not read yet" : "";
  const date = printed === undefined ? unread : `, good until ${dateWords(printed)}`;
  return `${count} new, ${formatDate(fitted)}${date}${batch === undefined ? "" : `, lot ${batch}`}`;
}

const RUN_COLUMNS = [
  { name: "Line", part: 0.07 },
  { name: "What", part: 0.43 },
  { name: "Found", part: 0.3 },
  { name: "Who, when", part: 0.2 },
];

/** Every wait, count of pulls, prime, run and delivery, each try for itself. */
export function runsOf(record: RecordRead): RecordTable {
  return { columns: RUN_COLUMNS, rows: record.entries.flatMap((entry) => runRow(record, entry) ?? []) };
}

function runRow(record: RecordRead, entry: Entry): RecordTable["rows"][number] | undefined {
  const found = runWords(record, entry);
  if (found === undefined) return undefined;
  const { step: id } = entry.body as { readonly step: string };
  const step = allSteps(record.pattern).find((one) => one.id === id);
  return { cells: [String(step?.line ?? ""), step?.text ?? id, found, writer(record, entry)] };
}

function runWords(record: RecordRead, { kind, body }: Entry): string | undefined {
  if (kind === "timer-stopped") {
    const { started, seconds, reached } = body as Bodies["timer-stopped"];
    return `${sayDuration(seconds)} from ${started.slice(11, 16)}${reached ? "" : ", cut short"}`;
  }
  if (kind === "pulls-counted") {
    const { pulls, started } = body as Bodies["pulls-counted"];
    return `${pulls} ${pulls === 1 ? "pull" : "pulls"}, ${started ? "started" : "not yet started"}`;
  }
  if (kind === "prime-timed") {
    const { seconds, primed, strokes } = body as Bodies["prime-timed"];
    return `${sayDuration(seconds)}${strokes === undefined ? "" : `, ${strokes} strokes`}, ${primed ? "water" : "NO WATER"}`;
  }
  return kind === "delivery-measured" ? deliveryWords(record, body as Bodies["delivery-measured"]) : undefined;
}

function deliveryWords({ units }: RecordRead, run: Bodies["delivery-measured"]): string {
  const flowOf = (si: number) => sayFlow(si, units, "measured");
  const flow = `${flowOf(run.flow)} (standard uncertainty ${flowOf(run.flowUncertainty)})`;
  const share = `${Math.round(run.ratio * 100)} % of ${flowOf(run.expected)} expected`;
  const how = `by ${run.method.replaceAll("-", " ")}, lift ${sayLength(run.lift, units)}, rise ${sayLength(run.rise, units)}`;
  return `${flow}, ${share}: ${run.verdict.replaceAll("-", " ")}; ${how}`;
}
