import type { Entry } from "#log";
import { putItem } from "./custody-fold.ts";
import { markOf, type KitDraft, type Mutable } from "./draft.ts";
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

function remedy(draft: KitDraft, body: Remedy, entry: Entry): void {
  const finding = findingOf(draft, body.finding);
  if (!finding) return wait(draft, entry);
  finding.remedies = [...finding.remedies, { ...markOf(entry), remedy: body }];
  if (body.how === "lived-with") {
    finding.livedWith = { ...markOf(entry), name: body.name, limit: body.limit, until: body.until };
  }
  if (body.how === "replaced" && body.fitted) putItem(draft, body.fitted, entry);
}

/** Closed only if every check was seen right; a later proof that fails opens it again. */
function prove(draft: KitDraft, body: KitBodies["finding-proved"], entry: Entry): void {
  const finding = findingOf(draft, body.finding);
  if (!finding) return wait(draft, entry);
  const allRight = body.checks.length > 0 && body.checks.every((check) => check.answer === "seen");
  if (allRight) finding.closed = markOf(entry);
  else delete finding.closed;
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
