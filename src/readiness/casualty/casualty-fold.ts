import type { Entry } from "#log";
import type { CasualtyBodies } from "../kinds/casualty-kinds.ts";
import type { CasualtyState } from "./casualty-state.ts";
import { markOf } from "../draft.ts";
import { CasualtyDraft } from "../drafts/casualty-draft.ts";
import { idOf } from "../people-fold.ts";

type Fold<Kind extends keyof CasualtyBodies> = (draft: CasualtyDraft, body: CasualtyBodies[Kind], entry: Entry) => void;

const FOLDS: { readonly [Kind in keyof CasualtyBodies]: Fold<Kind> } = {
  "casualty-opened": (draft, { name, boat, space, hole, told, situation, note }, entry) => {
    const known = { ...(hole && { hole }), ...(told && { told }), ...(situation && { situation }) };
    Object.assign(draft.state, { name, boat }, known, { opened: markOf(entry) });
    draft.putSpace(space);
    if (note !== undefined) draft.addNote({ ...markOf(entry), about: "boat", note });
  },
  "casualty-changed": (draft, { space, situation, ...changed }) => {
    const said = situation && { situation: { ...draft.state.situation, ...situation } };
    Object.assign(draft.state, changed, said);
    if (space) draft.putSpace(space);
  },
  "sounding-taken": (draft, body, entry) => draft.addSounding(body, entry),
  "pump-set": (draft, body, entry) => draft.setPump(body, entry),
  "pump-seen": (draft, body, entry) => draft.addPumpSeen(body, entry),
  "pump-start-told": (draft, body, entry) => draft.addStart(body, entry),
  "pump-refuelled": (draft, { pump }, { at }) => draft.pumps.refuel(pump, at),
  "hole-patched": (draft, body, entry) => draft.addPatch(body, entry),
  "stability-seen": ({ state }, body) => {
    state.stability = { ...state.stability, ...body };
  },
  "tow-set": ({ state }, body, entry) => {
    state.tow = { ...markOf(entry), ...body };
  },
  "fuel-smelt": ({ state, pumps }, _, entry) => {
    state.fuelSmelt = markOf(entry);
    pumps.stopAll(entry.at);
  },
  "fuel-cleared": ({ state }) => {
    delete state.fuelSmelt;
  },
  /** What comes of it is read from all lines of both sheets: see `join`. */
  "casualty-joined": (draft, body, entry) => draft.addJoin({ ...markOf(entry), ...body }),
  "casualty-noted": (draft, body, entry) => draft.addNote({ ...markOf(entry), ...body }),
  "casualty-closed": ({ state, pumps }, body, entry) => {
    state.closed = { ...markOf(entry), ...body };
    pumps.endRuns(entry.at);
  },
  "review-noted": (draft, body, entry) => draft.addReviewNote({ ...markOf(entry), ...body }),
  "casualty-reviewed": ({ state }, body, entry) => {
    state.reviewed = { ...markOf(entry), ...body };
  },
};

/** True for a kind of entry that is about casualties. */
export function isCasualtyKind(kind: string): kind is keyof CasualtyBodies {
  return Object.hasOwn(FOLDS, kind);
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
  if (!isCasualtyKind(entry.kind)) return;
  const fold = FOLDS[entry.kind] as Fold<keyof CasualtyBodies>;
  fold(draft, entry.body as CasualtyBodies[keyof CasualtyBodies], entry);
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
