import type { Entry } from "#log";
import { markOf, type KitDraft } from "../draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { KEEPING_ROLES } from "../kinds/writers.ts";

export const subject = "kit";
export const writers = KEEPING_ROLES;

/** It lies at another place. */
export const schema = ({ z, id }: Shapes) => z.strictObject({ to: id });
export type Body = BodyOf<typeof schema>;

/** The last place stands; moved to two without sight of each other they differ. */
export function fold(draft: KitDraft, { to }: Body, entry: Entry): void {
  const { moved, place } = draft.kit;
  if (moved && place !== to && draft.isBlindTo(moved, entry)) {
    draft.differ({ what: "place", about: `Moved to ${place} and to ${to}.` }, [moved, markOf(entry)]);
  }
  draft.kit.place = to;
  draft.kit.moved = markOf(entry);
}
