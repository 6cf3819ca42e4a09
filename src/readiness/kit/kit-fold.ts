import type { Entry, History } from "#log";
import { returnFolds } from "../after-use/return-fold.ts";
import { changeFolds } from "./custody-fold.ts";
import { dateFolds } from "./date-fold.ts";
import { KitDraft, markOf, type PatternShelf } from "../draft.ts";
import { drillFolds } from "../drill/drill-fold.ts";
import { findingFolds } from "../findings/finding-fold.ts";
import type { KitBodies } from "../kinds/kinds.ts";
import { settle } from "../findings/settle-fold.ts";
import type { KitState } from "../state.ts";
import { rob } from "../stock/rob-fold.ts";
import { endWork, workFolds } from "../work/work-fold.ts";
import { secondFolds } from "./second-fold.ts";
import { toldFolds } from "./told-fold.ts";
import { turnaroundFolds } from "./turnaround-fold.ts";

/** What an entry of one kind does to the kit. */
export type KitFold<Kind extends keyof KitBodies> = (draft: KitDraft, body: KitBodies[Kind], entry: Entry) => void;

const NO_PATTERNS: PatternShelf = new Map();

type KitFolds = { readonly [Kind in keyof KitBodies]: KitFold<Kind> };

const FOLDS: KitFolds = {
  ...changeFolds,
  ...dateFolds,
  ...turnaroundFolds,
  ...findingFolds,
  ...returnFolds,
  "item-robbed": rob,
  ...secondFolds,
  ...toldFolds,
  ...drillFolds,
  ...workFolds,
  settled: (draft, body) => settle(draft, body, applyToDraft),
};

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
  patterns: PatternShelf = NO_PATTERNS,
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
export function draftKit(first: Entry, history: History, patterns: PatternShelf = NO_PATTERNS): KitDraft {
  return new KitDraft(blankKit(first), history, patterns);
}

/** Folds one entry into a draft. */
export function applyToDraft(draft: KitDraft, entry: Entry): void {
  if (!isKitKind(entry.kind)) return;
  const fold = FOLDS[entry.kind] as KitFold<keyof KitBodies>;
  fold(draft, entry.body as KitBodies[keyof KitBodies], entry);
  endWork(draft, entry);
}

/** True where the kit's own enrolment has arrived. */
export function isEnrolled(kit: KitState): boolean {
  return kit.serial !== "";
}

/** True for a kind whose subject is a kit. */
export function isKitKind(kind: string): kind is keyof KitBodies {
  return Object.hasOwn(FOLDS, kind);
}

function blankKit(entry: Entry): KitState {
  const id = entry.subject.slice(entry.subject.indexOf(":") + 1);
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
