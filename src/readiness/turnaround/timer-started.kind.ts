import type { Entry } from "#log";
import { markOf, type KitDraft } from "../draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { HANDS } from "../kinds/writers.ts";
import { putTimer, timerOf } from "./timers.ts";

export const subject = "kit";
export const writers = HANDS;

/** A wait, run, prime or pull count started; wall-clock instant in `at`. */
export const schema = ({ z, where }: Shapes) => z.strictObject(where);
export type Body = BodyOf<typeof schema>;

/** Started anew it is not yet over. */
export function fold(draft: KitDraft, body: Body, entry: Entry): void {
  const { seconds: _seconds, reached: _reached, meanwhile: _meanwhile, ...before } = timerOf(draft, body, entry);
  putTimer(draft, body, { ...before, started: entry.at, mark: markOf(entry) }, entry);
}
