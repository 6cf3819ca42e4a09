import type { Entry } from "#log";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { KEEPING_ROLES } from "../kinds/writers.ts";
import type { RescueBoat } from "../state.ts";
import { idOf } from "../subject-id.ts";

export const subject = "boat";
export const writers = KEEPING_ROLES;

/** Every figure anew: what is amended is written whole. */
export const schema = ({ boatSetting }: Shapes) => boatSetting;
export type Body = BodyOf<typeof schema>;

/** Set again she is back. */
export function fold(_before: RescueBoat | undefined, body: Body, entry: Entry): RescueBoat {
  return { id: idOf(entry.subject), ...body, retired: false };
}
