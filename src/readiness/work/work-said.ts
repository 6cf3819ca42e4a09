import type { KitDraft } from "../draft.ts";
import type { WorkKind } from "../kinds/work-parts.ts";
import type { WorkSaid } from "../state.ts";

/* What people say of work that is due. */

/** What was said of it so far. */
export function saidOf({ kit }: KitDraft, work: WorkKind): WorkSaid {
  return kit.work?.[work] ?? { takers: [] };
}

/** Keeps what is said of it from here on. */
export function keepSaid(draft: KitDraft, work: WorkKind, said: WorkSaid): void {
  draft.kit.work = { ...draft.kit.work, [work]: said };
}
