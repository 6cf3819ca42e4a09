import type { Entry } from "#log";
import { putItem } from "./custody-fold.ts";
import { markOf, type KitDraft, type Mutable } from "./draft.ts";
import { mayBeLivedWith, provingChecks } from "./finding-list.ts";
import type { KitBodies, Remedy } from "./kinds.ts";
import type { Finding } from "./state.ts";

/** Kinds that say what was found wrong and what was done about it. */
export const findingFolds = {
  "finding-raised": raise,
  "remedy-made": remedy,
  "finding-proved": prove,
};

function raise(draft: KitDraft, body: KitBodies["finding-raised"], entry: Entry): void {
  const findings = draft.list(draft.kit.findings);
  const { finding: id, ...said } = body;
  if (findings.some((finding) => finding.id === id)) return;
  findings.push({ ...said, id, raised: markOf(entry), remedies: [] });
  draft.kit.findings = findings;
  takeUpWaiting(draft, id);
}

/** A remedy that lives with a finding which grounds is kept as said, and changes nothing. */
function remedy(draft: KitDraft, body: Remedy, entry: Entry): void {
  const finding = findingOf(draft, body.finding);
  if (!finding) return wait(draft, entry);
  finding.remedies = [...finding.remedies, { ...markOf(entry), remedy: body }];
  if (body.how === "lived-with" && mayBeLivedWith(finding)) {
    finding.livedWith = { ...markOf(entry), name: body.name, limit: body.limit, until: body.until };
  }
  if (body.how === "replaced" && body.fitted) putItem(draft, body.fitted, entry);
}

/**
 * Closed only if every check that the kit's pattern names for it was repeated and seen right, whatever a device let
 * through; a later proof that fails opens it again. Where the pattern is not to be had, what was repeated must do: the
 * kit is grounded for its want anyway.
 */
function prove(draft: KitDraft, body: KitBodies["finding-proved"], entry: Entry): void {
  const finding = findingOf(draft, body.finding);
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

function findingOf(draft: KitDraft, id: string): Mutable<Finding> | undefined {
  const at = draft.kit.findings.findIndex((finding) => finding.id === id);
  if (at < 0) return undefined;
  const findings = draft.list(draft.kit.findings);
  draft.kit.findings = findings;
  return (findings[at] = draft.part(findings[at]!));
}

function wait(draft: KitDraft, entry: Entry): void {
  draft.kit.waiting = [...(draft.kit.waiting ?? []), entry.id];
}

/** Applies remedies and proofs that sorted before their finding, in their own order. */
function takeUpWaiting(draft: KitDraft, finding: string): void {
  const waiting = (draft.kit.waiting ?? []).flatMap((id) => draft.history.entry(id) ?? []);
  const due = waiting.filter((entry) => (entry.body as { finding: string }).finding === finding);
  if (due.length === 0) return;
  const rest = waiting.filter((entry) => !due.includes(entry)).map((entry) => entry.id);
  if (rest.length > 0) draft.kit.waiting = rest;
  else delete draft.kit.waiting;
  for (const entry of due) {
    if (entry.kind === "remedy-made") remedy(draft, entry.body as Remedy, entry);
    else prove(draft, entry.body as KitBodies["finding-proved"], entry);
  }
}
