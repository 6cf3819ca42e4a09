import type { Met } from "#kit";
import type { Entry } from "#log";
import { markOf, type KitDraft, type Mutable } from "../draft.ts";
import type { KitState, MetUse, Turnaround } from "../state.ts";

/* What a kit met in use, from its return until it is sealed again. */

interface Return {
  readonly exposure: readonly Met[];
  /** RFC 3339, when it last pumped, where somebody knows. */
  readonly stopped?: string;
}

/** What a kit met in these uses, each once. */
export function metIn(uses: KitState["met"]): readonly Met[] {
  return [...new Set((uses ?? []).flatMap(({ what }) => what))];
}

/** A kit came back: what it met is remembered, and known to a turnaround that is open already. */
export function meet(draft: KitDraft, { exposure, stopped }: Return, entry: Entry): void {
  if (exposure.length === 0) return;
  const isBefore = stopped !== undefined && Date.parse(stopped) <= Date.parse(entry.at);
  const use: MetUse = { ...markOf(entry), what: exposure, ...(isBefore && { stopped }) };
  const met = draft.list(draft.kit.met);
  met.push(use);
  draft.kit.met = met;
  const isNews = exposure.some((what) => !draft.met.has(what));
  for (const what of exposure) draft.met.add(what);
  for (const id of draft.takeUntold(isNews)) tellMet(draft, draft.turnaround(id, entry));
}

/** A turnaround washes out whatever the kit met since it was last sealed. */
export function tellMet(draft: KitDraft, turnaround: Mutable<Turnaround>): void {
  if (draft.met.size > 0) turnaround.met = [...draft.met];
}

/** Sealed: what it met is washed out and past. */
export function forgetMet(draft: KitDraft): void {
  delete draft.kit.met;
  draft.met.clear();
}
