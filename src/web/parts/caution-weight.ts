import { findCaution, gravestFirst, SIGNAL_WORDS } from "#base";

/** How each caution at a place is shown. */
export interface CautionWeight {
  /** As a whole panel: the gravest that begins here; of equals the place's own, which it names first. */
  readonly whole: readonly string[];
  /** Begins here beside it: its name and what to do, the rest on a tap. */
  readonly begun: readonly string[];
  /** Was shown before: its name. */
  readonly goingOn: readonly string[];
}

/**
 * Weighs the cautions at a place by what was read before it.
 *
 * @param cautions - ids, the place's own first
 * @param read - ids that were shown a little before
 */
export function weigh(cautions: readonly string[], read: ReadonlySet<string>): CautionWeight {
  const fresh = gravestFirst(cautions.filter((id) => !read.has(id)));
  return { whole: fresh.slice(0, 1), begun: fresh.slice(1), goingOn: cautions.filter((id) => read.has(id)) };
}

/** Cautions beside each other that are shown alike; names that go on share a row. */
export interface CautionRow {
  readonly how: keyof CautionWeight;
  readonly ids: readonly string[];
}

/**
 * Cautions in the order they stand: by their signal words, gravest first, whole or folded. Of one word what begins
 * stands first; names that go on come before it where a row of such names ends just above.
 */
export function rowsOf({ whole, begun, goingOn }: CautionWeight): readonly CautionRow[] {
  return Object.keys(SIGNAL_WORDS).reduce<readonly CautionRow[]>((rows, word) => {
    const named = ofWord(goingOn, word);
    const fresh = [
      ...ofWord(whole, word).map((id) => ({ how: "whole" as const, ids: [id] })),
      ...ofWord(begun, word).map((id) => ({ how: "begun" as const, ids: [id] })),
    ];
    const last = rows.at(-1);
    if (last?.how === "goingOn") return [...rows.slice(0, -1), { ...last, ids: [...last.ids, ...named] }, ...fresh];
    return [...rows, ...fresh, ...(named.length > 0 ? [{ how: "goingOn" as const, ids: named }] : [])];
  }, []);
}

/** Of these those with this signal word; what is not known counts as a notice. */
function ofWord(ids: readonly string[], word: string): readonly string[] {
  return ids.filter((id) => (findCaution(id)?.signal ?? "NOTICE") === word);
}
