import type { KitDraft } from "../draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { HANDS } from "../kinds/writers.ts";

export const subject = "kit";
export const writers = HANDS;

/** What was lent and did not come back with the kit came back later, or is given up. */
export const schema = ({ z, countTo, id, lentName, note }: Shapes) =>
  z.strictObject({
    /** Id of the entry "returned" that left it out. */
    returned: id,
    name: lentName,
    how: z.enum(["came-back", "given-up"]),
    /** How many of it, 1 to 99; all that is out where absent. */
    count: countTo(99).min(1).exactOptional(),
    note: note.exactOptional(),
  });
export type Body = BodyOf<typeof schema>;

/** So many of it are out no more; settled in part on two devices, what both say counts. */
export function fold(draft: KitDraft, { returned, name, count }: Body): void {
  const left = (draft.kit.lentOut ?? []).flatMap((out) => {
    if (out.entry !== returned || out.name !== name) return [out];
    return count !== undefined && count < out.count ? [{ ...out, count: out.count - count }] : [];
  });
  if (left.length === 0) delete draft.kit.lentOut;
  else draft.kit.lentOut = left;
}
