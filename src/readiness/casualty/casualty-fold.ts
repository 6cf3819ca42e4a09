import type { Entry } from "#log";
import type { CasualtyState } from "./casualty-state.ts";
import { markOf } from "../draft.ts";
import { CasualtyDraft } from "../drafts/casualty-draft.ts";
import { isKindOf } from "../kinds/folds-of.ts";
import { casualtyFolds } from "../registry/casualty.ts";
import { idOf } from "../subject-id.ts";

/** True for a kind of entry that is about casualties. */
export function isCasualtyKind(kind: string): kind is keyof typeof casualtyFolds {
  return isKindOf(casualtyFolds, kind);
}

/**
 * A casualty after one more entry, of those that count and in order. An entry that sorts before the opening, by a wrong
 * clock, begins the casualty on the spot; the opening then fills it in.
 *
 * @param before - state so far, or undefined for a casualty not heard of
 * @param entry - about this casualty; other kinds change nothing
 * @returns the state after it; `before` is never changed
 */
export function applyCasualtyEntry(before: CasualtyState | undefined, entry: Entry): CasualtyState {
  const draft = draftCasualty(entry, before);
  applyToCasualty(draft, entry);
  return draft.release();
}

/** A draft of a casualty of which this is the first entry, or the next after `before`; it is not yet folded in. */
export function draftCasualty(first: Entry, before?: CasualtyState): CasualtyDraft {
  return new CasualtyDraft(before ?? blankCasualty(first));
}

/** Folds one entry into a draft. */
export function applyToCasualty(draft: CasualtyDraft, entry: Entry): void {
  if (isCasualtyKind(entry.kind)) casualtyFolds[entry.kind](draft, entry.body as never, entry);
}

function blankCasualty(entry: Entry): CasualtyState {
  const id = idOf(entry.subject);
  return {
    id,
    name: id,
    boat: { kind: "motor boat", length: 10 },
    spaces: [],
    opened: markOf(entry),
    soundings: [],
    pumps: [],
    patches: [],
    stability: {},
    notes: [],
  };
}
