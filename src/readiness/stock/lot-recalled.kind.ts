import type { Entry } from "#log";
import { markOf } from "../draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { KEEPING_ROLES } from "../kinds/writers.ts";
import type { PartDraft } from "./part-draft.ts";

export const subject = "part";
export const writers = KEEPING_ROLES;

/** A lot that may not be used. */
export const schema = ({ z, effect, line, reason, lot }: Shapes) =>
  z
    .strictObject({ lot, reason, effect, limit: line(300).exactOptional() })
    .refine((given) => given.effect !== "limits" || given.limit !== undefined, {
      error: "the limit, as a vessel should hear it",
      path: ["limit"],
    });
export type Body = BodyOf<typeof schema>;

/** It stands beside other recalls of the part. */
export function fold(draft: PartDraft, body: Body, entry: Entry): void {
  draft.recalls.push({ ...markOf(entry), ...body });
}
