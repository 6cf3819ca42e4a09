import type { Entry } from "#log";
import type { KitDraft } from "../draft.ts";

/** Keeps a remedy or proof that sorts before its finding, by a clock that was wrong, until that is raised. */
export function waitForFinding(draft: KitDraft, entry: Entry): void {
  draft.kit.waiting ??= [];
  draft.waiting.add(entry);
}
