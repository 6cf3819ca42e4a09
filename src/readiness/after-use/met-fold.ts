import type { Met } from "#kit";
import type { Entry } from "#log";
import { markOf, type KitDraft, type Mutable } from "../draft.ts";
import type { KitBodies } from "../kinds/kinds.ts";
import type { KitState, MetUse, Turnaround } from "../state.ts";

/* What a kit met in use, from its return until it is sealed again. */

/** What a kit met in these uses, each once. */
export function metIn(uses: KitState["met"]): readonly Met[] {
  return [...new Set((uses ?? []).flatMap(({ what }) => what))];
}

/** A kit came back: what it met is remembered, and known to a turnaround that is open already. */
export function meet(draft: KitDraft, { exposure, stopped }: KitBodies["returned"], entry: Entry): void {
  if (exposure.length === 0) return;
  const isBefore = stopped !== undefined && Date.parse(stopped) <= Date.parse(entry.at);
  const use: MetUse = { ...markOf(entry), what: exposure, ...(isBefore && { stopped }) };
  const before = new Set(metIn(draft.kit.met));
  const met = draft.list(draft.kit.met);
  met.push(use);
  draft.kit.met = met;
  const isNews = exposure.some((what) => !before.has(what));
  for (const id of draft.takeUntold(isNews)) tellMet(draft, draft.turnaround(id, entry));
}

/** A turnaround washes out whatever the kit met since it was last sealed. */
export function tellMet(draft: KitDraft, turnaround: Mutable<Turnaround>): void {
  const met = metIn(draft.kit.met);
  if (met.length > 0) turnaround.met = met;
}

/** Fresh water went through it: the clocks of all it met so far have ended. */
export function flush(draft: KitDraft, _body: KitBodies["flushed"], entry: Entry): void {
  const { met } = draft.kit;
  if (met) draft.kit.met = met.map((use) => (use.flushed ? use : { ...use, flushed: markOf(entry) }));
}

/** Sealed: what it met is washed out and past. */
export function forgetMet(draft: KitDraft): void {
  delete draft.kit.met;
}
