import type { Entry, History } from "#log";
import { KitDraft, markOf, type PatternsByVersion } from "../draft.ts";
import { isKindOf } from "../kinds/folds-of.ts";
import { kitFolds } from "../registry/kit.ts";
import type { KitState } from "../state.ts";
import { idOf } from "../subject-id.ts";
import { endWork } from "../work/work-fold.ts";

const NO_PATTERNS: PatternsByVersion = new Map();

/**
 * Folds entries about one kit, already in order and without the struck ones, into its state.
 *
 * Nothing is lost to a wrong clock: an entry that sorts before what it builds on (a kit's enrolment, the opening of its
 * turnaround, the finding it mends) begins that on the spot, and the later entry fills it in. What two devices did
 * without sight of each other is listed in `toSettle`.
 *
 * @param before - state so far, or undefined for a kit not heard of
 * @param entries - further entries in order; kinds that are not about kits change nothing
 * @param history - which entry was made with sight of which
 * @param patterns - versions to be had here; a finding is closed only by every check its pattern names
 * @returns the state after them; `before` itself is never changed
 */
export function foldKit(
  before: KitState | undefined,
  entries: readonly Entry[],
  history: History,
  patterns: PatternsByVersion = NO_PATTERNS,
): KitState | undefined {
  const first = entries[0];
  if (!first) return before;
  const draft = before ? new KitDraft(before, history, patterns) : draftKit(first, history, patterns);
  for (const entry of entries) applyToDraft(draft, entry);
  return draft.release();
}

/** Folds one more entry; see {@link foldKit}. */
export function applyKitEntry(before: KitState | undefined, entry: Entry, history: History): KitState {
  return foldKit(before, [entry], history) ?? blankKit(entry);
}

/** A draft of a kit of which this is the first entry; the entry itself is not yet folded in. */
export function draftKit(first: Entry, history: History, patterns: PatternsByVersion = NO_PATTERNS): KitDraft {
  return new KitDraft(blankKit(first), history, patterns);
}

/** Folds one entry into a draft. */
export function applyToDraft(draft: KitDraft, entry: Entry): void {
  if (!isKitKind(entry.kind)) return;
  kitFolds[entry.kind](draft, entry.body as never, entry, applyToDraft);
  endWork(draft, entry);
}

/** True where the kit's own enrolment has arrived. */
export function isEnrolled(kit: KitState): boolean {
  return kit.serial !== "";
}

/** True for a kind whose subject is a kit. */
export function isKitKind(kind: string): kind is keyof typeof kitFolds {
  return isKindOf(kitFolds, kind);
}

function blankKit(entry: Entry): KitState {
  const id = idOf(entry.subject);
  return {
    id,
    name: id,
    serial: "",
    place: entry.place,
    pattern: entry.pattern ?? "",
    enrolled: markOf(entry),
    contents: {},
    seals: [],
    findings: [],
    turnarounds: [],
    custody: { kind: "here" },
    runs: [],
    toSettle: [],
    heads: [],
  };
}
