import type { FaultAdvice, Likely } from "#station";
import type { Words } from "#words";

type FaultWords = Words["fault"];

/** A chance as people say it: never a bare percentage. */
export function sayShare(chance: number, words: FaultWords): string {
  if (chance >= 0.85) return words.veryLikely();
  if (chance >= 0.6) return words.likelierThanNot();
  if (chance >= 0.4) return words.asLikelyAsNot();
  if (chance >= 0.28) return words.oneInThree();
  if (chance >= 0.18) return words.oneInFive();
  if (chance >= 0.08) return words.oneInTen();
  return words.lessThanOneInTen();
}

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

interface Noted {
  /** What is seen. */
  readonly name: string;
  /** What was done, in order. */
  readonly does: readonly string[];
  readonly isEnded: boolean;
}

/** A finding's note: what was seen and done, so that the bench need not begin again. */
export function sayNote({ name, does, isEnded }: Noted, words: FaultWords): string {
  const tried = (isEnded ? does.slice(0, -1) : does).map((one) => one.replace(/\.$/, "")).join("; ");
  const helped = isEnded ? does.at(-1) : undefined;
  const sentences = [
    words.noteSeen({ seen: name }),
    ...(tried === "" ? [] : [words.noteTried({ tried })]),
    ...(helped === undefined ? [] : [words.noteHelped({ helped })]),
  ];
  return sentences.join(" ").slice(0, 480);
}

/** Causes worth a line: the likeliest, to so many as are read at a glance. */
export function worthTelling(causes: readonly Likely[]): readonly Likely[] {
  return causes.filter(({ chance }) => chance >= 0.02).slice(0, 6);
}

function lowerFirst(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}
