import type { Entry } from "#log";
import type { KitDraft } from "../draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { HANDS } from "../kinds/writers.ts";
import { stopTimer } from "./timers.ts";

export const subject = "kit";
export const writers = HANDS;

/** How long the pump took from the first stroke to water [s]. */
export const schema = ({ z, DAY_SECONDS, where, amountTo, countTo }: Shapes) =>
  z.strictObject({
    ...where,
    seconds: amountTo(DAY_SECONDS),
    strokes: countTo(5_000).exactOptional(),
    primed: z.boolean(),
    /** Suction lift at the time [m]. */
    lift: z.number().min(-20).max(20).exactOptional(),
  });
export type Body = BodyOf<typeof schema>;

/** It is part of the turnaround's run. */
export function fold(draft: KitDraft, body: Body, entry: Entry): void {
  stopTimer(draft, body, { seconds: body.seconds, reached: body.primed }, entry);
  draft.putRun(body.turnaround, { primeSeconds: body.seconds, primed: body.primed }, entry);
}
