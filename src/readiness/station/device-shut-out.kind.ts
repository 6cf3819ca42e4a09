import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { KEEPING_ROLES } from "../kinds/writers.ts";
import type { Device } from "../state.ts";

export const subject = "device";
export const writers = KEEPING_ROLES;

/** Lost or stolen: nothing is taken from it any more. */
export const schema = ({ z, reason }: Shapes) => z.strictObject({ reason });
export type Body = BodyOf<typeof schema>;

/** For good. */
export function fold(device: Device): Device {
  return { ...device, shutOut: true };
}
