import type { Entry } from "#log";
import { markOf } from "../draft.ts";
import type { ReportsDraft } from "../drafts/reports-draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { KEEPING_ROLES } from "../kinds/writers.ts";

export const subject = "pattern";
export const writers = KEEPING_ROLES;

/** What the pattern's owner says to a report. */
export const schema = ({ z, id, note }: Shapes) => z.strictObject({ report: id, answer: note });
export type Body = BodyOf<typeof schema>;

/** The last answer stands. */
export function fold(draft: ReportsDraft, { report, answer }: Body, entry: Entry): void {
  draft.answer(report, { ...markOf(entry), text: answer });
}
