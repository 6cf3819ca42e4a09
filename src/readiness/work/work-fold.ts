import { addDays, dayWritten } from "#base";
import type { Entry } from "#log";
import type { KitDraft } from "../draft.ts";
import type { WorkKind } from "../kinds/work-parts.ts";

/** A sealing does an opening that was planned for at most so many days later [d]. */
const AHEAD = 13;

const ENDED_BY: Readonly<Record<string, readonly WorkKind[]>> = {
  sealed: ["opening", "muster"],
  mustered: ["muster"],
  returned: ["return"],
  "lent-settled": ["return"],
  settled: ["settle"],
  "kit-retired": ["opening", "muster", "return", "settle"],
};

/** Forgets what was said of work that this entry does. */
export function endWork(draft: KitDraft, entry: Entry): void {
  const { kit } = draft;
  if (entry.kind === "sealed") endPlanned(draft, addDays(dayWritten(entry.at), AHEAD));
  const ended = isPartOnly(draft, entry) ? [] : (ENDED_BY[entry.kind] ?? []);
  if (kit.work === undefined || ended.length === 0) return;
  const left = Object.entries(kit.work).filter(([work]) => !ended.includes(work as WorkKind));
  if (left.length === 0) delete kit.work;
  else kit.work = Object.fromEntries(left);
}

/** More of what was lent is still out: whoever fetches it goes on. */
function isPartOnly({ kit }: KitDraft, { kind }: Entry): boolean {
  return kind === "lent-settled" && kit.lentOut !== undefined;
}

function endPlanned({ kit }: KitDraft, upTo: string): void {
  if (kit.planned === undefined) return;
  const openings = kit.planned.openings.filter(({ week }) => week > upTo);
  if (openings.length === 0) delete kit.planned;
  else kit.planned = { ...kit.planned, openings };
}
