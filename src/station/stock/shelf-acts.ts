import { STATION_PLACE } from "#log";
import { lookUp, type ItemRobbed, type KitState, type Shelf } from "#readiness";
import { aboutKit, allow, unless, type Act, type ActContext } from "../acts/draft.ts";
import { judgeTakenOut } from "../acts/finding-effect.ts";
import { judgeNames } from "../acts/finding-acts.ts";
import { needHere, needOnCharge, needPlace } from "../acts/needs.ts";
import { patternOf } from "../acts/turnaround-acts.ts";
import { because } from "../judging/faults.ts";

/** Sets the shelves of a place, in the order in which a muster goes round. */
export function setShelves(doing: ActContext, place: string, shelves: readonly Shelf[]): Act<"shelves-set"> {
  const draft = { subject: `place:${place}`, kind: "shelves-set" as const, body: { shelves }, place: STATION_PLACE };
  const here = new Set(doing.kits.filter((kit) => kit.place === place).map(({ id }) => id));
  const strays = shelves.flatMap(({ kits }) => kits).filter((id) => !here.has(id));
  return allow(doing, draft, [
    needPlace(doing, place, "subject"),
    unless(
      strays.length === 0,
      because("SN-200", "body.shelves", strays.join(", "), "kits of this place", "Leave out kits of other places."),
    ),
  ]);
}

/**
 * Takes an item out of one kit for another. The finding on the first is raised with this line; what is fitted in the other
 * is a line of its own there.
 */
export function robItem(doing: ActContext, kit: KitState, body: ItemRobbed): Act<"item-robbed"> {
  const other = doing.kits.find(({ id, retired }) => id === body.to && retired === undefined);
  const pattern = patternOf(doing, kit);
  const most = pattern && lookUp(pattern).items.get(body.item)?.quantity;
  return allow(doing, aboutKit(kit, "item-robbed", body), [
    needOnCharge(kit),
    needHere(kit),
    unless(
      other !== undefined && other.id !== kit.id,
      because("SN-201", "body.to", body.to, "another kit that was not retired", "Choose the kit that it is taken for."),
    ),
    ...judgeNames(doing, kit, body),
    ...judgeTakenOut(body, pattern ? [pattern] : []),
    unless(
      most === undefined || body.quantity <= most,
      because("SN-202", "body.quantity", body.quantity, `at most ${most ?? 0}`, "The kit holds no more of them."),
    ),
    unless(
      !kit.findings.some(({ id }) => id === body.finding),
      because("SN-131", "body.finding", body.finding, "a new id", "This finding is raised already."),
    ),
  ]);
}
