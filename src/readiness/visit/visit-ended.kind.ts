import type { Entry, History } from "#log";
import { markOf } from "../draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { VISITORS } from "../kinds/writers.ts";
import type { Reexamined, Visit, VisitSoFar } from "./visit-state.ts";

export const subject = "visit";
export const writers = VISITORS;

/** From here on what the keeper wrote is shown. `reason`: why lines were left out, where some were. */
export const schema = ({ visitEnded }: Shapes) => visitEnded;
export type Body = BodyOf<typeof schema>;

/** The first end stands; what was read in sight of it is left out. */
export function fold(visit: VisitSoFar, body: Body, entry: Entry, history: History): VisitSoFar {
  if (visit.ended) return visit;
  return { ...visit, ended: { ...markOf(entry), ...body }, seen: blindOf(visit.seen, entry, history) };
}

function blindOf(seen: Visit["seen"], end: Entry, history: History): Visit["seen"] {
  const blind = Object.entries(seen).filter(([, { mark }]: [string, Reexamined]) => !history.knew(mark.entry, end.id));
  return Object.fromEntries(blind);
}
