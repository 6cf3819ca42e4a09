import { drawnIn, visitKey, type DrawnLine, type KitState, type Role, type Visit } from "#readiness";
import { isKeeper, mayWrite } from "../judging/permission.ts";

/** Who answered a drawn line in the turnaround that a visit is compared with; undefined where that is not at hand. */
export function writerOf(visit: Visit, kits: readonly KitState[], line: DrawnLine): string | undefined {
  const of = visit.begun.of.find(({ kit }) => kit === line.kit);
  const turnaround = kits.find(({ id }) => id === line.kit)?.turnarounds.find(({ id }) => id === of?.turnaround);
  return turnaround?.answers[`${line.step}/${line.check}`]?.mark.by;
}

/** Who asks to see which lines of a visit were drawn. */
export interface LineReader {
  readonly me: { readonly id: string; readonly role: Role };
  readonly kits: readonly KitState[];
}

/**
 * True where a drawn line is shown to a person: once the visit has ended, to everybody; before, to who may look at it and
 * neither wrote it nor may keep the kit. Whoever began the visit is shown what they did not write, a keeper too.
 */
export function isLineShown({ me, kits }: LineReader, visit: Visit, line: DrawnLine): boolean {
  if (visit.ended) return true;
  if (!mayWrite(me.role, "line-reexamined") || writerOf(visit, kits, line) === me.id) return false;
  return !isKeeper(me.role) || visit.begun.by === me.id;
}

/** How many lines of each kit are left to be looked at, of those that a person is not shown. */
export function linesHidden(reader: LineReader, visit: Visit): ReadonlyMap<string, number> {
  const left = new Map<string, number>();
  for (const line of drawnIn(visit)) {
    if (isLineShown(reader, visit, line) || visit.seen[visitKey(line)]) continue;
    left.set(line.kit, (left.get(line.kit) ?? 0) + 1);
  }
  return left;
}
