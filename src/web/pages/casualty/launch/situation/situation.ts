import type { Words } from "#words";
import type { CasualtySituation } from "#readiness";

/** What can be written down of where she is. */
export const SITUATION_FIELDS = [
  "position",
  "drift",
  "tide",
  "otherKits",
] as const satisfies readonly (keyof CasualtySituation)[];

/** What each is asked by, beside its name. */
export const SITUATION_HINTS = {
  position: "positionHint",
  drift: "driftHint",
  tide: "tideHint",
  otherKits: "otherKitsHint",
} as const satisfies Readonly<Record<keyof CasualtySituation, keyof Words["launchTold"]>>;

/** Greatest number of characters of each. */
export const SITUATION_LIMITS = { position: 200, drift: 200, tide: 200, otherKits: 500 } as const;

/** "Position 57 12 N 1 40 W; Drift east 2 kn". */
export function saySituation(situation: CasualtySituation, words: Words["casualtyTold"]): string {
  return SITUATION_FIELDS.flatMap((id) => {
    const text = situation[id];
    return text === undefined ? [] : [words.situationPart({ label: words[id](), text })];
  }).join("; ");
}

/** What was written, without what is empty; nothing where all of it is. */
export function situationOf(texts: CasualtySituation): CasualtySituation | undefined {
  const some = SITUATION_FIELDS.flatMap((id) => {
    const text = texts[id]?.trim() ?? "";
    return text === "" ? [] : [[id, text] as const];
  });
  return some.length === 0 ? undefined : (Object.fromEntries(some) as CasualtySituation);
}

/** What is typed and does not stand so already; nothing where that is nothing. What is emptied stays as it stood. */
export function changedSituation(stands: CasualtySituation, typed: CasualtySituation): CasualtySituation | undefined {
  const said = situationOf(typed) ?? {};
  const changed = SITUATION_FIELDS.flatMap((id) => {
    const text = said[id];
    return text === undefined || text === stands[id] ? [] : [[id, text] as const];
  });
  return changed.length === 0 ? undefined : (Object.fromEntries(changed) as CasualtySituation);
}
