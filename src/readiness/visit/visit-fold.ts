import type { Entry, History } from "#log";
import { isKindOf } from "../kinds/folds-of.ts";
import { visitFolds } from "../registry/visit.ts";
import { idOf } from "../subject-id.ts";
import type { Visit, VisitSoFar } from "./visit-state.ts";

/** A visit after one more entry. */
export function applyVisitEntry(before: VisitSoFar | undefined, entry: Entry, history: History): VisitSoFar {
  const visit = before ?? { id: idOf(entry.subject), seen: {} };
  if (!isKindOf(visitFolds, entry.kind)) return visit;
  return visitFolds[entry.kind](visit, entry.body as never, entry, history);
}

/** The visit, once its beginning is known. */
export function begunVisit(visit: VisitSoFar | undefined): Visit | undefined {
  return visit?.begun && { ...visit, begun: visit.begun };
}
