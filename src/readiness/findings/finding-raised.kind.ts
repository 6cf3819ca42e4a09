import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { WATCHERS } from "../kinds/writers.ts";

export const subject = "kit";
export const writers = WATCHERS;

/** Something was found wrong. */
export const schema = ({ findingRaised }: Shapes) => findingRaised;
export type Body = BodyOf<typeof schema>;

export { raise as fold } from "./raise.ts";
