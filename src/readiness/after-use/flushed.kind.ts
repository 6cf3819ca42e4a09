import type { Entry } from "#log";
import { markOf, type KitDraft } from "../draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { HANDS } from "../kinds/writers.ts";

export const subject = "kit";
export const writers = HANDS;

/** Fresh water went through it after use: first aid, before its turnaround. */
export const schema = ({ z, note }: Shapes) => z.strictObject({ note: note.exactOptional() });
export type Body = BodyOf<typeof schema>;

/** The clocks of all it met so far have ended. */
export function fold(draft: KitDraft, _body: Body, entry: Entry): void {
  const { met } = draft.kit;
  if (met) draft.kit.met = met.map((use) => (use.flushed ? use : { ...use, flushed: markOf(entry) }));
}
