import type { Entry } from "#log";
import { markOf, type KitDraft } from "../draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { HANDS } from "../kinds/writers.ts";
import type { Finding } from "../state.ts";
import { provingChecks } from "./finding-list.ts";
import { waitForFinding } from "./wait.ts";

export const subject = "kit";
export const writers = HANDS;

/** The checks that find the mode, repeated after the remedy. Closes the finding only if every one was seen right. */
export const schema = ({ findingProved }: Shapes) => findingProved;
export type Body = BodyOf<typeof schema>;

/**
 * Closed only if every check that the kit's pattern names for it was repeated and seen right, whatever a device let
 * through; a later proof that fails opens it again. Where the pattern is not to be had, what was repeated must do: the
 * kit is grounded for its want anyway.
 */
export function fold(draft: KitDraft, body: Body, entry: Entry): void {
  const finding = draft.finding(body.finding);
  if (!finding) return waitForFinding(draft, entry);
  if (!body.checks.every((check) => check.answer === "seen")) delete finding.closed;
  else if (isWhole(draft, finding, body, entry)) finding.closed = markOf(entry);
}

function isWhole(draft: KitDraft, finding: Finding, body: Body, entry: Entry): boolean {
  const pattern = draft.patternAt(entry);
  const wanted = pattern ? provingChecks(finding, pattern) : [];
  const repeated = new Set(body.checks.map((check) => check.check));
  return body.checks.length > 0 && wanted.every((check) => repeated.has(check.id));
}
