import { allSteps } from "../look-ups.ts";
import type { Pattern, Step } from "../pattern.ts";
import { differencesOf } from "./differences.ts";

/** What hands do otherwise under another version of a pattern, line by line. */
export interface OtherWork {
  /** Lines of the new version that the old one does not have. */
  readonly added: readonly Step[];
  /** Lines of the old version that are done no more. */
  readonly gone: readonly Step[];
  /** Lines of the new version that say or put back something else, or run another clock. */
  readonly changed: readonly Step[];
  /** How many lines hands do as before, whatever else of them differs. */
  readonly asBefore: number;
}

/** What of a line hands go by; cautions, reasons and what is asked together are read and not done. */
const DONE: ReadonlySet<string> = new Set([
  "words",
  "clock",
  "what it puts back",
  "what it renews",
  "lifting by machine",
  "measuring of delivery",
]);

/**
 * The lines of another version of a pattern that hands do otherwise than under this one.
 *
 * @param from - the version a kit is built to
 * @param to - the version it moves to
 * @returns lines in the order of the version that has them
 * @source DERIVED: docs/methods/pattern-versions.md
 */
export function otherWork(from: Pattern, to: Pattern): OtherWork {
  const lines = differencesOf(from, to).filter(({ part }) => part === "step");
  const those = (pattern: Pattern, is: (one: (typeof lines)[number]) => boolean) => {
    const ids = new Set(lines.filter(is).map(({ id }) => id));
    return allSteps(pattern).filter(({ id }) => ids.has(id));
  };
  const added = those(to, ({ how }) => how === "added");
  const changed = those(to, ({ changed: what }) => what.some((one) => DONE.has(one)));
  const gone = those(from, ({ how }) => how === "removed");
  return { added, gone, changed, asBefore: allSteps(to).length - added.length - changed.length };
}
