import type { Entry } from "#log";
import { markOf, type KitDraft } from "../draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { HANDS } from "../kinds/writers.ts";
import { keepSaid, saidOf } from "./work-said.ts";

export const subject = "kit";
/** Others than oneself are put to work by keepers: see `judgeEntry`. */
export const writers = HANDS;

/** Who does it; nobody any more where `person` is absent. */
export const schema = ({ z, id, work }: Shapes) => z.strictObject({ work, person: id.exactOptional() });
export type Body = BodyOf<typeof schema>;

/** So many stand who took it without sight of each other, the last ones; no work is taken by more. */
const MOST_TAKERS = 32;

/** Of two who took it without sight of each other both stand. */
export function fold(draft: KitDraft, { work, person }: Body, entry: Entry): void {
  const said = saidOf(draft, work);
  const others = said.takers.filter((one) => draft.isBlindTo(one, entry) && one.person !== person);
  const takers = person === undefined ? others : [...others, { ...markOf(entry), person }].slice(-MOST_TAKERS);
  keepSaid(draft, work, { ...said, takers });
}
