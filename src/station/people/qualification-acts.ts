import type { Fault } from "#base";
import { stageNamed, stepNamed } from "#kit";
import { STATION_PLACE } from "#log";
import type { Bodies, Tie } from "#readiness";
import { allow, unless, type Act, type ActContext } from "../acts/draft.ts";
import { because, noSuchQualification } from "../judging/faults.ts";

/** Sets a qualification of the station, every part anew. No two share a name; each is for something there is. */
export function setQualification(
  doing: ActContext,
  qualification: string,
  body: Bodies["qualification-set"],
): Act<"qualification-set"> {
  const same = (one: string) => one.trim().toLocaleLowerCase("en") === body.name.trim().toLocaleLowerCase("en");
  const twin = doing.qualifications?.find((one) => one.id !== qualification && !one.retired && same(one.name));
  return allow(doing, about(qualification, "qualification-set", body), [
    twin && because("SN-230", "body.name", body.name, "a name no other qualification has", "Choose another name."),
    ...body.ties.map((tie, at) => needTied(doing, tie, `body.ties.${at}`)),
  ]);
}

/** Takes a qualification off the list: nothing asks for it any more. What was done under it stays in the log. */
export function retireQualification(
  doing: ActContext,
  qualification: string,
  reason: string,
): Act<"qualification-retired"> {
  const isSet = doing.qualifications?.some(({ id, retired }) => id === qualification && !retired) === true;
  return allow(doing, about(qualification, "qualification-retired", { reason }), [
    unless(isSet, noSuchQualification("qualification", qualification)),
  ]);
}

/** Something that a pattern here has: a misspelt step would ask for nothing, and nobody would know. */
function needTied({ patterns }: ActContext, tie: Tie, field: string): Fault | undefined {
  if (tie.to === "sheet") return undefined;
  const shelf = [...patterns.values()].filter(({ id }) => id === (tie.pattern ?? id));
  const name = tie.to === "step" ? tie.step : tie.stage;
  const isThere = shelf.some((pattern) =>
    tie.to === "step" ? stepNamed(pattern, tie.step) !== undefined : stageNamed(pattern, tie.stage) !== undefined,
  );
  const got = tie.pattern === undefined ? name : `${tie.pattern}, ${name}`;
  const allowed = "a stage or step of a pattern that the station has";
  return unless(isThere, because("SN-231", field, got, allowed, "Choose it from the pattern's lines."));
}

function about<Kind extends "qualification-set" | "qualification-retired">(id: string, kind: Kind, body: Bodies[Kind]) {
  return { subject: `qualification:${id}`, kind, body, place: STATION_PLACE };
}
