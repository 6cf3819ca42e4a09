import type { Check } from "#kit";
import type { Entry } from "#log";
import type { Words } from "#words";
import type { Bodies } from "../kinds/kinds.ts";
import type { Remedy, StepAnswer } from "../kinds/kit-parts.ts";
import type { Value } from "../kinds/schema-parts.ts";

/** What the button of an answer says, on screen and on paper: what was seen, never only "done". */
export function saySeen(check: Check | undefined, words: Words["act"]): string {
  return check ? words.seen({ value: lowerFirst(trimDot(check.expect)) }) : words.asWritten();
}

/**
 * The words of an answer of "seen" as it was given: what is measured when new, and now was only looked at, says so.
 *
 * @param value - what was read; undefined where nothing was
 */
export function sayGivenSeen(check: Check | undefined, value: Value | undefined, words: Words["act"]): string {
  const isLookedAt = check?.kind === "measure" && check.once === true && value === undefined;
  return isLookedAt ? words.seenNotMeasured({ value: lowerFirst(trimDot(check.expect)) }) : saySeen(check, words);
}

/** True of a remedy that renewed some of an item that the kit has several of: the others stayed in. */
export function isSomeOf(remedy: Remedy, whole: number): boolean {
  return remedy.how === "replaced" && remedy.fitted !== undefined && remedy.quantity < whole;
}

const NUMBERS = [
  "none",
  "one",
  "two",
  "three",
  "four",
  "five",
  "six",
  "seven",
  "eight",
  "nine",
  "ten",
  "eleven",
  "twelve",
];

/** True where what a check expects begins with the number to be counted: it is not said a second time beside it. */
export function saysItsCount(check: Check): boolean {
  if (check.kind !== "count") return false;
  const first = /^[a-z0-9]*/.exec(check.expect.toLowerCase())?.[0];
  return first === String(check.exactly) || first === NUMBERS[check.exactly];
}

/** True where the words of an answer of "seen" say what was counted, so that the figure beside them adds nothing. */
export function isCountSaid(
  check: Check | undefined,
  { answer, value }: Pick<StepAnswer, "answer" | "value">,
): boolean {
  return (
    answer === "seen" &&
    value?.kind === "count" &&
    check?.kind === "count" &&
    value.count === check.exactly &&
    saysItsCount(check)
  );
}

function trimDot(text: string): string {
  return text.trim().replace(/\.$/, "");
}

/** Lowers the first letter of a sentence, but not of an abbreviation or a mark such as "SN". */
function lowerFirst(text: string): string {
  return /^[A-Z][a-z ]/.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;
}

/** The second person whom a line names who saw the container closed; nothing where it is another line or names none. */
export function sealWitness({ kind, body }: Pick<Entry, "kind" | "body">): string | undefined {
  return kind === "sealed" ? (body as Bodies["sealed"]).witness : undefined;
}
