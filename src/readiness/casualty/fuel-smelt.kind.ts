import type { Entry } from "#log";
import { markOf } from "../draft.ts";
import type { CasualtyDraft } from "../drafts/casualty-draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { ON_SCENE } from "../kinds/writers.ts";

export const subject = "casualty";
export const writers = ON_SCENE;

/** Fuel smelt or seen in the water: every pump stops. */
export const schema = ({ z, note }: Shapes) => z.strictObject({ note: note.exactOptional() });
export type Body = BodyOf<typeof schema>;

/** None is set to run until somebody sets it again. */
export function fold({ state, pumps }: CasualtyDraft, _body: Body, entry: Entry): void {
  state.fuelSmelt = markOf(entry);
  pumps.stopAll(entry.at);
}
