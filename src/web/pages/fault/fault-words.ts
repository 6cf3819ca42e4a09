import type { FaultAdvice, Likely } from "#station";
import type { Words } from "#words";

type FaultWords = Words["fault"];

/** A chance as people say it: never a bare percentage. */
export function sayShare(chance: number, words: FaultWords): string {
  if (chance >= 0.85) return words.veryLikely();
  if (chance >= 0.6) return words.likelierThanNot();
  if (chance < 0.08) return words.lessThanOneInTen();
  const off = STEPS.map(([step]) => Math.abs(step - chance));
  return words[STEPS[off.indexOf(Math.min(...off))]![1]]();
}

/** Chances that have words of their own; of those between, the nearest is said. */
const STEPS = [
  [1 / 10, "oneInTen"],
  [1 / 5, "oneInFive"],
  [1 / 4, "oneInFour"],
  [1 / 3, "oneInThree"],
  [1 / 2, "asLikelyAsNot"],
] as const;

/** "About 1 minute", "about 4 minutes", "under a minute". */
export function sayMinutes(minutes: number, words: FaultWords): string {
  return minutes < 0.9 ? words.underAMinute() : words.minutes({ count: Math.round(minutes) });
}

/** Why the next pump comes first. */
export function sayWhyNextPump(
  { causes }: FaultAdvice,
  next: { readonly minutes: number; readonly pump: string },
  words: FaultWords,
): string {
  const said = { pump: next.pump, minutes: sayMinutes(next.minutes, words) };
  const likely = causes[0];
  if (likely === undefined) return words.nextPumpSooner(said);
  return words.nextPumpLikely({ ...said, cause: lowerFirst(likely.cause.says) });
}

/**
 * Where no other pump stands by, or none that can be taken: the next kit has to come, now.
 *
 * @param beside - pumps that can still be taken, those that could not, and what was told of other kits
 * @returns nothing where a pump stands by
 */
export function sayNobodyBeside({ nextPumps, refused, otherKits }: Beside, words: FaultWords): string | undefined {
  if (nextPumps.length > 0) return undefined;
  const beside = otherKits === undefined ? words.noOtherPump() : words.noOtherPumpTold({ told: otherKits });
  return refused.length === 0 ? beside : words.refused({ pumps: refused.join(", "), beside });
}

interface Beside {
  readonly nextPumps: readonly string[];
  readonly refused: readonly string[];
  readonly otherKits?: string | undefined;
}

/** That an engine ran lately, so that its parts are hot [min]. */
export function sayRanLately(minutes: number, words: FaultWords): string {
  return minutes < 0.5 ? words.ranJustNow() : words.ranLately({ count: Math.round(minutes) });
}

interface Noted {
  /** What is seen. */
  readonly name: string;
  /** What was done, in order. */
  readonly does: readonly string[];
  /** Names of pumps that could not be taken in its place. */
  readonly refused: readonly string[];
  readonly isEnded: boolean;
}

/** A finding's note: what was seen and done, so that the bench need not begin again. Tries stand whole, or are counted. */
export function sayNote({ name, does, refused, isEnded }: Noted, words: FaultWords): string {
  const helped = isEnded ? does.at(-1) : undefined;
  const tried = isEnded ? does.slice(0, -1) : does;
  const sentences = [
    words.noteSeen({ seen: name }),
    ...(tried.length === 0 ? [] : [sayTried(tried, words)]),
    ...(refused.length === 0 ? [] : [words.noteRefused({ pumps: refused.join(", ") })]),
    ...(helped === undefined ? [] : [words.noteHelped({ helped })]),
  ];
  return sentences.join(" ");
}

/** Letters of a note for what was tried: all tries of a shipped pattern, and few enough to be read. */
const TRIED = 1200;

function sayTried(does: readonly string[], words: FaultWords): string {
  const bare = does.map((one) => one.replace(/\.$/, ""));
  const fits = bare.filter((_, i) => bare.slice(0, i + 1).join("; ").length <= TRIED);
  const [tried, more] = [fits.join("; "), bare.length - fits.length];
  return more === 0 ? words.noteTried({ tried }) : words.noteTriedMore({ tried, count: more });
}

/** Causes worth a line: the likeliest, to so many as are read at a glance. */
export function worthTelling(causes: readonly Likely[]): readonly Likely[] {
  return causes.filter(({ chance }) => chance >= 0.02).slice(0, 6);
}

function lowerFirst(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}
