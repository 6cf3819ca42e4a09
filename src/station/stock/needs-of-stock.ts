import { compareDates, formatDate, isDate, parseDate, type Fault } from "#base";
import { isSameLot, partShelf, stockOf, type Drawn, type KitState, type StockPart } from "#readiness";
import { unless, type ActContext } from "../acts/draft.ts";
import { needNotAhead, needPlace } from "../acts/needs.ts";
import { because } from "../judging/faults.ts";

/** A part on the station's list that is not retired. */
export function needPart(doing: ActContext, part: string, field = "subject"): Fault | undefined {
  const known = doing.parts.find(({ id }) => id === part);
  if (known && known.retired === undefined) return undefined;
  const remedy = known?.retired
    ? `It was retired: ${known.retired.reason}`
    : "Choose a part, or put it on the list first.";
  return because("SN-191", field, known?.name ?? part, "a part on the station's list", remedy);
}

/** A line about a shelf: a part on the list, an open place, a day that has come and that no count has overtaken. */
export function needShelf(
  doing: ActContext,
  part: string,
  { place, day }: { readonly place: string; readonly day?: string },
  field = "body.place",
): readonly (Fault | undefined)[] {
  const ahead = day === undefined ? undefined : needNotAhead(doing, day, "body.day");
  const late = day === undefined ? undefined : needAfterCount(doing, part, place, day);
  return [needPart(doing, part), needPlace(doing, place, field), ahead, late];
}

/** What came or went before the last count was in that count: written now it would be counted twice. */
function needAfterCount(doing: ActContext, part: string, place: string, day: string): Fault | undefined {
  const own = doing.parts.filter(({ id }) => id === part);
  const { counted } = partShelf(stockOf(own, doing.kits), part, place);
  if (counted === undefined || !isDate(day) || compareDates(parseDate(day), counted.day) >= 0) return undefined;
  const when = formatDate(counted.day);
  const remedy = "The count has it already. Give the day on which it was really done, or count the shelf again.";
  return because("SN-192", "body.day", day, `a day from the last count on, ${when}`, remedy);
}

/** Where a part that is fitted comes from: a part of that item, off the shelf of an open place. */
export function needDrawn(
  doing: ActContext,
  kit: KitState,
  item: string,
  drawn: Drawn | undefined,
): readonly (Fault | undefined)[] {
  if (drawn === undefined) return [];
  const unknown = needPart(doing, drawn.part, "body.drawn.part");
  return [
    unknown,
    needPlace(doing, drawn.place, "body.drawn.place"),
    unknown ? undefined : needRecalledNot(doing, drawn),
    unknown ? undefined : needFits(doing, kit, item, drawn.part),
  ];
}

function needFits(doing: ActContext, kit: KitState, item: string, part: string): Fault | undefined {
  const pattern = kit.pattern.split("@", 1)[0];
  const known = doing.parts.find(({ id }) => id === part);
  const fits = known?.items.some((one) => one.pattern === pattern && one.item === item) === true;
  const remedy = "Choose a part that belongs to this item, or have a keeper say that it does.";
  return unless(fits, because("SN-193", "body.drawn.part", known?.name ?? part, `a part of the item ${item}`, remedy));
}

function needRecalledNot(doing: ActContext, { part, lot }: Drawn): Fault | undefined {
  const known = doing.parts.find(({ id }) => id === part);
  const recall = known && lot !== undefined ? recallOf(known, lot) : undefined;
  const remedy = `Take another: ${recall?.reason ?? ""}`;
  return recall && because("SN-194", "body.drawn.lot", lot, "a lot that is not recalled", remedy);
}

/** The recall of a lot, if there is one. */
export function recallOf({ recalls }: StockPart, lot: string): StockPart["recalls"][number] | undefined {
  return recalls.findLast((recall) => isSameLot(recall.lot, lot));
}
