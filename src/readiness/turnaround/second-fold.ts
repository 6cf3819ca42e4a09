import type { Entry } from "#log";
import { markOf, type KitDraft } from "../draft.ts";
import type { Mark, Second } from "../state.ts";

type Told = Omit<Second, keyof Mark> & { readonly turnaround: string };

/** Who saw a thing done in a turnaround, or why nobody did: it stands beside what was said before. */
export function noteSecond(draft: KitDraft, body: Told, entry: Entry): void {
  const { turnaround: id, ...said } = body;
  const turnaround = draft.turnaround(id, entry);
  const seconds = draft.list(turnaround.seconds);
  seconds.push({ ...markOf(entry), ...said });
  turnaround.seconds = seconds;
}
