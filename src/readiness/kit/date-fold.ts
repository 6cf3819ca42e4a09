import type { Entry } from "#log";
import { markOf, type KitDraft } from "../draft.ts";
import type { DateRead } from "../kinds/schema-parts.ts";
import type { DatesRead } from "../state.ts";

/** Keeps a date that was read, beside others read off the same item; a later look that finds none leaves those standing. */
export function keepDates(draft: KitDraft, { item, of, date }: DateRead, entry: Entry): void {
  const { cannot: _cannot, told: _told, ...before } = draft.kit.dates?.[item] ?? {};
  const found = date === undefined ? { cannot: true as const } : { [of]: date };
  put(draft, item, { ...before, ...found, mark: markOf(entry) });
}

/** Keeps a date that a sheet tells: it counts until somebody reads the thing itself. */
export function tellDate(draft: KitDraft, { item, of, date }: DateRead, entry: Entry): void {
  if (date === undefined) return;
  put(draft, item, { ...draft.kit.dates?.[item], [of]: date, told: true, mark: markOf(entry) });
}

/** A new one was fitted: what was read off the old one is past. */
export function forgetDates(draft: KitDraft, item: string): void {
  if (!draft.kit.dates?.[item]) return;
  const { [item]: _past, ...others } = draft.kit.dates;
  draft.kit.dates = others;
}

function put(draft: KitDraft, item: string, dates: DatesRead): void {
  const all = draft.part((draft.kit.dates ?? {}) as Record<string, DatesRead>);
  all[item] = dates;
  draft.kit.dates = all;
}
