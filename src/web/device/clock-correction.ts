import type { Entry } from "#log";
import { withOffset } from "./clock.ts";

/** Fields of bodies that carry an instant of the same clock as the line itself. */
const INSTANT_FIELDS = new Set(["started", "taken"]);

/**
 * The same lines as they would have been on a clock that was right: each time moved by the difference measured, each
 * with a new id, and every mention of an old id among them turned to the new one. Content is otherwise untouched.
 *
 * @param lines - refused lines, in the order they were written; none of them is kept anywhere but here
 * @param aheadMs - how far the clock was ahead when they were written [ms]
 * @param newId - makes ids
 */
export function correctTimes(lines: readonly Entry[], aheadMs: number, newId: () => string): readonly Entry[] {
  const ids = new Map(lines.map((line) => [line.id, newId()]));
  const idOf = (id: string) => ids.get(id) ?? id;
  return lines.map((line) => ({
    ...line,
    id: idOf(line.id),
    at: moveInstant(line.at, aheadMs),
    ...(line.after && { after: line.after.map(idOf) }),
    body: correctBody(line.body, idOf, aheadMs),
  }));
}

function correctBody(value: unknown, idOf: (id: string) => string, aheadMs: number): unknown {
  if (typeof value === "string") return idOf(value);
  if (Array.isArray(value)) return value.map((item) => correctBody(item, idOf, aheadMs));
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, item]) => [
      key,
      INSTANT_FIELDS.has(key) && typeof item === "string" && item.includes("T")
        ? moveInstant(item, aheadMs)
        : correctBody(item, idOf, aheadMs),
    ]),
  );
}

/** Moves an instant back by the difference and keeps the offset it was written with. */
function moveInstant(at: string, aheadMs: number): string {
  const offset = /([+-])(\d{2}):(\d{2})$/.exec(at);
  const minutes = offset ? Number(`${offset[1]}1`) * (Number(offset[2]) * 60 + Number(offset[3])) : 0;
  return withOffset(new Date(Date.parse(at) - aheadMs), minutes);
}
