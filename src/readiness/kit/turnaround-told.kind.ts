import type { Entry } from "#log";
import { markOf, type KitDraft } from "../draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { KEEPING_ROLES } from "../kinds/writers.ts";

export const subject = "kit";
/** What a keeper is told, by a sheet or a book. */
export const writers = KEEPING_ROLES;

/**
 * A turnaround that somebody tells of, by a sheet or from a book. It is a statement and proves nothing: no kit is ready
 * by it, and nothing is counted from its day.
 */
export const schema = ({ turnaroundTold }: Shapes) => turnaroundTold;
export type Body = BodyOf<typeof schema>;

/** It stands beside the turnarounds that were done here, never among them. */
export function fold(draft: KitDraft, body: Body, entry: Entry): void {
  const told = draft.list(draft.kit.told);
  told.push({ ...markOf(entry), ...body });
  draft.kit.told = told;
}
