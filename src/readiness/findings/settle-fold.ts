import type { Entry } from "#log";
import { putSeal } from "../kit/seal-fold.ts";
import { markOf, type KitDraft } from "../draft.ts";
import type { Difference, KitState, Turnaround } from "../state.ts";

/** Folds another line of the same kit. */
export type Apply = (draft: KitDraft, entry: Entry) => void;

/** What a line says that closes a turnaround. */
interface Closing {
  readonly turnaround: string;
  readonly seal?: string;
  readonly reason?: string;
}

/** Lets the entry that stands say its piece last. */
export function letStand(draft: KitDraft, difference: Difference, stands: Entry, apply: Apply): void {
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
  const body = stands.body as Closing;
  const turnaround = draft.knownTurnaround(body.turnaround);
  if (!turnaround) return;
  const how = stands.kind === "sealed" ? ("sealed" as const) : ("grounded" as const);
  const reason = body.reason === undefined ? {} : { reason: body.reason };
  turnaround.closed = { ...markOf(stands), how, ...reason, ...(body.seal === undefined ? {} : { seal: body.seal }) };
  if (body.seal !== undefined) putSeal(draft, body.seal, stands);
}

function letEnrolmentStand(draft: KitDraft, stands: Entry): void {
  const { name, serial } = stands.body as Pick<KitState, "name" | "serial">;
  Object.assign(draft.kit, { name, serial, enrolled: markOf(stands) });
}
