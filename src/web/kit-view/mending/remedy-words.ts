import { sayDate } from "#web/parts/words/say-time.ts";
import { parseDate } from "#base";
import type { Words } from "#words";
import { isSomeOf, mayBeLivedWith, type Finding, type Remedy, type Role } from "#readiness";
import { isKeeper } from "#station";

/**
 * A remedy in a sentence.
 *
 * @param whole - how many of the item the kit has
 */
export function sayRemedy(remedy: Remedy, whole: number, words: Words["mending"]): string {
  if (remedy.how === "mended") return words.saidMended({ note: remedy.note });
  if (remedy.how === "lived-with") {
    return words.saidLived({ name: remedy.name, day: sayDate(parseDate(remedy.until)), limit: remedy.limit });
  }
  const { quantity: count, note, fitted } = remedy;
  const replaced = isSomeOf(remedy, whole)
    ? words.saidSome({ count, whole, part: remedy.part })
    : words.saidReplaced({ count, part: remedy.part });
  const date = fitted?.printed;
  const what = date === undefined ? replaced : words.saidReplacedPrinted({ replaced, date });
  return note === undefined ? what : words.withNote({ what, note });
}

/** Why living with a finding is not offered, and who may or what to do instead; undefined where it is. */
export function sayWhyNotLivedWith(
  finding: Pick<Finding, "effect">,
  role: Role,
  words: Words["mending"],
): string | undefined {
  if (!mayBeLivedWith(finding)) return words.notGrounding();
  return isKeeper(role) ? undefined : words.onlyKeeper();
}
