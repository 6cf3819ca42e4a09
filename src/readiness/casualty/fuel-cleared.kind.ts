import type { CasualtyDraft } from "../drafts/casualty-draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { ON_SCENE } from "../kinds/writers.ts";

export const subject = "casualty";
export const writers = ON_SCENE;

/** Somebody in charge has found it clear. */
export const schema = ({ z, note }: Shapes) => z.strictObject({ note });
export type Body = BodyOf<typeof schema>;

/** Pumps may be set to run again. */
export function fold({ state }: CasualtyDraft): void {
  delete state.fuelSmelt;
}
