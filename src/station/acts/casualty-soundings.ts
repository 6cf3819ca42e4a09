import { isInstant, type Fault } from "#base";
import {
  highestLevel,
  judgeInstant,
  wrongLevel,
  wrongMeasures,
  type Bodies,
  type CasualtyBoat,
  type CasualtyState,
} from "#readiness";
import { unless, type ActContext } from "./draft.ts";
import { because } from "../judging/faults.ts";

/** When something was seen or done against when it is written down: SN-156 later, SN-157 more than a day before. */
export function judgeTaken(taken: string | undefined, written: string): readonly Fault[] {
  if (taken === undefined || !isInstant(taken)) return [];
  const judged = judgeInstant(taken, written);
  if (judged === "fits") return [];
  if (judged === "ahead") return [because("SN-156", "body.taken", taken, `not after ${written}`, FUTURE)];
  return [because("SN-157", "body.taken", taken, `within a day before ${written}`, OLD)];
}

const FUTURE = "Nothing is seen or done in the future: look at the time, and at this device's clock.";
const OLD = "Look at the day. What was longer ago goes into a note.";

/** What speaks against a sounding, besides its space. */
export function judgeSounding(
  { now }: Pick<ActContext, "now">,
  casualty: Pick<CasualtyState, "boat" | "soundings">,
  body: Bodies["sounding-taken"],
): readonly (Fault | undefined)[] {
  const at = body.taken ?? now;
  const isTwice = at !== undefined && casualty.soundings.some((one) => one.space === body.space && isSame(one.at, at));
  const remedy = "Strike the one that stands there first, or give the time this one was read.";
  const high = wrongLevel(casualty.boat, body.level);
  return [
    high && { code: "SN-159", ...high },
    ...(now === undefined ? [] : judgeTaken(body.taken, now)),
    unless(!isTwice, because("SN-158", "body.taken", at, "a second with no sounding of this space yet", remedy)),
  ];
}

/** To the second: nobody sounds twice in one. */
function isSame(one: string, other: string): boolean {
  return Math.floor(Date.parse(one) / 1000) === Math.floor(Date.parse(other) / 1000);
}

/**
 * What speaks against a boat's measures: SN-160 a measure that no such boat has, SN-161 a deck edge below water that was
 * sounded in her.
 */
export function judgeBoat(
  boat: CasualtyBoat | undefined,
  soundings: CasualtyState["soundings"] = [],
): readonly Fault[] {
  if (boat === undefined) return [];
  const wrong = wrongMeasures(boat).map((one) => ({ code: "SN-160", ...one }));
  if (wrong.length > 0) return wrong;
  const deepest = Math.max(0, ...soundings.map(({ level }) => level));
  if (deepest <= highestLevel(boat)) return [];
  const remedy = "Strike that sounding first if it is the one that is wrong.";
  const field = boat.depth === undefined ? "length" : "depth";
  const allowed = `deep enough for the ${deepest} m sounded in her`;
  return [{ code: "SN-161", field, got: `${boat[field]} m`, allowed, remedy }];
}
