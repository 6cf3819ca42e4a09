import type { Entry } from "#log";
import type { CasualtyDraft } from "../drafts/casualty-draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { ON_SCENE } from "../kinds/writers.ts";

export const subject = "casualty";
export const writers = ON_SCENE;

/** Its tank is full again. */
export const schema = ({ z, id }: Shapes) => z.strictObject({ pump: id });
export type Body = BodyOf<typeof schema>;

/** The next refuelling is counted from here. */
export function fold(draft: CasualtyDraft, { pump }: Body, { at }: Entry): void {
  draft.pumps.refuel(pump, at);
}
