import type { Entry } from "#log";
import { markOf, type KitDraft } from "../draft.ts";
import type { KitBodies } from "../kinds/kinds.ts";

/** Kinds that say who saw a thing done in a turnaround, or why nobody did. */
export const secondFolds = { "second-named": noteSecond, "gone-on-alone": noteSecond };

function noteSecond(draft: KitDraft, body: KitBodies["second-named" | "gone-on-alone"], entry: Entry): void {
  const { turnaround: id, ...said } = body;
  const turnaround = draft.turnaround(id, entry);
  const seconds = draft.list(turnaround.seconds);
  seconds.push({ ...markOf(entry), ...said });
  turnaround.seconds = seconds;
}
