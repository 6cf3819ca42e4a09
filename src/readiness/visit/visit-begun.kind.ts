import type { Entry } from "#log";
import { markOf } from "../draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { VISITORS } from "../kinds/writers.ts";
import { isDrawn, type VisitSoFar } from "./visit-state.ts";

export const subject = "visit";
/** Nobody looks again at what they wrote themselves: see the acts. */
export const writers = VISITORS;

/** The sample of a visit, with all that it takes to draw the same again. */
export const schema = ({ visitBegun }: Shapes) => visitBegun;
export type Body = BodyOf<typeof schema>;

/** The first beginning stands. Of what was read before it, by a clock that was wrong, only what was drawn is kept. */
export function fold(visit: VisitSoFar, body: Body, entry: Entry): VisitSoFar {
  if (visit.begun) return visit;
  const begun = { ...markOf(entry), ...body };
  const seen = Object.entries(visit.seen).filter(([, said]) => isDrawn(begun, said));
  return { ...visit, begun, seen: Object.fromEntries(seen) };
}
