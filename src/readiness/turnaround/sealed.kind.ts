import type { Entry } from "#log";
import { forgetMet } from "../after-use/met-fold.ts";
import { markOf, type KitDraft } from "../draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { HANDS } from "../kinds/writers.ts";
import { putSeal } from "../kit/seal-fold.ts";
import { isSameSeal } from "../kit/seal-number.ts";
import type { Turnaround } from "../state.ts";
import { differClosing } from "./closed-twice.ts";

export const subject = "kit";
export const writers = HANDS;

/** The turnaround is done, and the container sealed. */
export const schema = ({ z, id, line, note, sealNumber }: Shapes) =>
  z.strictObject({ turnaround: id, seal: sealNumber, note: note.exactOptional(), witness: line(120).exactOptional() });
export type Body = BodyOf<typeof schema>;

/** The kit is here under its new seal; closed before with another, both lines differ. */
export function fold(draft: KitDraft, body: Body, entry: Entry): void {
  const { kit } = draft;
  const turnaround = draft.turnaround(body.turnaround, entry);
  if (turnaround.closed) return sealAgain(draft, turnaround.closed, body.seal, entry);
  draft.closeTurnaround(turnaround, { ...markOf(entry), how: "sealed", seal: body.seal });
  if (kit.custody.kind === "away") {
    const about = `Sealed here while the kit is handed over to ${kit.custody.to}.`;
    draft.differ({ what: "custody", about }, [kit.custody, markOf(entry)]);
  } else kit.custody = { kind: "here" };
  forgetMet(draft);
  putSeal(draft, body.seal, entry);
}

function sealAgain(draft: KitDraft, closed: NonNullable<Turnaround["closed"]>, number: string, entry: Entry): void {
  if (closed.seal !== undefined && closed.how === "sealed" && isSameSeal(closed.seal, number)) return;
  differClosing(draft, closed, number, entry);
}
