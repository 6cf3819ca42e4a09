import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { HANDS } from "../kinds/writers.ts";

export const subject = "kit";
/** Of what one does oneself. */
export const writers = HANDS;

/** The writer goes on without a second person, and says why. */
export const schema = ({ z, id, reason }: Shapes) =>
  z.strictObject({ turnaround: id, qualification: id, note: reason });
export type Body = BodyOf<typeof schema>;

export { noteSecond as fold } from "./second-fold.ts";
