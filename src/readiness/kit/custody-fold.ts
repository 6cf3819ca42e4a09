import type { Entry } from "#log";
import { bareMark, markOf, type KitDraft } from "../draft.ts";
import type { KitBodies } from "../kinds/kinds.ts";
import type { FittedItem, KitState } from "../state.ts";
import { noteDrawn } from "../stock/note-drawn.ts";
import { forgetDates, keepDates, tellDate } from "./date-fold.ts";
import { isSameSeal } from "./seal-number.ts";

/** Kinds that say what a kit is, where it is and who has it. */
export const changeFolds = {
  "kit-enrolled": enrol,
  "kit-renamed": (draft: KitDraft, body: KitBodies["kit-renamed"]) => {
    draft.kit.name = body.name;
  },
  "kit-rebuilt": (draft: KitDraft, _body: KitBodies["kit-rebuilt"], entry: Entry) => {
    if (entry.pattern !== undefined) draft.kit.pattern = entry.pattern;
  },
  "kit-moved": move,
  "kit-retired": (draft: KitDraft, body: KitBodies["kit-retired"], entry: Entry) => {
    draft.kit.retired = { ...markOf(entry), reason: body.reason };
  },
  "handed-over": handOver,
  mustered: muster,
  "item-fitted": fit,
};

function enrol(draft: KitDraft, body: KitBodies["kit-enrolled"], entry: Entry): void {
  const { kit } = draft;
  if (kit.serial !== "") {
    return draft.differ({ what: "enrolled", about: "This kit was enrolled twice." }, [kit.enrolled, markOf(entry)]);
  }
  Object.assign(kit, { name: body.name, serial: body.serial, place: entry.place, enrolled: markOf(entry) });
  if (entry.pattern !== undefined) kit.pattern = entry.pattern;
  for (const item of body.items) if (!kit.contents[item.item]) putItem(draft, item, entry);
  if (body.sheet) tellDates(draft, body, entry);
  else for (const read of body.read ?? []) if (!kit.dates?.[read.item]) keepDates(draft, read, entry);
  const touched = kit.turnaround !== undefined || kit.turnarounds.length > 0;
  if (body.seal !== undefined && !touched) putSeal(draft, body.seal, entry);
}

/** Dates of a sheet, several to an item where it has them; what was read off a thing before stands. */
function tellDates(draft: KitDraft, { read = [], sheet }: KitBodies["kit-enrolled"], entry: Entry): void {
  const known = new Set(Object.keys(draft.kit.dates ?? {}));
  if (sheet) draft.kit.sheet = sheet;
  for (const told of read) if (!known.has(told.item)) tellDate(draft, told, entry);
}

function move(draft: KitDraft, body: KitBodies["kit-moved"], entry: Entry): void {
  const { moved, place } = draft.kit;
  if (moved && place !== body.to && draft.isBlindTo(moved, entry)) {
    draft.differ({ what: "place", about: `Moved to ${place} and to ${body.to}.` }, [moved, markOf(entry)]);
  }
  draft.kit.place = body.to;
  draft.kit.moved = markOf(entry);
}

function handOver(draft: KitDraft, body: KitBodies["handed-over"], entry: Entry): void {
  const { kit } = draft;
  const blind = kit.turnaround?.opened ?? (kit.seal && draft.isBlindTo(kit.seal, entry) ? kit.seal : undefined);
  if (blind) {
    const about = `Handed over to ${body.to} while being worked on elsewhere.`;
    draft.differ({ what: "custody", about }, [blind, markOf(entry)]);
  }
  const sheet = body.casualty === undefined ? {} : { casualty: body.casualty };
  const expected = body.back === undefined ? {} : { back: body.back };
  kit.custody = { ...markOf(entry), kind: "away", to: body.to, ...sheet, ...expected };
  if (body.sealBroken) breakSeal(draft, entry);
}

function muster(draft: KitDraft, body: KitBodies["mustered"], entry: Entry): void {
  const { kit } = draft;
  kit.lastMuster = { ...markOf(entry), seal: body.sealSeen };
  if (!body.containerSound) {
    kit.unsound = { ...markOf(entry), ...(body.note === undefined ? {} : { note: body.note }) };
  }
  seeSeal(draft, body.sealSeen, entry);
}

function fit(draft: KitDraft, body: KitBodies["item-fitted"], entry: Entry): void {
  const before = draft.kit.contents[body.item];
  const differs = before && (before.printed !== body.printed || before.fitted !== body.fitted);
  if (before && differs && draft.isBlindTo(before.mark, entry)) {
    const about = "The same item was fitted on two devices, with different dates.";
    draft.differ({ what: "contents", about, item: body.item }, [before.mark, markOf(entry)]);
  }
  putItem(draft, body, entry);
  noteDrawn(draft, { ...body, count: body.quantity }, entry);
}

/** Records what is fitted now. */
export function putItem(draft: KitDraft, item: Omit<FittedItem, "mark">, entry: Entry): void {
  draft.kit.contents = draft.part(draft.kit.contents as Record<string, FittedItem>);
  (draft.kit.contents as Record<string, FittedItem>)[item.item] = { ...item, mark: markOf(entry) };
  forgetDates(draft, item.item);
}

/** Records a new seal; what was said against the old one is past. */
export function putSeal(draft: KitDraft, number: string, entry: Entry): void {
  fitSeal(draft, number, entry);
  delete draft.kit.sealMismatch;
  delete draft.kit.unsound;
}

/** A seal was put on, of which nothing follows for what is in the kit. */
export function fitSeal(draft: KitDraft, number: string, entry: Entry): void {
  draft.kit.seal = { ...markOf(entry), number };
  addToSeals(draft, number, "fitted", entry);
}

/** Compares a seal that was read with the one on record. */
export function seeSeal(draft: KitDraft, seen: string, entry: Entry): void {
  const { kit } = draft;
  if (seen !== "") addToSeals(draft, seen, "seen", entry);
  if (!kit.seal || isSameSeal(kit.seal.number, seen)) return;
  kit.sealMismatch = { ...markOf(entry), expected: kit.seal.number, seen };
}

/** The seal is off: the kit has none on record until the next. */
export function breakSeal(draft: KitDraft, entry: Entry): void {
  const { seal } = draft.kit;
  if (!seal) return;
  addToSeals(draft, seal.number, "broken", entry);
  delete draft.kit.seal;
}

function addToSeals(draft: KitDraft, number: string, what: "fitted" | "seen" | "broken", entry: Entry): void {
  const seals = draft.list(draft.kit.seals);
  seals.push({ ...bareMark(markOf(entry)), number, what });
  draft.kit.seals = seals;
}

/** Every seal number that was ever on this kit. */
export function sealNumbersOf(kit: KitState): readonly string[] {
  return kit.seals.filter((seal) => seal.what === "fitted").map((seal) => seal.number);
}
