import type { Bodies, EntryKind } from "#readiness";
import { STATION_PLACE, type Entry } from "#log";
import type { Parts } from "../parts.ts";

/** A line the server writes itself for a person at its own door: joining, inviting, setting up. */
export type ServerDraft = { [K in EntryKind]: { subject: string; kind: K; body: Bodies[K] } }[EntryKind];

/** Writes lines that concern the whole station, in one piece, in the name of the person who asked for them. */
export async function writeLines(
  parts: Parts,
  who: { readonly person: string; readonly device: string },
  drafts: readonly ServerDraft[],
): Promise<void> {
  await parts.store.append(makeLines(parts, who, drafts), parts.ambient.now());
  await parts.roster.catchUp();
}

/** The same lines, for whoever keeps them together with others. */
export function makeLines(
  parts: Parts,
  who: { readonly person: string; readonly device: string },
  drafts: readonly ServerDraft[],
): readonly Entry[] {
  const at = parts.ambient.now();
  return drafts.map((draft): Entry => {
    const after = parts.roster.newest(draft.subject);
    const known = after.length === 0 ? {} : { after };
    const { person: by, device } = who;
    return { id: parts.ambient.newId(), place: STATION_PLACE, at, by, device, ...known, ...draft };
  });
}
