import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { ADMINISTRATORS } from "../kinds/writers.ts";
import type { Device } from "../state.ts";

export const subject = "device";
export const writers = ADMINISTRATORS;

/** A device that lines are written on. No secret is ever in the log. */
export const schema = ({ z, line }: Shapes) => z.strictObject({ name: line(80) });
export type Body = BodyOf<typeof schema>;

/** A device that was shut out stays out, whatever it is called later. */
export function fold(device: Device, { name }: Body): Device {
  return { ...device, name };
}
