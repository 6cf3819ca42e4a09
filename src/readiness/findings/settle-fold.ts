import type { Entry } from "#log";
import { putSeal } from "../kit/custody-fold.ts";
import { markOf, type KitDraft } from "../draft.ts";
import type { KitBodies } from "../kinds/kinds.ts";
import type { Difference, Turnaround } from "../state.ts";

type Apply = (draft: KitDraft, entry: Entry) => void;

/**
 * Closes the differences whose entries were all looked at, and lets the entry that stands say its piece last.
 * A difference to which a further entry has come since stays to be settled.
 */
export function settle(draft: KitDraft, body: KitBodies["settled"], apply: Apply): void {
  const settled = draft.takeSettled(body.stands, new Set(body.entries));
  const stands = draft.history.entry(body.stands);
  if (stands) for (const difference of settled) letStand(draft, difference, stands, apply);
}

function letStand(draft: KitDraft, difference: Difference, stands: Entry, apply: Apply): void {
  if (difference.what === "turnaround") return setAsideOthers(draft, difference, stands);
  if (difference.what === "custody") return letCustodyStand(draft, stands, apply);
  if (difference.what === "seal") return letSealStand(draft, stands);
  if (difference.what === "enrolled") return letEnrolmentStand(draft, stands);
  draft.quietly(() => apply(draft, stands));
}

/** The turnaround that stands goes on; the others are closed, their lines and findings kept. */
function setAsideOthers(draft: KitDraft, difference: Difference, stands: Entry): void {
  const { turnaround: id } = stands.body as { readonly turnaround: string };
  const known = new Set(difference.entries);
  const isAside = (one: Turnaround) => one.id !== id && known.has(one.opened.entry);
  for (const other of [...draft.openTurnarounds()].filter(isAside)) {
    const writable = draft.knownTurnaround(other.id);
    if (writable) draft.closeTurnaround(writable, { ...markOf(stands), how: "set-aside" });
  }
}

function letCustodyStand(draft: KitDraft, stands: Entry, apply: Apply): void {
  if (stands.kind === "handed-over") draft.quietly(() => apply(draft, stands));
  else draft.kit.custody = { kind: "here" };
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
