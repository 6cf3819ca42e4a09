import type { CasualtySituation } from "#readiness";

/** What can be written down of where she is, with what it is asked by. */
export const SITUATION_FIELDS = [
  { id: "position", label: "Position", hint: "As told: latitude and longitude, or bearing and distance of a mark." },
  { id: "drift", label: "Drift", hint: "Which way and how fast, or at anchor." },
  { id: "tide", label: "Tide", hint: "Rising or falling, and where the stream sets her." },
  { id: "otherKits", label: "Kits of other stations", hint: "Who, how many, and when they can be there." },
] as const satisfies readonly { readonly id: keyof CasualtySituation; readonly label: string; readonly hint: string }[];

/** Greatest number of characters of each. */
export const SITUATION_LIMITS = { position: 200, drift: 200, tide: 200, otherKits: 500 } as const;

/** "Position 57 12 N 1 40 W; Drift east 2 kn". */
export function saySituation(situation: CasualtySituation): string {
  return SITUATION_FIELDS.filter(({ id }) => situation[id] !== undefined)
    .map(({ id, label }) => `${label} ${situation[id]}`)
    .join("; ");
}

/** What was written, without what is empty; nothing where all of it is. */
export function situationOf(texts: CasualtySituation): CasualtySituation | undefined {
  const some = SITUATION_FIELDS.flatMap(({ id }) => {
    const text = texts[id]?.trim() ?? "";
    return text === "" ? [] : [[id, text] as const];
  });
  return some.length === 0 ? undefined : (Object.fromEntries(some) as CasualtySituation);
}

/** What is typed and does not stand so already; nothing where that is nothing. What is emptied stays as it stood. */
export function changedSituation(stands: CasualtySituation, typed: CasualtySituation): CasualtySituation | undefined {
  const said = situationOf(typed) ?? {};
  const changed = SITUATION_FIELDS.flatMap(({ id }) => {
    const text = said[id];
    return text === undefined || text === stands[id] ? [] : [[id, text] as const];
  });
  return changed.length === 0 ? undefined : (Object.fromEntries(changed) as CasualtySituation);
}
