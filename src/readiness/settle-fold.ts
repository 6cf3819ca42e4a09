import type { Entry } from "#log";
import { putSeal } from "./custody-fold.ts";
import { markOf, type KitDraft } from "./draft.ts";
import type { KitBodies } from "./kinds.ts";
import type { Difference, Mark } from "./state.ts";

type Apply = (draft: KitDraft, entry: Entry) => void;

/**
 * Closes the differences whose entries were all looked at, and lets the entry that stands say its piece last.
 * A difference to which a further entry has come since stays to be settled.
 */
export function settle(draft: KitDraft, body: KitBodies["settled"], apply: Apply): void {
  const looked = new Set(body.entries);
  const settled = draft.kit.toSettle.filter(
    (one) => one.entries.includes(body.stands) && one.entries.every((entry) => looked.has(entry)),
  );
  if (settled.length === 0) return;
  draft.kit.toSettle = draft.kit.toSettle.filter((one) => !settled.includes(one));
  const stands = draft.history.entry(body.stands);
  if (stands) for (const difference of settled) letStand(draft, difference, stands, apply);
}

function letStand(draft: KitDraft, difference: Difference, stands: Entry, apply: Apply): void {
  if (difference.what === "turnaround") return setAsideOthers(draft, difference, stands);
  if (difference.what === "custody") return letCustodyStand(draft, stands, apply);
  if (difference.what === "seal") return letSealStand(draft, stands);
  if (difference.what === "enrolled") return letEnrolmentStand(draft, stands);
  const before = draft.kit.toSettle;
  apply(draft, stands);
  draft.kit.toSettle = before;
}

/** The turnaround that stands goes on; the others are closed, their lines and findings kept. */
function setAsideOthers(draft: KitDraft, difference: Difference, stands: Entry): void {
  const { turnaround: id } = stands.body as { readonly turnaround: string };
  const open = [draft.kit.turnaround, ...(draft.kit.otherTurnarounds ?? [])].flatMap((one) => one ?? []);
  const known = (mark: Mark) => difference.entries.includes(mark.entry);
  for (const other of open.filter((one) => one.id !== id && known(one.opened))) {
    const writable = draft.knownTurnaround(other.id);
    if (writable) draft.closeTurnaround(writable, { ...markOf(stands), how: "set-aside" });
  }
}

function letCustodyStand(draft: KitDraft, stands: Entry, apply: Apply): void {
  const before = draft.kit.toSettle;
  if (stands.kind === "handed-over") apply(draft, stands);
  else draft.kit.custody = { kind: "here" };
  draft.kit.toSettle = before;
}

function letSealStand(draft: KitDraft, stands: Entry): void {
  const body = stands.body as KitBodies["sealed"] | KitBodies["closed-grounded"];
  const turnaround = draft.knownTurnaround(body.turnaround);
  if (!turnaround) return;
  const how = stands.kind === "sealed" ? ("sealed" as const) : ("grounded" as const);
  const reason = "reason" in body ? { reason: body.reason } : {};
  turnaround.closed = { ...markOf(stands), how, ...reason, ...(body.seal === undefined ? {} : { seal: body.seal }) };
  if (body.seal !== undefined) putSeal(draft, body.seal, stands);
}

function letEnrolmentStand(draft: KitDraft, stands: Entry): void {
  const { name, serial } = stands.body as KitBodies["kit-enrolled"];
  Object.assign(draft.kit, { name, serial, enrolled: markOf(stands) });
}
