import type { Entry } from "#log";
import type { KitDraft } from "../draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { HANDS } from "../kinds/writers.ts";
import { stopTimer } from "./timers.ts";

export const subject = "kit";
export const writers = HANDS;

/** Pulls of the cord until the engine started, or until nobody pulled any more. */
export const schema = ({ z, where, countTo }: Shapes) =>
  z.strictObject({ ...where, pulls: countTo(200), started: z.boolean() });
export type Body = BodyOf<typeof schema>;

/** A turnaround's run has the pulls of its first start. */
export function fold(draft: KitDraft, body: Body, entry: Entry): void {
  stopTimer(draft, body, { pulls: body.pulls, reached: body.started }, entry);
  const known = draft.run(body.turnaround);
  if (known?.pullsStep !== undefined && known.pullsStep !== body.step) return;
  draft.putRun(body.turnaround, { pulls: body.pulls, pullsStep: body.step, started: body.started }, entry);
}
