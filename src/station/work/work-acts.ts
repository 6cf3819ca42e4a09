import { addDays, formatDate } from "#base";
import type { Bodies, PlannedWork, Person, WorkLine } from "#readiness";
import { STATION_PLACE } from "#log";
import { aboutKit, allow, unless, type Act, type ActContext } from "../acts/draft.ts";
import { because, noSuchPerson } from "../judging/faults.ts";
import { isKeeper, mayWrite } from "../judging/permission.ts";
import { needOnCharge } from "../acts/needs.ts";
import type { DueLine } from "./work-due.ts";

type Line = Pick<WorkLine, "work" | "latest" | "groundsAfter" | "isGrounding"> & Pick<DueLine, "kit">;

/** Takes a line of work, for oneself or as a keeper for somebody. Nobody: lays it down. */
export function takeWork(doing: ActContext, { kit, work }: Line, person: string | undefined): Act<"work-taken"> {
  const taker = doing.people.find(({ id }) => id === person);
  const may = person === undefined || person === doing.me.id || isKeeper(doing.me.role);
  const body = { work, ...(person !== undefined && { person }) };
  return allow(doing, aboutKit(kit, "work-taken", body), [
    needOnCharge(kit),
    unless(may, because("SN-211", "body.person", person, doing.me.id, "Ask the keeper to put somebody else to it.")),
    unless(
      person === undefined || (taker !== undefined && !taker.left && mayWrite(taker.role, "work-taken")),
      because(
        "SN-213",
        "body.person",
        taker?.name ?? person,
        "a person who may work on kits",
        "Choose another person.",
      ),
    ),
  ]);
}

/** Gives a line of work its day: not a day past, and not one on which the kit would be grounded for it. No day: takes it back. */
export function dateWork(doing: ActContext, line: Line, day: string | undefined): Act<"work-dated"> {
  const { kit, work } = line;
  const body = { work, ...(day !== undefined && { day }) };
  return allow(doing, aboutKit(kit, "work-dated", body), [
    needOnCharge(kit),
    ...(day === undefined ? [] : [needAhead(doing, day, "body.day"), needBeforeGrounding(line, day, "body.day")]),
  ]);
}

/** Puts a line of work off, with a reason; never past the last day before the kit is grounded, nor a muster past its own. */
export function putOffWork(
  doing: ActContext,
  line: Line,
  { until, reason }: { readonly until: string; readonly reason: string },
): Act<"work-put-off"> {
  const { kit, work } = line;
  const remedy = "Take it, or give it a day.";
  return allow(doing, aboutKit(kit, "work-put-off", { work, until, reason }), [
    needOnCharge(kit),
    needAhead(doing, until, "body.until"),
    unless(!line.isGrounding, because("SN-215", "work", kit.name, "work that does not ground the kit already", remedy)),
    line.isGrounding ? undefined : needBeforeGrounding(line, until, "body.until"),
    work === "muster" ? needInMuster(doing, line, until) : undefined,
  ]);
}

function needAhead(doing: ActContext, day: string, field: string) {
  return unless(
    day >= doing.today,
    because("SN-214", field, day, `a day from today on, ${formatDate(doing.today)}`, "Choose a later day."),
  );
}

function needBeforeGrounding({ groundsAfter }: Line, day: string, field: string) {
  if (groundsAfter === undefined || day <= groundsAfter) return undefined;
  const allowed = `a day up to ${formatDate(groundsAfter)}: after it the kit is grounded`;
  return tooLate(field, day, allowed, "Choose an earlier day.");
}

/** Seeing a kit takes minutes: nothing speaks for leaving it past its last day. */
function needInMuster(doing: ActContext, { latest }: Line, until: string) {
  if (latest !== undefined && until <= latest) return undefined;
  const allowed = latest === undefined ? "no day: its last day is past" : `a day up to ${formatDate(latest)}, its last`;
  const remedy = latest === undefined ? `Muster it today, ${formatDate(doing.today)}.` : "Choose an earlier day.";
  return tooLate("body.until", until, allowed, remedy);
}

/** Later than the work can wait. */
function tooLate(field: string, day: string, allowed: string, remedy: string) {
  return because("SN-216", field, day, allowed, remedy);
}

/** Writes down the openings planned for a kit, all of them anew; those on a Monday that is past are refused. */
export function planOpenings(
  doing: ActContext,
  kit: DueLine["kit"],
  openings: readonly PlannedWork[],
): Act<"openings-planned"> {
  const thisWeek = addDays(doing.today, -6);
  const past = openings.find(({ week }) => week < thisWeek);
  const allowed = "this week or a later one";
  return allow(doing, aboutKit(kit, "openings-planned", { openings }), [
    needOnCharge(kit),
    past && because("SN-217", "body.openings", past.week, allowed, "Plan again from this week on."),
  ]);
}

/** Says how many hours a week a person has for work on kits. */
export function setHours(doing: ActContext, person: string, hours: number): Act<"hours-set"> {
  return allow(doing, aboutPerson(person, "hours-set", { hours }), [needPerson(doing, person)]);
}

/** Says on which days a person is away. */
export function setAbsence(doing: ActContext, person: string, body: Bodies["absence-set"]): Act<"absence-set"> {
  const may = person === doing.me.id || isKeeper(doing.me.role);
  const remedy = "Ask the keeper to write down other people's days.";
  return allow(doing, aboutPerson(person, "absence-set", body), [
    needPerson(doing, person),
    unless(may, because("SN-212", "subject", `person:${person}`, `person:${doing.me.id}`, remedy)),
  ]);
}

function aboutPerson<Kind extends "hours-set" | "absence-set">(person: string, kind: Kind, body: Bodies[Kind]) {
  return { subject: `person:${person}`, kind, body, place: STATION_PLACE };
}

function needPerson({ people }: { readonly people: readonly Person[] }, id: string) {
  const person = people.find((one) => one.id === id && !one.left);
  return unless(person !== undefined, noSuchPerson(id));
}
