import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { HANDS } from "../kinds/writers.ts";

export const subject = "kit";
/** Of what one does oneself. */
export const writers = HANDS;

/** Who sees what the writer of this line does in the turnaround under this qualification: a person's id. */
export const schema = ({ z, id }: Shapes) => z.strictObject({ turnaround: id, qualification: id, second: id });
export type Body = BodyOf<typeof schema>;

export { noteSecond as fold } from "./second-fold.ts";
