import type { Entry } from "#log";
import { markOf, type KitDraft } from "../draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { HANDS } from "../kinds/writers.ts";
import { putAllOrSome } from "./some-fitted.ts";
import type { Finding } from "../state.ts";
import { noteDrawn } from "../stock/note-drawn.ts";
import { mayBeLivedWith } from "./finding-list.ts";
import { waitForFinding } from "./wait.ts";

export const subject = "kit";
/** Living with a finding is for keepers: see `judgeEntry`. */
export const writers = HANDS;

/** What was done about a finding. */
export const schema = ({ remedy }: Shapes) => remedy;
export type Body = BodyOf<typeof schema>;

/** A remedy that lives with a finding which grounds is kept as said, and changes nothing. */
export function fold(draft: KitDraft, body: Body, entry: Entry): void {
  const finding = draft.finding(body.finding);
  if (!finding) return waitForFinding(draft, entry);
  const remedies = draft.list(finding.remedies);
  remedies.push({ ...markOf(entry), remedy: body });
  finding.remedies = remedies;
  if (body.how === "lived-with" && mayBeLivedWith(finding)) {
    finding.livedWith = { ...markOf(entry), name: body.name, limit: body.limit, until: body.until };
  }
  if (body.how === "replaced") replace(draft, finding, body, entry);
}

function replace(draft: KitDraft, finding: Finding, body: Body & { readonly how: "replaced" }, entry: Entry): void {
  const { drawn, fitted, quantity: count } = body;
  if (fitted) putAllOrSome(draft, drawn === undefined ? fitted : { ...fitted, drawn }, entry);
  noteDrawn(draft, { item: finding.item, count, finding: finding.id, ...(drawn && { drawn }) }, entry);
}
