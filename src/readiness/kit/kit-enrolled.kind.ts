import type { Entry } from "#log";
import { markOf, type KitDraft } from "../draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { KEEPING_ROLES } from "../kinds/writers.ts";
import { putItem } from "./contents-fold.ts";
import { keepDates, tellDate } from "./date-fold.ts";
import { putSeal } from "./seal-fold.ts";

export const subject = "kit";
export const writers = KEEPING_ROLES;

/** Kit taken on charge at the entry's place. */
export const schema = ({ z, dateRead, fitted, fromSheet, line, sealNumber }: Shapes) =>
  z.strictObject({
    name: line(80),
    serial: line(80),
    seal: sealNumber.exactOptional(),
    items: z.array(fitted).max(200),
    /** Dates that were read off what is in it when it was taken on charge. */
    read: z.array(dateRead).max(200).exactOptional(),
    /** Told by a sheet: nobody saw its dates and its seal, so each date is asked for at the first turnaround. */
    sheet: fromSheet.exactOptional(),
  });
export type Body = BodyOf<typeof schema>;

/** What sorted before it stands; a second enrolment differs from the first. */
export function fold(draft: KitDraft, body: Body, entry: Entry): void {
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
function tellDates(draft: KitDraft, { read = [], sheet }: Body, entry: Entry): void {
  const known = new Set(Object.keys(draft.kit.dates ?? {}));
  if (sheet) draft.kit.sheet = sheet;
  for (const told of read) if (!known.has(told.item)) tellDate(draft, told, entry);
}
