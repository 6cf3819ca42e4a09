import type { Entry, History } from "#log";
import { markOf } from "../draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { MOST_DRAWN } from "../kinds/most.ts";
import { VISITORS } from "../kinds/writers.ts";
import { isDrawn, visitKey, type VisitSoFar } from "./visit-state.ts";

export const subject = "visit";
export const writers = VISITORS;

/** A line looked at again, without sight of what the keeper wrote. `finding`: what was found wrong, raised on the kit. */
export const schema = ({ lineReexamined }: Shapes) => lineReexamined;
export type Body = BodyOf<typeof schema>;

/**
 * What was read by somebody who knew that the visit was over, and so may have seen what the keeper wrote, does not count;
 * nor does a line that was not drawn.
 */
export function fold(visit: VisitSoFar, said: Body, entry: Entry, history: History): VisitSoFar {
  if (visit.ended && history.knew(entry.id, visit.ended.entry)) return visit;
  if (visit.begun ? !isDrawn(visit.begun, said) : Object.keys(visit.seen).length >= MOST_DRAWN) return visit;
  return { ...visit, seen: { ...visit.seen, [visitKey(said)]: { ...said, mark: markOf(entry) } } };
}
