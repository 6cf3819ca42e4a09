import type { Fault } from "#base";
import { fuelItemOf, lookUp, type Bodies, type KitState } from "#readiness";
import { aboutKit, allow, unless, type Act, type ActContext } from "./draft.ts";
import { because, noSuchItem } from "../judging/faults.ts";
import {
  needClosed,
  needHere,
  needNewKitName,
  needNewSeal,
  needNoDrill,
  needNotAhead,
  needNotPast,
  needOnCharge,
  needPattern,
  needPlace,
  needWithinMemory,
} from "./needs.ts";

/** What taking a kit on charge needs to be told. */
export interface Enrolling {
  /** New id of the kit. */
  readonly kit: string;
  readonly place: string;
  /** "id@version". */
  readonly pattern: string;
  readonly body: Bodies["kit-enrolled"];
}

/** Takes a kit on charge at a place: a pattern the station has, a name, a serial and a seal that no other kit has. */
export function enrolKit(doing: ActContext, { kit, place, pattern, body }: Enrolling): Act<"kit-enrolled"> {
  const draft = { subject: `kit:${kit}`, kind: "kit-enrolled" as const, body, place, pattern };
  const twin = doing.kits.find((other) => !other.retired && other.serial === body.serial);
  return allow(doing, draft, [
    needPlace(doing, place, "place"),
    needPattern(doing, pattern),
    needNewKitName(doing, body.name),
    twin && because("SN-111", "body.serial", body.serial, "a serial no other kit has", `It is ${twin.name}'s.`),
    body.seal === undefined ? undefined : needNewSeal(doing, body.seal),
    ...needItems(doing, pattern, body),
  ]);
}

/** Tells of a turnaround before this log. It stands in the history and proves nothing. */
export function tellTurnaround(
  doing: ActContext,
  kit: KitState,
  body: Bodies["turnaround-told"],
): Act<"turnaround-told"> {
  return allow(doing, aboutKit(kit, "turnaround-told", body), [
    needOnCharge(kit),
    needNotAhead(doing, body.day, "body.day"),
    needWithinMemory(doing, body.day, "body.day"),
  ]);
}

/** Gives a kit another name, one that no other kit has. */
export function renameKit(doing: ActContext, kit: KitState, name: string): Act<"kit-renamed"> {
  return allow(doing, aboutKit(kit, "kit-renamed", { name }), [needOnCharge(kit), needNewKitName(doing, name, kit.id)]);
}

/** Records that a kit was rebuilt to another version of its pattern. */
export function rebuildKit(doing: ActContext, kit: KitState, pattern: string, reason: string): Act<"kit-rebuilt"> {
  const draft = { ...aboutKit(kit, "kit-rebuilt", { reason }), pattern };
  return allow(doing, draft, [needOnCharge(kit), needPattern(doing, pattern)]);
}

/** Moves a kit to another place of the station. */
export function moveKit(doing: ActContext, kit: KitState, to: string): Act<"kit-moved"> {
  const elsewhere = unless(
    kit.place !== to,
    because("SN-112", "body.to", to, "another place", "It is at this place already."),
  );
  return allow(doing, aboutKit(kit, "kit-moved", { to }), [
    needOnCharge(kit),
    needPlace(doing, to, "body.to"),
    elsewhere,
    needHere(kit),
  ]);
}

/** Takes a kit off charge for good. */
export function retireKit(doing: ActContext, kit: KitState, reason: string): Act<"kit-retired"> {
  return allow(doing, aboutKit(kit, "kit-retired", { reason }), [needOnCharge(kit)]);
}

/** Hands a kit over to a vessel. A kit that is not ready may still go: lives come first, and the log says what went. */
export function handOver(doing: ActContext, kit: KitState, body: Bodies["handed-over"]): Act<"handed-over"> {
  return allow(doing, aboutKit(kit, "handed-over", body), [
    needOnCharge(kit),
    needHere(kit),
    needClosed(kit),
    needNoDrill(kit),
    body.back === undefined ? undefined : needNotPast(doing, body.back, "body.back"),
  ]);
}

/** Records that somebody saw the kit and read its seal. A seal that differs is recorded as read, never refused. */
export function musterKit(doing: ActContext, kit: KitState, body: Bodies["mustered"]): Act<"mustered"> {
  return allow(doing, aboutKit(kit, "mustered", body), [needOnCharge(kit), needHere(kit), needClosed(kit)]);
}

/** Every item named must be the pattern's, and every date that its life needs must be given and not lie ahead. */
function needItems(doing: ActContext, pattern: string, body: Bodies["kit-enrolled"]): readonly (Fault | undefined)[] {
  const known = doing.patterns.get(pattern);
  if (!known) return [];
  const lookup = lookUp(known);
  const fuel = fuelItemOf(known);
  const read = (body.read ?? []).flatMap(({ item, of, date }, index) => [
    lookup.items.has(item) ? undefined : noSuchItem(`body.read.${index}.item`, item),
    of === "printed" || date === undefined ? undefined : needNotAhead(doing, date, `body.read.${index}.date`),
  ]);
  const fitted = body.items.flatMap((fitted, index) => {
    const field = `body.items.${index}`;
    const item = lookup.items.get(fitted.item);
    if (!item) return [noSuchItem(`${field}.item`, fitted.item)];
    const needsPrinted = item.life.kind === "printed" && item !== fuel && fitted.printed === undefined;
    return [
      needsPrinted
        ? because("SN-119", `${field}.printed`, undefined, "the date printed on it", `Read it off the ${item.name}.`)
        : undefined,
      needNotAhead(doing, fitted.fitted, `${field}.fitted`),
    ];
  });
  return [...read, ...fitted];
}
