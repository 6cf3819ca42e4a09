import { addDays, dayWritten } from "#base";
import type { Entry } from "#log";
import { markOf, type KitDraft } from "../draft.ts";
import type { WorkBodies, WorkKind } from "../kinds/work-kinds.ts";
import type { WorkSaid } from "../state.ts";

/* What people say of work that is due. Where two say it without sight of each other, both takers stand, and of two days the earlier. */

/** Kinds that say who does a piece of work, when, and how long it may wait. */
export const workFolds = {
  "work-taken": take,
  "work-dated": giveDay,
  "work-put-off": putOff,
  "openings-planned": plan,
};

/** A sealing does an opening that was planned for at most so many days later [d]. */
const AHEAD = 13;

const ENDED_BY: Readonly<Record<string, readonly WorkKind[]>> = {
  sealed: ["opening", "muster"],
  mustered: ["muster"],
  returned: ["return"],
  settled: ["settle"],
  "kit-retired": ["opening", "muster", "return", "settle"],
};

/** Forgets what was said of work that this entry does. */
export function endWork(draft: KitDraft, entry: Entry): void {
  const { kit } = draft;
  if (entry.kind === "sealed") endPlanned(draft, addDays(dayWritten(entry.at), AHEAD));
  const ended = ENDED_BY[entry.kind] ?? [];
  if (kit.work === undefined || ended.length === 0) return;
  const left = Object.entries(kit.work).filter(([work]) => !ended.includes(work as WorkKind));
  if (left.length === 0) delete kit.work;
  else kit.work = Object.fromEntries(left);
}

function endPlanned({ kit }: KitDraft, upTo: string): void {
  if (kit.planned === undefined) return;
  const openings = kit.planned.openings.filter(({ week }) => week > upTo);
  if (openings.length === 0) delete kit.planned;
  else kit.planned = { ...kit.planned, openings };
}

function take(draft: KitDraft, { work, person }: WorkBodies["work-taken"], entry: Entry): void {
  const said = draft.kit.work?.[work];
  const others = (said?.takers ?? []).filter((one) => draft.isBlindTo(one, entry) && one.person !== person);
  const takers = person === undefined ? others : [...others, { ...markOf(entry), person }];
  say(draft, work, { ...said, takers });
}

function giveDay(draft: KitDraft, { work, day }: WorkBodies["work-dated"], entry: Entry): void {
  const { day: before, ...said } = saidOf(draft, work);
  const stands = before && draft.isBlindTo(before, entry) && (day === undefined || before.day < day);
  const given = stands ? before : day === undefined ? undefined : { ...markOf(entry), day };
  say(draft, work, { ...said, ...(given && { day: given }) });
}

function putOff(draft: KitDraft, { work, until, reason }: WorkBodies["work-put-off"], entry: Entry): void {
  const { putOff: before, ...said } = saidOf(draft, work);
  const stands = before && draft.isBlindTo(before, entry) && before.until < until;
  say(draft, work, { ...said, putOff: stands ? before : { ...markOf(entry), until, reason } });
}

function plan(draft: KitDraft, { openings }: WorkBodies["openings-planned"], entry: Entry): void {
  if (openings.length === 0) delete draft.kit.planned;
  else draft.kit.planned = { ...markOf(entry), openings };
}

function saidOf({ kit }: KitDraft, work: WorkKind): WorkSaid {
  return kit.work?.[work] ?? { takers: [] };
}

function say(draft: KitDraft, work: WorkKind, said: WorkSaid): void {
  draft.kit.work = { ...draft.kit.work, [work]: said };
}
