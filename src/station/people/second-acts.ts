import { STATION_PLACE } from "#log";
import { practiceOf, toConfirm, type Bodies, type KitState, type Qualification } from "#readiness";
import { aboutKit, allow, unless, type Act, type ActContext } from "../acts/draft.ts";
import { needNotAhead } from "../acts/needs.ts";
import { because, noSuchPerson, noSuchQualification, notNamed, notOpen, secondIsDoer } from "../judging/faults.ts";
import { clockNotOver } from "./clock-not-over.ts";
import { practisingOf } from "./need-second.ts";

/** Names who sees what this person does in a turnaround under a qualification. */
export function nameSecond(doing: ActContext, kit: KitState, body: Bodies["second-named"]): Act<"second-named"> {
  const qualification = qualificationOf(doing, body.qualification);
  const seconds = qualification ? secondsFor(doing, qualification) : [];
  const names = seconds.map(({ name }) => name).join(", ") || "nobody: go on with a note";
  const isOne = seconds.some(({ id }) => id === body.second);
  const isDoer = body.second === doing.me.id;
  return allow(doing, aboutKit(kit, "second-named", body), [
    needOpen(kit, body.turnaround),
    qualification ? undefined : noSuchQualification("body.qualification", body.qualification),
    isDoer ? secondIsDoer("body.second", body.second) : undefined,
    unless(
      isDoer || isOne || !qualification,
      because("SN-226", "body.second", nameOf(doing, body.second), names, "Ask one of them, or the keeper."),
    ),
  ]);
}

/** Says as the second person that one saw it: of what one was named for oneself, once, and not while its clock runs. */
export function confirmSecond(
  doing: ActContext,
  kit: KitState,
  body: Bodies["second-confirmed"],
): Act<"second-confirmed"> {
  const isAsked = toConfirm(kit, doing.me.id).some(
    ({ turnaround, said }) => turnaround === body.turnaround && said.entry === body.named,
  );
  return allow(doing, aboutKit(kit, "second-confirmed", body), [
    unless(isAsked, notNamed(body.named)),
    isAsked ? clockNotOver(doing, kit, body) : undefined,
  ]);
}

/** Goes on without a second person, with a note; where the station allows it, or nobody is left who may see it. */
export function goOnAlone(doing: ActContext, kit: KitState, body: Bodies["gone-on-alone"]): Act<"gone-on-alone"> {
  const qualification = qualificationOf(doing, body.qualification);
  const may = qualification?.alone === "with-note" || (qualification && secondsFor(doing, qualification).length === 0);
  const remedy = "Name a second person, or close the kit as grounded.";
  return allow(doing, aboutKit(kit, "gone-on-alone", body), [
    needOpen(kit, body.turnaround),
    qualification ? undefined : noSuchQualification("body.qualification", body.qualification),
    qualification &&
      unless(
        may === true,
        because("SN-229", "body.qualification", qualification.name, "one that may be done with a note", remedy),
      ),
  ]);
}

/** Tells what a person did away from a turnaround: a course, a drill, at another station. */
export function tellPractice(doing: ActContext, person: string, body: Bodies["practice-told"]): Act<"practice-told"> {
  const isHere = doing.people.some(({ id, left }) => id === person && !left);
  const draft = { subject: `person:${person}`, kind: "practice-told" as const, body, place: STATION_PLACE };
  return allow(doing, draft, [
    unless(isHere, noSuchPerson(person)),
    qualificationOf(doing, body.qualification)
      ? undefined
      : noSuchQualification("body.qualification", body.qualification),
    body.second === person ? secondIsDoer("body.second", person) : undefined,
    needNotAhead(doing, body.day, "body.day"),
  ]);
}

function secondsFor(doing: ActContext, qualification: Qualification) {
  return practiceOf(practisingOf(doing), [qualification]).seconds(qualification.id, doing.me.id, doing.today);
}

function qualificationOf({ qualifications = [] }: ActContext, id: string): Qualification | undefined {
  return qualifications.find((one) => one.id === id && !one.retired);
}

function needOpen(kit: KitState, id: string) {
  const isOpen = [kit.turnaround, ...(kit.otherTurnarounds ?? [])].some((one) => one?.id === id);
  return unless(isOpen, notOpen(id));
}

function nameOf({ people }: ActContext, id: string): string {
  return people.find((one) => one.id === id)?.name ?? id;
}
