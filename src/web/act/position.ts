import { openAsk, type Line } from "./lines.ts";

/** Where the runner stands: a line by its number, and which of its asks. */
export interface Position {
  readonly line: number;
  /** Key of the ask; absent shows the line's first open one. */
  readonly ask?: string;
  /** That ask by itself, though one look would show others with it. */
  readonly isAlone?: true;
}

/**
 * The line to go on at after an interruption: the first unanswered one after the last answer given here, an optional
 * one too where one that must be answered follows it, as an answer would have led there.
 * Where this device has answered nothing, the last answer of any device counts; where nothing is open after it,
 * the first open line of all.
 *
 * @param lines - lines of the pattern with their answers
 * @param device - id of this device
 * @returns the line's number; undefined once every line that must be answered is
 */
export function resumeAt(lines: readonly Line[], device: string): number | undefined {
  const from = lastAnswered(lines, device) ?? lastAnswered(lines) ?? 1;
  const onward = nextOpen(lines, from - 1);
  return onward === undefined ? nextOpen(lines, 0) : firstOpen(lines, from, onward);
}

/** The first line with something not answered between two, an optional one too; the later of the two is open. */
function firstOpen(lines: readonly Line[], from: number, to: number): number | undefined {
  return lines.find((line) => line.step.line >= from && line.step.line <= to && openAsk(line))?.step.line;
}

/** The first line after the given one with something not answered; optional lines wait to be asked for. */
export function nextOpen(lines: readonly Line[], after: number): number | undefined {
  return lines.find((line) => line.step.line > after && !line.step.optional && openAsk(line))?.step.line;
}

/**
 * Where an answer leads: the next open ask of the same line, else the next open line in order (optional ones are
 * offered in passing), else what was passed over.
 *
 * @param lines - lines as they were before the answer
 * @param from - number of the line answered
 * @param key - the ask answered
 * @returns undefined once nothing that must be answered is left
 */
export function leadsTo(lines: readonly Line[], from: number, key: string): Position | undefined {
  const here = lines.find((line) => line.step.line === from);
  const ask = here?.asks.find((one) => one.key !== key && !one.answered);
  if (ask) return { line: from, ask: ask.key };
  const others = lines.filter((line) => line.step.line !== from);
  const onward = others.find((line) => line.step.line > from && openAsk(line))?.step.line ?? nextOpen(others, 0);
  return onward === undefined ? undefined : { line: onward };
}

/** Lines before the given one that were passed over. */
export function openBefore(lines: readonly Line[], before: number): readonly number[] {
  return lines
    .filter((line) => line.step.line < before && !line.step.optional && openAsk(line))
    .map((l) => l.step.line);
}

/** The line reached by one step forward or back in the pattern, if there is one. */
export function neighbour(lines: readonly Line[], from: number, direction: "before" | "after"): number | undefined {
  const at = lines.findIndex((line) => line.step.line === from);
  return lines[direction === "after" ? at + 1 : at - 1]?.step.line;
}

/** The first line after the given one that may not be left out: leaving one out leaves out what belongs to it. */
export function pastOptional(lines: readonly Line[], from: number): number | undefined {
  return lines.find(({ step }) => step.line > from && !step.optional)?.step.line;
}

/** Line with the newest answer, of one device or of all. */
function lastAnswered(lines: readonly Line[], device?: string): number | undefined {
  const given = lines.flatMap((line) =>
    line.asks.flatMap((ask) => {
      const mark = ask.answered?.mark;
      return mark && (device === undefined || mark.device === device) ? [{ mark, line: line.step.line }] : [];
    }),
  );
  return given.reduce<(typeof given)[number] | undefined>(
    (newest, one) => (newest && compareMarks(newest.mark, one.mark) > 0 ? newest : one),
    undefined,
  )?.line;
}

interface Moment {
  readonly at: string;
  readonly entry: string;
}

/** Orders marks by instant, then by entry, as the log does. */
export function compareMarks(a: Moment, b: Moment): number {
  const instants = Date.parse(a.at) - Date.parse(b.at);
  if (instants !== 0) return instants;
  return a.entry < b.entry ? -1 : a.entry > b.entry ? 1 : 0;
}
