import { hit, type LintHit } from "./lint-fault.ts";
import type { Mode, Pattern } from "../pattern.ts";

/** Words by which a mode says that something is not there. */
const NOT_THERE = /\b(missing|lost|gone)\b/i;

/**
 * Is every mode either wear or loss? What is missing has not worn out, so a mode such as "dead or missing" makes lifetimes of
 * the item look shorter than they are.
 *
 * A note each: the kit is examined no worse for it. Told by words in the name, so a mode that says it otherwise is not seen;
 * one that says `loss` itself is taken at its word, unless it is two things in one.
 */
export function lossLint(pattern: Pattern): readonly LintHit[] {
  return pattern.modes.flatMap((mode) => {
    const told = toldOf(mode);
    return told === undefined ? [] : [{ ...hit("wear-and-loss", { what: "mode", id: mode.id }, told), isNote: true }];
  });
}

function toldOf({ name, loss }: Mode) {
  if (loss === true || !NOT_THERE.test(name)) return undefined;
  if (/\bor\b/i.test(name)) {
    const what = `It says of one mode that something is bad or not there: ${name}. What is lost has not worn out.`;
    return { what, remedy: "Make two of it, and say `loss: true` of the one that says it is missing." };
  }
  if (loss === false) return undefined;
  const what = `It says that something is not there, and is counted as wear: ${name}.`;
  return { what, remedy: "Say `loss: true` if it was lost or taken, or `loss: false` if it wore off." };
}
