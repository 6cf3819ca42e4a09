import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { KEEPING_ROLES } from "../kinds/writers.ts";
import type { RescueBoat } from "../state.ts";

export const subject = "boat";
export const writers = KEEPING_ROLES;

/** She is counted on no more. */
export const schema = ({ z, reason }: Shapes) => z.strictObject({ reason });
export type Body = BodyOf<typeof schema>;

/** Nothing is known of a boat that was never set. */
export function fold(boat: RescueBoat | undefined): RescueBoat | undefined {
  return boat && { ...boat, retired: true };
}
