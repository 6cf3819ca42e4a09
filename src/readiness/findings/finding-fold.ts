import type { Entry } from "#log";
import { putItem } from "../kit/custody-fold.ts";
import { markOf, type KitDraft } from "../draft.ts";
import { closeFinding } from "../drill/drill-findings.ts";
import { isHiding } from "../drill/drill-now.ts";
import type { Drill } from "../drill/drill-state.ts";
import { mayBeLivedWith, provingChecks } from "./finding-list.ts";
import type { KitBodies, Remedy } from "../kinds/kinds.ts";
import type { Finding } from "../state.ts";
import { noteDrawn } from "../stock/note-drawn.ts";

/** Kinds that say what was found wrong and what was done about it. */
export const findingFolds = {
  "finding-raised": raise,
  "remedy-made": remedy,
  "finding-proved": prove,
};

/** Opens a finding, and takes up what was done about it by lines that sorted before. */
export function raise(draft: KitDraft, body: KitBodies["finding-raised"], entry: Entry): void {
  const { finding: id, ...said } = body;
  const drill = drillOf(draft, body.turnaround);
  const finding = { ...said, id, raised: markOf(entry), remedies: [], ...(drill && { drill: drill.id }) };
  if (!draft.addFinding(finding)) return;
  takeUpWaiting(draft, id);
  if (drill) closeFinding(draft, drill, id, undefined);
}

/** The drill that a finding raised now belongs to: as long as nobody was told what was planted. */
function drillOf(draft: KitDraft, turnaround: string | undefined): Drill | undefined {
  const own = turnaround === undefined ? undefined : draft.knownTurnaround(turnaround)?.drill;
  const id = own ?? draft.drillOn();
  const drill = id === undefined ? undefined : draft.drill(id);
  return drill && isHiding(drill) ? drill : undefined;
}

/** A remedy that lives with a finding which grounds is kept as said, and changes nothing. */
function remedy(draft: KitDraft, body: Remedy, entry: Entry): void {
  const finding = draft.finding(body.finding);
  if (!finding) return wait(draft, entry);
  const remedies = draft.list(finding.remedies);
  remedies.push({ ...markOf(entry), remedy: body });
  finding.remedies = remedies;
  if (body.how === "lived-with" && mayBeLivedWith(finding)) {
    finding.livedWith = { ...markOf(entry), name: body.name, limit: body.limit, until: body.until };
  }
  if (body.how === "replaced") replace(draft, finding, body, entry);
}

function replace(draft: KitDraft, finding: Finding, body: Remedy & { readonly how: "replaced" }, entry: Entry): void {
  const { drawn, fitted, quantity: count } = body;
  if (fitted) putItem(draft, drawn === undefined ? fitted : { ...fitted, drawn }, entry);
  noteDrawn(draft, { item: finding.item, count, finding: finding.id, ...(drawn && { drawn }) }, entry);
}

/**
 * Closed only if every check that the kit's pattern names for it was repeated and seen right, whatever a device let
 * through; a later proof that fails opens it again. Where the pattern is not to be had, what was repeated must do: the
 * kit is grounded for its want anyway.
 */
function prove(draft: KitDraft, body: KitBodies["finding-proved"], entry: Entry): void {
  const finding = draft.finding(body.finding);
  if (!finding) return wait(draft, entry);
  if (!body.checks.every((check) => check.answer === "seen")) delete finding.closed;
  else if (isWhole(draft, finding, body, entry)) finding.closed = markOf(entry);
}

function isWhole(draft: KitDraft, finding: Finding, body: KitBodies["finding-proved"], entry: Entry): boolean {
  const pattern = draft.patternAt(entry);
  const wanted = pattern ? provingChecks(finding, pattern) : [];
  const repeated = new Set(body.checks.map((check) => check.check));
  return body.checks.length > 0 && wanted.every((check) => repeated.has(check.id));
}

function wait(draft: KitDraft, entry: Entry): void {
  draft.kit.waiting ??= [];
  draft.waiting.add(entry);
}

/** Applies remedies and proofs that sorted before their finding, in their own order. */
function takeUpWaiting(draft: KitDraft, finding: string): void {
  const due = draft.waiting.take(finding);
  if (draft.waiting.size === 0) delete draft.kit.waiting;
  for (const entry of due) {
    if (entry.kind === "remedy-made") remedy(draft, entry.body as Remedy, entry);
    else prove(draft, entry.body as KitBodies["finding-proved"], entry);
  }
}
