import type { Entry } from "#log";
import { tellMet } from "../after-use/met-fold.ts";
import { markOf, type KitDraft, type Mutable } from "../draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { HANDS } from "../kinds/writers.ts";
import { breakSeal, seeSeal } from "../kit/seal-fold.ts";
import type { Turnaround } from "../state.ts";

export const subject = "kit";
export const writers = HANDS;

/** The container is open, and its turnaround begun. */
export const schema = ({ z, id, sealSeen }: Shapes) =>
  z.strictObject({
    turnaround: id,
    because: z.enum(["routine", "returned", "finding", "seal", "lapse"]),
    sealSeen,
    /** Other readings of the seal before that one, in order; each differed from the record and was looked at again. */
    sealReadBefore: z.array(sealSeen).max(10).exactOptional(),
    /** The drill that it is part of. */
    drill: id.exactOptional(),
  });
export type Body = BodyOf<typeof schema>;

/** Its seal is off; opened twice, or while the kit is away, both lines differ. */
export function fold(draft: KitDraft, body: Body, entry: Entry): void {
  const standing = draft.kit.turnaround;
  const turnaround = begin(draft, body, entry);
  if (turnaround.closed) return;
  const { custody } = draft.kit;
  if (standing && standing.id !== body.turnaround) {
    const about = "Two turnarounds were opened on this kit.";
    draft.differ({ what: "turnaround", about }, [standing.opened, markOf(entry)]);
  }
  if (custody.kind === "away") {
    const about = `A turnaround was opened while the kit is handed over to ${custody.to}.`;
    draft.differ({ what: "custody", about }, [custody, markOf(entry)]);
  }
  seeSeal(draft, body.sealSeen, entry);
  breakSeal(draft, entry);
}

function begin(draft: KitDraft, body: Body, entry: Entry): Mutable<Turnaround> {
  const { seal, turnaround: standing } = draft.kit;
  const turnaround = draft.turnaround(body.turnaround, entry);
  const sealOnRecord = seal?.number ?? standing?.opened.sealOnRecord;
  const { sealSeen, sealReadBefore } = body;
  const seals = {
    sealSeen,
    ...(sealReadBefore && { sealReadBefore }),
    ...(sealOnRecord === undefined ? {} : { sealOnRecord }),
  };
  Object.assign(turnaround, { because: body.because, opened: { ...markOf(entry), ...seals } });
  markDrill(draft, turnaround, body.drill ?? draft.drillOn(), entry);
  tellMet(draft, turnaround);
  return turnaround;
}

/** A turnaround of a drill; runs of it that sorted before are of the drill too. */
function markDrill(draft: KitDraft, turnaround: Mutable<Turnaround>, drill: string | undefined, entry: Entry): void {
  if (drill === undefined) return;
  turnaround.drill = drill;
  if (draft.run(turnaround.id)) draft.putRun(turnaround.id, { drill }, entry);
}
