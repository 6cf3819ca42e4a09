import type { Entry } from "#log";
import type { KitDraft } from "../draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { HANDS } from "../kinds/writers.ts";
import { stopTimer } from "./timers.ts";

export const subject = "kit";
export const writers = HANDS;

/** A wait or run is over: how long it took [s], and whether that was long enough. */
export const schema = ({ z, DAY_SECONDS, where, amountTo, instant }: Shapes) =>
  z.strictObject({ ...where, started: instant, seconds: amountTo(30 * DAY_SECONDS), reached: z.boolean() });
export type Body = BodyOf<typeof schema>;

/** The last stop stands. */
export function fold(draft: KitDraft, body: Body, entry: Entry): void {
  stopTimer(draft, body, { seconds: body.seconds, reached: body.reached }, entry);
}
