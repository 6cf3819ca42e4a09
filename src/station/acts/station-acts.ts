import type { Fault } from "#base";
import { STATION_PLACE, STRIKE, type Entry } from "#log";
import type { Bodies, EntryKind, KitState } from "#readiness";
import { aboutKit, allow, unless, type Act, type ActContext, type Draft } from "./draft.ts";
import { because, mayNotStrike } from "../judging/faults.ts";
import { isKeeper } from "../judging/permission.ts";

/** Names the station. */
export function nameStation(doing: ActContext, name: string): Act<"station-named"> {
  return allow(doing, atStation("station", "station-named", { name }));
}

/** Makes a place or changes its name, strength or zone. No two places share a name. */
export function setPlace(doing: ActContext, place: string, body: Bodies["place-set"]): Act<"place-set"> {
  const twin = doing.places.find((other) => other.id !== place && !other.closed && other.name === body.name);
  return allow(doing, atStation(`place:${place}`, "place-set", body), [
    twin && because("SN-141", "body.name", body.name, "a name no other place has", "Choose another name."),
  ]);
}

/** Closes a place that holds no kit. */
export function closePlace(doing: ActContext, place: string, reason: string): Act<"place-closed"> {
  const held = doing.kits.filter((kit) => kit.place === place && !kit.retired).map((kit) => kit.name);
  return allow(doing, atStation(`place:${place}`, "place-closed", { reason }), [
    unless(
      held.length === 0,
      because("SN-142", "place", held.join(", "), "a place without kits", "Move its kits first, or retire them."),
    ),
  ]);
}

/** Writes down a rescue boat, or what has changed about her. No two share a name. */
export function setBoat(doing: ActContext, boat: string, body: Bodies["boat-set"]): Act<"boat-set"> {
  const twin = doing.boats.find((other) => other.id !== boat && !other.retired && other.name === body.name);
  const isThere = doing.places.some(({ id, closed }) => id === body.place && !closed);
  return allow(doing, atStation(`boat:${boat}`, "boat-set", body), [
    twin && because("SN-171", "body.name", body.name, "a name no other boat has", "Choose another name."),
    unless(isThere, because("SN-172", "body.place", body.place, "an open place", "Choose where she lies.")),
  ]);
}

/** Takes a rescue boat off the list. */
export function retireBoat(doing: ActContext, boat: string, reason: string): Act<"boat-retired"> {
  return allow(doing, atStation(`boat:${boat}`, "boat-retired", { reason }));
}

/** Sets what the station holds itself to, where it is stricter than the patterns. It never lengthens what they allow. */
export function setPolicy(doing: ActContext, body: Bodies["policy-set"]): Act<"policy-set"> {
  const some = Object.values(body).some((text) => text !== undefined);
  return allow(doing, atStation("station", "policy-set", body), [
    unless(some, because("SN-143", "body", body, "at least one of them", "Say which to change.")),
  ]);
}

/** Puts a person on the station's list. */
export function joinPerson(doing: ActContext, person: string, body: Bodies["person-joined"]): Act<"person-joined"> {
  return allow(doing, atStation(`person:${person}`, "person-joined", body), [needOwnName(doing, person, body.name)]);
}

/** Changes a person's name or role; the last administrator stays one. */
export function changePerson(doing: ActContext, person: string, body: Bodies["person-changed"]): Act<"person-changed"> {
  const keeps = body.role === undefined || body.role === "administrator" || hasOtherAdministrator(doing, person);
  return allow(doing, atStation(`person:${person}`, "person-changed", body), [
    body.name === undefined ? undefined : needOwnName(doing, person, body.name),
    unless(keeps, lastAdministrator(person)),
  ]);
}

/** Takes a person off the list; the last administrator stays. */
export function leavePerson(doing: ActContext, person: string, reason?: string): Act<"person-left"> {
  const body = reason === undefined ? {} : { reason };
  return allow(doing, atStation(`person:${person}`, "person-left", body), [
    unless(hasOtherAdministrator(doing, person), lastAdministrator(person)),
  ]);
}

/** Shuts a device out: lost, stolen or worn out. */
export function shutOutDevice(doing: ActContext, device: string, reason: string): Act<"device-shut-out"> {
  const known = doing.devices.some((one) => one.id === device && !one.shutOut);
  return allow(doing, atStation(`device:${device}`, "device-shut-out", { reason }), [
    unless(known, because("SN-145", "device", device, "a device of this station", "Choose a device from the list.")),
  ]);
}

/** Tells a pattern's owner that a step is wrong, impossible or unclear. */
export function reportStep(doing: ActContext, pattern: string, body: Bodies["step-reported"]): Act<"step-reported"> {
  const id = pattern.split("@", 1)[0] ?? pattern;
  return allow(doing, { ...atStation(`pattern:${id}`, "step-reported", body), pattern });
}

/** Answers such a report. */
export function answerReport(
  doing: ActContext,
  pattern: string,
  body: Bodies["report-answered"],
): Act<"report-answered"> {
  return allow(doing, atStation(`pattern:${pattern.split("@", 1)[0] ?? pattern}`, "report-answered", body));
}

/** Decides between what two devices did: every entry of the difference is named, one of them stands. */
export function settleDifference(doing: ActContext, kit: KitState, body: Bodies["settled"]): Act<"settled"> {
  const wanted = kit.toSettle.find(
    (one) => one.entries.includes(body.stands) && one.entries.every((entry) => body.entries.includes(entry)),
  );
  const allowed = "all entries of one difference of this kit, and one of them to stand";
  return allow(doing, aboutKit(kit, "settled", body), [
    unless(wanted !== undefined, because("SN-146", "body.entries", body.entries, allowed, "Look at it again.")),
  ]);
}

/** Strikes a line: one's own, or as a keeper anyone's. The line stays in the log, with who struck it and why. */
export function strikeEntry(doing: ActContext, entry: Entry, reason: string): Act<"struck"> {
  const own = entry.by === doing.me.id || isKeeper(doing.me.role);
  const body = { entry: entry.id, reason };
  const pattern = entry.pattern === undefined ? {} : { pattern: entry.pattern };
  const draft = { subject: entry.subject, kind: STRIKE as "struck", body, place: entry.place, ...pattern };
  return allow(doing, draft, [
    unless(own, mayNotStrike(entry.id, "a line of your own")),
    unless(entry.kind !== STRIKE || isKeeper(doing.me.role), mayNotStrike(entry.id, "a line that is no strike")),
  ]);
}

function atStation<Kind extends EntryKind>(subject: string, kind: Kind, body: Bodies[Kind]): Draft<Kind> {
  return { subject, kind, body, place: STATION_PLACE };
}

function needOwnName(doing: ActContext, person: string, name: string): Fault | undefined {
  const same = (one: string) => one.trim().toLocaleLowerCase("en") === name.trim().toLocaleLowerCase("en");
  const twin = doing.people.find((other) => other.id !== person && !other.left && same(other.name));
  return (
    twin && because("SN-144", "body.name", name, "a name nobody else has", "Write it so that both can be told apart.")
  );
}

function hasOtherAdministrator(doing: ActContext, person: string): boolean {
  const isOne = (id: string) => doing.people.some((one) => one.id === id && one.role === "administrator" && !one.left);
  return !isOne(person) || doing.people.some((other) => other.id !== person && isOne(other.id));
}

function lastAdministrator(person: string): Fault {
  const allowed = "somebody beside the last administrator";
  return because("SN-148", "person", person, allowed, "Make somebody else administrator first.");
}
