import type { Dimension, UnitSystem } from "#base";
import { checkNamed, itemNamed, linesOf, modeNamed, titleOfMode, type Check, type Pattern } from "#kit";
import {
  answerKey,
  isCountSaid,
  isSomeOf,
  sayGivenSeen,
  type Answer,
  type Finding,
  type Remedy,
  type StepAnswer,
} from "#readiness";
import { sayDuration, sayLimit, ENGLISH } from "#words";
import { dateWords, instantWords, valueWords } from "./value-words.ts";

type Said = Pick<StepAnswer, "check" | "answer" | "value" | "why" | "note" | "fromCard" | "cardAt"> & {
  /** When it was said, RFC 3339. */
  readonly at?: string;
};

/**
 * An answer in the words that the screen had for it, with what was read, its limits, why not, and the note.
 *
 * @param record - pattern, and the units of the reader: limits are told in them too, where the pattern has others
 * @param all - every answer that was given there, oldest first: readings taken again are told too
 */
export function answerWordsOf(
  record: { readonly pattern: Pattern; readonly units: UnitSystem },
  said: Said,
  all: readonly Said[] = [said],
): string {
  const { pattern, units } = record;
  const check = said.check === undefined ? undefined : checkNamed(pattern, said.check);
  const words: Readonly<Record<Answer, string>> = {
    seen: sayGivenSeen(check, said.value, ENGLISH.act),
    wrong: "FOUND WRONG",
    "not-possible": `NOT POSSIBLE: ${said.why ?? ""}`,
  };
  const card = said.fromCard === true ? `; from a card of ${(said.cardAt ?? "").slice(0, 16).replace("T", " ")}` : "";
  const note = said.note === undefined ? "" : `. Note: ${said.note}`;
  return `${beforeWords(check, said, all)}${words[said.answer]}${readWords(check, all, units)}${note}${card}`;
}

/** "FOUND WRONG at 08:12, then ": what was said there before and is not said any more, each time with its hour. */
function beforeWords(check: Check | undefined, said: Said, all: readonly Said[]): string {
  const changes = all.filter((one, i) => one.answer !== all[i - 1]?.answer);
  const before = changes.at(-1)?.answer === said.answer ? changes.slice(0, -1) : changes;
  if (before.every(({ answer }) => answer === "seen") && said.answer === "seen") return "";
  return before.map((one) => `${earlierWords(check, one)}${hourOf(one, said)}, then `).join("");
}

function earlierWords(check: Check | undefined, { answer, value, why }: Said): string {
  if (answer === "seen") return sayGivenSeen(check, value, ENGLISH.act);
  return answer === "wrong" ? "FOUND WRONG" : `NOT POSSIBLE: ${why ?? ""}`;
}

/** " at 08:12", with its day where that is another. */
function hourOf({ at }: Said, last: Said): string {
  if (at === undefined) return "";
  return ` at ${at.slice(0, 10) === last.at?.slice(0, 10) ? at.slice(11, 16) : instantWords(at)}`;
}

/** " (0.9 mm, then 0.75 mm; at most 0.8 mm)" */
function readWords(check: Check | undefined, all: readonly Said[], units: UnitSystem): string {
  if (all.every((one) => isCountSaid(check, one))) return "";
  const read = all.flatMap(({ value }) => (value ? [valueWords(value)] : []));
  if (read.length === 0 || check === undefined) return "";
  const limits = limitsOf(check, units);
  return ` (${[read.join(", then "), limits].filter(Boolean).join("; ")})`;
}

/** The limits of a check, as the screen has them; nothing where it has none. */
function limitsOf(check: Check, units: UnitSystem): string {
  if (check.kind === "timed") return between(check, (si) => sayDuration(si));
  if (check.kind !== "measure") return "";
  return between(check, (si) => sayLimit(si, check.dimension as Dimension, { unit: check.unit, units }));
}

interface Limits {
  readonly atLeast?: number;
  readonly atMost?: number;
}

function between({ atLeast, atMost }: Limits, say: (si: number) => string): string {
  const least = atLeast === undefined ? "" : `at least ${say(atLeast)}`;
  const most = atMost === undefined ? "" : `at most ${say(atMost)}`;
  return [least, most].filter(Boolean).join(", ");
}

/** Line labels as the card and the screen print them, by step or "step/check". */
export function labelsOf(pattern: Pattern): ReadonlyMap<string, string> {
  return new Map(linesOf(pattern).map(({ label, step, check }) => [answerKey(step.id, check?.id), label]));
}

/** A finding by item and mode; the note where the pattern has no such mode. */
export function findingWords(pattern: Pattern, finding: Finding): string {
  const item = itemNamed(pattern, finding.item)?.name ?? finding.item;
  const mode = modeNamed(pattern, finding.mode)?.name;
  return titleOfMode(item, mode ?? finding.note ?? finding.mode);
}

/**
 * What was done about a finding, with part and lot.
 *
 * @param whole - how many of the item the kit has
 */
export function remedyWords(remedy: Remedy, whole: number): string {
  if (remedy.how === "mended") return `mended: ${remedy.note}`;
  if (remedy.how === "lived-with") {
    return `lived with by ${remedy.name} until ${dateWords(remedy.until)}: ${remedy.limit}`;
  }
  const batch = remedy.fitted?.batch === undefined ? "" : `, lot ${remedy.fitted.batch}`;
  if (isSomeOf(remedy, whole)) return `${remedy.quantity} of ${whole} replaced: ${remedy.part}${batch}`;
  return `replaced: ${remedy.quantity} x ${remedy.part}${batch}`;
}
