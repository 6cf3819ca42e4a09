import { STATION_PLACE } from "#log";
import { openOrders, stockOf, type Bodies, type PartSetting, type PartBodies } from "#readiness";
import type { Fault } from "#base";
import { allow, unless, type Act, type ActContext } from "../acts/draft.ts";
import { needPlace } from "../acts/needs.ts";
import { because, noSuchItem } from "../judging/faults.ts";
import { needPart, needShelf, recallOf } from "./needs-of-stock.ts";

/** Puts a part on the station's list, or writes it anew: its number and name are its own, its items the patterns'. */
export function setPart(doing: ActContext, part: string, body: PartSetting): Act<"part-set"> {
  return about(doing, part, "part-set", body, [
    needOwn(doing, part, "number", body.number),
    needOwn(doing, part, "name", body.name),
    ...body.keep.map(({ place }, index) => needPlace(doing, place, `body.keep.${index}.place`)),
    ...body.items.map((one, index) => needItem(doing, one, `body.items.${index}.item`)),
  ]);
}

/** Takes a part off the list, once none of it lies on a shelf. */
export function retirePart(doing: ActContext, part: string, reason: string): Act<"part-retired"> {
  const own = doing.parts.filter(({ id }) => id === part);
  const left = [...(stockOf(own, doing.kits).get(part)?.values() ?? [])].filter(({ count }) => count > 0);
  const where = left.map(({ place, count }) => `${count} at ${nameOfPlace(doing, place)}`).join(", ");
  const remedy = "Use, move or scrap what is left, or count the shelf as it is.";
  return about(doing, part, "part-retired", { reason }, [
    needPart(doing, part),
    unless(left.length === 0, because("SN-195", "subject", where, "a part of which no shelf holds any", remedy)),
  ]);
}

/** Puts on a shelf what came, against an order where there is one. */
export function receiveStock(
  doing: ActContext,
  part: string,
  body: PartBodies["stock-received"],
): Act<"stock-received"> {
  const known = doing.parts.find(({ id }) => id === part);
  const isWaited = body.order === undefined || known?.orders.some(({ id }) => id === body.order) === true;
  const dated = known?.printed !== true || body.printed !== undefined;
  return about(doing, part, "stock-received", body, [
    ...needShelf(doing, part, body),
    unless(isWaited, because("SN-196", "body.order", body.order, "an order of this part", "Choose an order, or none.")),
    unless(
      dated,
      because("SN-197", "body.printed", undefined, "the date printed on it", `Read it off the ${known?.name ?? part}.`),
    ),
  ]);
}

/** Takes off a shelf what is used otherwise than in a kit. More than there is may be taken: the shelf then says so. */
export function takeStock(doing: ActContext, part: string, body: PartBodies["stock-used"]): Act<"stock-used"> {
  return about(doing, part, "stock-used", body, needShelf(doing, part, body));
}

/** Writes down what is on a shelf, all of it: from here on that is the truth, whatever the lines before it came to. */
export function countStock(doing: ActContext, part: string, body: PartBodies["stock-counted"]): Act<"stock-counted"> {
  return about(doing, part, "stock-counted", body, needShelf(doing, part, { place: body.place }));
}

/** Throws away what may not be used. */
export function scrapStock(doing: ActContext, part: string, body: PartBodies["stock-scrapped"]): Act<"stock-scrapped"> {
  return about(doing, part, "stock-scrapped", body, needShelf(doing, part, body));
}

/** Takes it from the shelf of one place to that of another. */
export function moveStock(doing: ActContext, part: string, body: PartBodies["stock-moved"]): Act<"stock-moved"> {
  const { from, to, day } = body;
  return about(doing, part, "stock-moved", body, [
    ...needShelf(doing, part, { place: from, day }, "body.from"),
    needPlace(doing, to, "body.to"),
  ]);
}

/** Notes that parts were ordered for a place. */
export function orderStock(doing: ActContext, part: string, body: PartBodies["stock-ordered"]): Act<"stock-ordered"> {
  const isAhead = body.expected === undefined || body.expected >= body.day;
  const remedy = "Check both days.";
  return about(doing, part, "stock-ordered", body, [
    needPart(doing, part),
    needPlace(doing, body.place, "body.place"),
    unless(isAhead, because("SN-198", "body.expected", body.expected, `a day from ${body.day} on`, remedy)),
  ]);
}

/** Waits no longer for what has not come of an order. */
export function closeOrder(doing: ActContext, part: string, order: string, reason: string): Act<"order-closed"> {
  const isOpen = openOrders(doing.parts).some((one) => one.part.id === part && one.order.id === order);
  return about(doing, part, "order-closed", { order, reason }, [
    unless(isOpen, because("SN-196", "body.order", order, "an order that is waited for", "It came, or was closed.")),
  ]);
}

/** Says of a lot that it may not be used. The finding on each kit that holds it is raised beside this line. */
export function recallLot(doing: ActContext, part: string, body: Bodies["lot-recalled"]): Act<"lot-recalled"> {
  const known = doing.parts.find(({ id }) => id === part);
  const before = known && recallOf(known, body.lot);
  return about(doing, part, "lot-recalled", body, [
    needPart(doing, part),
    before && because("SN-199", "body.lot", body.lot, "a lot not recalled yet", `It was recalled: ${before.reason}`),
  ]);
}

function about<Kind extends keyof PartBodies>(
  doing: ActContext,
  part: string,
  kind: Kind,
  body: Bodies[Kind],
  against: readonly (Fault | undefined)[],
): Act<Kind> {
  return allow(doing, { subject: `part:${part}`, kind, body, place: STATION_PLACE }, against);
}

function plain(text: string): string {
  return text.trim().toLocaleLowerCase("en");
}

function needOwn(doing: ActContext, part: string, field: "number" | "name", given: string): Fault | undefined {
  const twin = doing.parts.find((one) => one.id !== part && !one.retired && plain(one[field]) === plain(given));
  return (
    twin && because("SN-190", `body.${field}`, given, `a ${field} no other part has`, `It is that of ${twin.name}.`)
  );
}

function needItem(
  { patterns }: ActContext,
  { pattern, item }: PartSetting["items"][number],
  field: string,
): Fault | undefined {
  const versions = [...patterns.values()].filter(({ id }) => id === pattern);
  return versions.some(({ items }) => items.some(({ id }) => id === item)) ? undefined : noSuchItem(field, item);
}

function nameOfPlace({ places }: ActContext, id: string): string {
  return places.find((place) => place.id === id)?.name ?? id;
}
