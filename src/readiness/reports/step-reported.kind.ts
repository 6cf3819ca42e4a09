import type { Entry } from "#log";
import { markOf } from "../draft.ts";
import type { ReportsDraft } from "../drafts/reports-draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { ROLES } from "../kinds/writers.ts";

export const subject = "pattern";
export const writers = ROLES;

/** A step of a pattern, or a picture of its card for strangers, that somebody found wrong, impossible or unclear. */
export const schema = ({ z, id, note }: Shapes) =>
  z.strictObject({
    step: id,
    /** The step is a picture of the card for strangers. */
    card: z.literal(true).exactOptional(),
    what: z.enum(["wrong", "impossible", "unclear"]),
    note: note.exactOptional(),
    kit: id.exactOptional(),
    /** The casualty in whose review it was told. */
    casualty: id.exactOptional(),
  });
export type Body = BodyOf<typeof schema>;

/** It stands among the reports with the version that the writer had before them. */
export function fold(draft: ReportsDraft, body: Body, entry: Entry): void {
  const pattern = entry.pattern === undefined ? {} : { pattern: entry.pattern };
  draft.add({ ...markOf(entry), ...pattern, ...body });
}
