import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { KEEPING_ROLES } from "../kinds/writers.ts";

export const subject = "pattern";
export const writers = KEEPING_ROLES;

/** A keeper's own photos of what is right, or wrong, at a line: shown there until the line in the log is struck. */
export const schema = ({ linePictured }: Shapes) => linePictured;
export type Body = BodyOf<typeof schema>;

/** Nothing: photos are read off the lines themselves, see `linePhotosOf`. */
export function fold(): void {}
