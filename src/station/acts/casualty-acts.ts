import type { Fault } from "#base";
import { STATION_PLACE } from "#log";
import type { Bodies, CasualtyBodies, CasualtyState, EntryKind, WrittenLate } from "#readiness";
import { allow, unless, type Act, type ActContext, type Draft } from "./draft.ts";
import { because } from "../judging/faults.ts";
import { judgeBoat, judgeSounding, judgeTaken } from "./casualty-soundings.ts";

/* What people do about a casualty. It belongs to the whole station, so every device of it has the sheet. */

/** Begins the sheet of a casualty under a new id. */
export function openCasualty(
  doing: ActContext,
  casualty: string,
  body: Bodies["casualty-opened"],
): Act<"casualty-opened"> {
  const wrong = judgeBoat(body.boat);
  if (wrong.length > 0) return { kind: "refused", because: wrong };
  return allow(doing, about(casualty, "casualty-opened", body));
}

/** Writes down what is better known of boat, space or hole. */
export function changeCasualty(
  doing: ActContext,
  casualty: CasualtyState,
  body: Bodies["casualty-changed"],
): Act<"casualty-changed"> {
  const wrong = judgeBoat(body.boat, casualty.soundings);
  if (wrong.length > 0) return { kind: "refused", because: wrong };
  const some = Object.keys(body).length > 0;
  return onOpen(doing, casualty, "casualty-changed", body, [
    unless(some, because("SN-150", "body", body, "name, boat, space or hole", "Say what is better known.")),
  ]);
}

/** Writes down a level: read now, or at `body.taken`. */
export function takeSounding(
  doing: ActContext,
  casualty: CasualtyState,
  body: Bodies["sounding-taken"],
): Act<"sounding-taken"> {
  const against = judgeSounding(doing, casualty, body);
  return onOpen(doing, casualty, "sounding-taken", body, [needSpace(casualty, body.space), ...against]);
}

/** Sets a pump going, stops it, or changes its setting. None starts while fuel is smelt. */
export function setPump(doing: ActContext, casualty: CasualtyState, body: Bodies["pump-set"]): Act<"pump-set"> {
  const remedy = "Do not pump. The person in charge finds it clear first, and writes that down here.";
  const isClear = casualty.fuelSmelt === undefined || !body.running;
  return onOpen(doing, casualty, "pump-set", body, [
    needSpace(casualty, body.space),
    unless(isClear, because("SN-151", "body.running", true, "no pumping while fuel is smelt", remedy)),
    ...judgeLate(doing, body),
  ]);
}

/** Writes down what is seen of a pump, from now or from `body.taken` on. */
export function seePump(doing: ActContext, casualty: CasualtyState, body: Bodies["pump-seen"]): Act<"pump-seen"> {
  return onOpen(doing, casualty, "pump-seen", body, [needPump(casualty, body.pump), ...judgeLate(doing, body)]);
}

/** Writes down what starting and priming a pump took, from now or from `body.taken` on. */
export function tellStart(
  doing: ActContext,
  casualty: CasualtyState,
  body: Bodies["pump-start-told"],
): Act<"pump-start-told"> {
  const against = [needPump(casualty, body.pump), ...judgeLate(doing, body)];
  return onOpen(doing, casualty, "pump-start-told", body, against);
}

/** Writes down that a pump's tank is full again. */
export function refuelPump(doing: ActContext, casualty: CasualtyState, pump: string): Act<"pump-refuelled"> {
  return onOpen(doing, casualty, "pump-refuelled", { pump }, [needPump(casualty, pump)]);
}

/** Writes down how much of the hole is still open after plugging or patching. */
export function patchHole(
  doing: ActContext,
  casualty: CasualtyState,
  body: Bodies["hole-patched"],
): Act<"hole-patched"> {
  return onOpen(doing, casualty, "hole-patched", body, [needSpace(casualty, body.space), ...judgeLate(doing, body)]);
}

/** Writes down that she is taken in tow, or that the tow is cast off. */
export function setTow(doing: ActContext, casualty: CasualtyState, under: boolean): Act<"tow-set"> {
  return onOpen(doing, casualty, "tow-set", { under });
}

