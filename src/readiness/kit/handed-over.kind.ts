import type { Entry } from "#log";
import { markOf, type KitDraft } from "../draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { HANDS } from "../kinds/writers.ts";
import { breakSeal } from "./seal-fold.ts";

export const subject = "kit";
export const writers = HANDS;

/** It left to a vessel. */
export const schema = ({ z, day, id, lentList, line, note, strokes }: Shapes) =>
  z.strictObject({
    to: line(120),
    method: z.enum(["passed", "hoisted", "dropped", "line", "other"]),
    sealBroken: z.boolean(),
    /** Id of the casualty whose sheet it was handed over from. */
    casualty: id.exactOptional(),
    note: note.exactOptional(),
    /** By which day it is expected back, where that was said. */
    back: day.exactOptional(),
    /** Who took it there, with their signature as it was drawn; see `station/hand-over/signature.ts`. */
    taken: z.strictObject({ name: line(80).exactOptional(), strokes: strokes.exactOptional() }).exactOptional(),
    /** Whether the pattern's briefing was said and understood; absent where nobody said. */
    briefed: z.boolean().exactOptional(),
    /** What was lent with it beside its own items. */
    lent: lentList(1).exactOptional(),
  });
export type Body = BodyOf<typeof schema>;

/** It is away; handed over while being worked on without sight of it, both differ. */
export function fold(draft: KitDraft, body: Body, entry: Entry): void {
  const { kit } = draft;
  const blind = kit.turnaround?.opened ?? (kit.seal && draft.isBlindTo(kit.seal, entry) ? kit.seal : undefined);
  if (blind) {
    const about = `Handed over to ${body.to} while being worked on elsewhere.`;
    draft.differ({ what: "custody", about }, [blind, markOf(entry)]);
  }
  const sheet = body.casualty === undefined ? {} : { casualty: body.casualty };
  const expected = body.back === undefined ? {} : { back: body.back };
  const lent = body.lent === undefined ? {} : { lent: body.lent };
  kit.custody = { ...markOf(entry), kind: "away", to: body.to, ...sheet, ...expected, ...lent };
  if (body.sealBroken) breakSeal(draft, entry);
}
