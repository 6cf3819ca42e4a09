import { STAGE_ORDER } from "#kit";
import { z } from "zod";
import type { Said } from "./said.ts";
import { amountTo, countTo, day, id, line, photo, reason } from "./schema-parts.ts";

/* What is said of people, boats and a pattern's lines, where the state keeps it as it was said. */

const tie = z.discriminatedUnion("to", [
  z.strictObject({ to: z.literal("stage"), stage: z.enum(STAGE_ORDER), pattern: id.exactOptional() }),
  z.strictObject({ to: z.literal("step"), step: id, pattern: id }),
  z.strictObject({ to: z.literal("sheet") }),
]);
/** What a qualification is for: a stage of every pattern or of one, one step of a pattern, or the sheet of a casualty. */
export type Tie = Said<typeof tie>;

const SOME_TIES = { error: "1 to 40 stages or steps" };
export const ties = z.array(tie).min(1, SOME_TIES).max(40, SOME_TIES);

export const practiceTold = z.strictObject({ qualification: id, day, how: reason, second: id.exactOptional() });
export type PracticeTold = Said<typeof practiceTold>;

const BOAT_SPEED = { error: "more than 0 m/s, at most 60 m/s" };

export const boatSetting = z.strictObject({
  name: line(80),
  /** Place where she lies: kits there can go with her. */
  place: id,
  /** Loaded, in the sea she launches in [m/s]. */
  speed: z.number({ error: "a number" }).gt(0, BOAT_SPEED).max(60, BOAT_SPEED),
  /** From the call until she is under way [s]. */
  launch: amountTo(86_400),
  /** From alongside until water goes over the casualty's side [s]. */
  setUp: amountTo(7_200),
  /** Kits she carries and hands over in one trip. */
  carries: countTo(50),
  /** Whether she can feed a mains pump on another boat. */
  mains: z.boolean(),
});
/** A rescue boat of the station, as she is counted on before launching. */
export type BoatSetting = Said<typeof boatSetting>;

export const linePictured = z.strictObject({
  step: id,
  /** Check of the step that they are of; the step itself where absent. */
  check: id.exactOptional(),
  shows: z.enum(["right", "wrong"]),
  photos: z.array(photo).min(1, { error: "at least one photo" }).max(4, { error: "at most 4 photos" }),
  note: line(300).exactOptional(),
});
export type LinePictured = Said<typeof linePictured>;
