import type { Entry } from "#log";
import { markOf, type KitDraft } from "../draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { WATCHERS } from "../kinds/writers.ts";
import { seeSeal } from "./seal-fold.ts";

export const subject = "kit";
export const writers = WATCHERS;

/** Somebody saw it and read its seal. */
export const schema = ({ z, note, sealSeen }: Shapes) =>
  z.strictObject({ sealSeen, containerSound: z.boolean(), note: note.exactOptional() });
export type Body = BodyOf<typeof schema>;

/** A container that is not sound stays so until the next sealing. */
export function fold(draft: KitDraft, body: Body, entry: Entry): void {
  const { kit } = draft;
  kit.lastMuster = { ...markOf(entry), seal: body.sealSeen };
  if (!body.containerSound) {
    kit.unsound = { ...markOf(entry), ...(body.note === undefined ? {} : { note: body.note }) };
  }
  seeSeal(draft, body.sealSeen, entry);
}
