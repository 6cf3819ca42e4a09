import { drawnIn } from "./compare-visit.ts";
import { visitKey, type DrawnLine, type Visit } from "./visit-state.ts";

/**
 * Lines of a kit at which an assessor looks before the keeper answers, and has not yet by what this device knows.
 *
 * @param visits - of the station, ended ones too
 * @param kit - id
 */
export function lookedAtFirst(visits: readonly Visit[], kit: string): readonly DrawnLine[] {
  const on = visits.filter(({ ended }) => ended === undefined);
  return on.flatMap((visit) => drawnIn(visit).filter((line) => line.kit === kit && !visit.seen[visitKey(line)]));
}
