import { sayPercent } from "#words";
import type { Check } from "#kit";
import { lookUp, nameOfMode, type NotComparable, type Value, type VisitedLine } from "#readiness";
import type { Kappa } from "#reliability";
import { valueWords } from "../record/value-words.ts";
import type { CountedShare } from "./visit-result.ts";

/** "19 of 20, 95 % (76 % to 99 %)". */
export function sayCounted({ count, of, interval: [low, high] }: CountedShare): string {
  return `${count} of ${of}, ${sayPercent(count / of)} (${sayPercent(low)} to ${sayPercent(high)})`;
}

/** Agreement beyond chance in words, or why it cannot be told. */
export function sayKappa(kappa: Kappa): string {
  if (kappa.kind === "told") {
    const [low, high] = kappa.interval.map((end) => end.toFixed(2));
    return `Kappa ${kappa.kappa.toFixed(2)}, standard error ${kappa.standardError.toFixed(2)} (${low} to ${high}): 1 is always the same, 0 is what chance alone would give.`;
  }
  if (kappa.because === "nothing-compared") return "Kappa cannot be told: nothing was compared.";
  return "Kappa cannot be told: one of the two called every line the same, and then it says nothing.";
}

/** Why a kit is not drawn. */
export function sayNotDrawn(because: NotComparable["because"]): string {
  const words: Readonly<Record<NotComparable["because"], string>> = {
    away: "away",
    open: "open for a turnaround",
    drill: "in a drill",
    "nothing-written": "nothing written by its keeper yet",
    "no-pattern": "its pattern is not on this device",
  };
  return words[because];
}

/** What the keeper wrote at a line. */
export function sayKeeperWrote({ wrote }: VisitedLine): string {
  if (!wrote) return "not on this device";
  return said(wrote.stoodWrong ? "wrong" : "right", wrote.value);
}

/** What the assessor saw at a line. */
export function sayAssessorSaw({ seen }: VisitedLine): string {
  if (!seen) return "not looked at";
  if (seen.answer === "not-possible") return `not possible: ${seen.why ?? ""}`;
  return said(seen.answer === "wrong" ? "wrong" : "right", seen.value);
}

/** What was found wrong, in the pattern's words or the assessor's; nothing where nothing was. */
export function sayFoundWrong({ finding, pattern }: VisitedLine): string | undefined {
  if (!finding || !pattern || finding.mode === "other") return finding?.note;
  return nameOfMode(lookUp(pattern), finding.item, finding.mode);
}

function said(how: string, value: Value | undefined): string {
  return value === undefined ? how : `${how}: ${valueWords(value)}`;
}

/** "Line 12: Turn the shaft." */
export function sayVisitedLine({ atStep, ofCheck, step, check }: VisitedLine): string {
  return `Line ${atStep?.line ?? step}: ${askOf(ofCheck, check)}`;
}

function askOf(check: Check | undefined, id: string): string {
  return check?.ask ?? id;
}
