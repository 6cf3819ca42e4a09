import { MET } from "#kit";
import type { Entry } from "#log";
import { markOf, type KitDraft } from "../draft.ts";
import { raise } from "../findings/raise.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { HANDS } from "../kinds/writers.ts";
import { countLent } from "./lent-fold.ts";
import { meet } from "./met-fold.ts";

export const subject = "kit";
export const writers = HANDS;

/** It came back from use. */
export const schema = ({ z, countedAs, foundAtReturn, instant, lentList, note }: Shapes) =>
  z.strictObject({
    note: note.exactOptional(),
    exposure: z.array(z.enum(MET)).max(4),
    /** RFC 3339, when it last pumped, where somebody knows. */
    stopped: instant.exactOptional(),
    /** The pattern's items as they were counted; absent where nobody counted. */
    counted: z.array(countedAs).max(200).exactOptional(),
    /** A finding on each item that is missing or damaged: raised with this line, and struck with it. */
    findings: z.array(foundAtReturn).max(200).exactOptional(),
    /** How many came back of each thing that was lent with it; what nobody counted is left out. */
    lent: lentList(0).exactOptional(),
  });
export type Body = BodyOf<typeof schema>;

/** Back, with what it met and how it was counted; what is missing or damaged is a finding from then on. */
export function fold(draft: KitDraft, body: Body, entry: Entry): void {
  const { exposure, counted, findings = [] } = body;
  countLent(draft, body.lent, entry);
  draft.kit.custody = { ...markOf(entry), kind: "back", exposure, ...(counted && { counted }) };
  meet(draft, body, entry);
  for (const found of findings) raise(draft, { ...found, photos: [] }, entry);
}