/** Writes down what is seen of her: list, trim, roll, deck edge, sill, her skipper's word. */
export function seeStability(
  doing: ActContext,
  casualty: CasualtyState,
  body: Bodies["stability-seen"],
): Act<"stability-seen"> {
  return onOpen(doing, casualty, "stability-seen", body);
}

/** Fuel smelt or seen: the log says that every pump stopped. */
export function smellFuel(doing: ActContext, casualty: CasualtyState, note?: string): Act<"fuel-smelt"> {
  return onOpen(doing, casualty, "fuel-smelt", note === undefined ? {} : { note });
}

/** The person in charge has found it clear of fuel; pumps stay off until they are started one by one. */
export function clearFuel(doing: ActContext, casualty: CasualtyState, note: string): Act<"fuel-cleared"> {
  const isSmelt = casualty.fuelSmelt !== undefined;
  return onOpen(doing, casualty, "fuel-cleared", { note }, [
    unless(isSmelt, because("SN-152", "casualty", casualty.name, "a casualty with fuel smelt", "Nothing to clear.")),
  ]);
}

/** Writes a note about people, the boat or anything else. */
export function noteCasualty(
  doing: ActContext,
  casualty: CasualtyState,
  body: Bodies["casualty-noted"],
): Act<"casualty-noted"> {
  return onOpen(doing, casualty, "casualty-noted", body);
}

/** Ends the sheet. Kits handed over stay with the vessel until each is taken back. */
export function closeCasualty(
  doing: ActContext,
  casualty: CasualtyState,
  body: Bodies["casualty-closed"],
): Act<"casualty-closed"> {
  const left = (body.leftRunning ?? []).map((pump) => needPump(casualty, pump));
  return onOpen(doing, casualty, "casualty-closed", body, left);
}

/** Adds to a closed casualty what somebody saw. */
export function noteReview(
  doing: ActContext,
  casualty: CasualtyState,
  body: Bodies["review-noted"],
): Act<"review-noted"> {
  const pump = body.pump === undefined ? undefined : needPump(casualty, body.pump);
  return allow(doing, about(casualty.id, "review-noted", body), [needClosed(casualty), pump]);
}

/** Says that a closed casualty was gone through, and keeps what had been forecast with what came. */
export function keepReview(
  doing: ActContext,
  casualty: CasualtyState,
  body: Bodies["casualty-reviewed"],
): Act<"casualty-reviewed"> {
  return allow(doing, about(casualty.id, "casualty-reviewed", body), [needClosed(casualty)]);
}

function needClosed({ name, closed }: CasualtyState): Fault | undefined {
  const remedy = "Close the sheet first: write what is seen now on the sheet itself.";
  return unless(closed !== undefined, because("SN-189", "casualty", name, "a closed casualty", remedy));
}

function onOpen<Kind extends keyof CasualtyBodies>(
  doing: ActContext,
  casualty: CasualtyState,
  kind: Kind,
  body: Bodies[Kind],
  against: readonly (Fault | undefined)[] = [],
): Act<Kind> {
  const remedy = "Strike the line that closed it, or open a new casualty.";
  const isOpen = casualty.closed === undefined;
  return allow(doing, about(casualty.id, kind, body), [
    unless(isOpen, because("SN-153", "casualty", casualty.name, "a casualty not closed", remedy)),
    ...against,
  ]);
}

function judgeLate({ now }: ActContext, { taken }: WrittenLate): readonly Fault[] {
  return now === undefined ? [] : judgeTaken(taken, now);
}

function about<Kind extends EntryKind>(casualty: string, kind: Kind, body: Bodies[Kind]): Draft<Kind> {
  return { subject: `casualty:${casualty}`, kind, body, place: STATION_PLACE };
}

function needSpace(casualty: CasualtyState, space: string): Fault | undefined {
  const known = casualty.spaces.some(({ id }) => id === space);
  return unless(known, because("SN-154", "body.space", space, "a space of this casualty", "Choose one of its spaces."));
}

function needPump(casualty: CasualtyState, pump: string): Fault | undefined {
  const known = casualty.pumps.some((one) => one.pump === pump);
  return unless(known, because("SN-155", "body.pump", pump, "a pump on this casualty", "Choose one of its pumps."));
}
