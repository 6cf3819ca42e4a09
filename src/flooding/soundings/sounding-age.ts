import { numberAt } from "#base";
import { normalQuantile, repeatableStream } from "#numerics";
import { DELIVERY, STRENGTH, type Casualty } from "./sounding-model.ts";

/**
 * A last sounding older than this is stale [s]: what it says of now is no longer to be leant on. Half an hour is six
 * soundings missed at the usual five minutes; this program's judgement, common practice being to sound every few
 * minutes.
 */
export const STALE_AFTER = 1800;

/** Log spreads of what may have changed unseen within an hour, growing with √time: hole and delivery. Judgement. */
const HOLE_DRIFT = 0.3;
const DELIVERY_DRIFT = 0.2;
const HOUR = 3600;
const SEED = 0xa6e;

/**
 * Casualties as they may be so long after the last sounding: nobody has seen since then whether the hole grew, a plug
 * came out or the pump slowed.
 *
 * @param casualties - as the soundings leave them
 * @param age - of the last sounding [s]
 * @returns the same where age is 0; else each with hole and delivery moved by a normal of its own in the logarithm
 * @source this program's judgement; docs/methods/soundings.md, "An old sounding"
 */
export function driftUnseen(casualties: readonly Casualty[], age: number): readonly Casualty[] {
  if (age <= 0) return casualties;
  const draw = repeatableStream(SEED);
  const root = Math.sqrt(age / HOUR);
  return casualties.map((one) => {
    const moved = Float64Array.from(one);
    moved[STRENGTH] = numberAt(moved, STRENGTH) * Math.exp(HOLE_DRIFT * root * normalQuantile(draw()));
    moved[DELIVERY] = numberAt(moved, DELIVERY) * Math.exp(DELIVERY_DRIFT * root * normalQuantile(draw()));
    return moved;
  });
}
