import type { Entry } from "#log";
import type { ReportsDraft } from "../drafts/reports-draft.ts";
import { isKindOf } from "../kinds/folds-of.ts";
import { patternFolds } from "../registry/pattern.ts";

/** Folds one more entry into the reports about a pattern's steps. */
export function applyToReports(draft: ReportsDraft, entry: Entry): void {
  if (isKindOf(patternFolds, entry.kind)) patternFolds[entry.kind](draft, entry.body as never, entry);
}
