import { STATION_PLACE } from "#log";
import { patternKey, stepNamed, type Pattern } from "#kit";
import type { Bodies, LinePhotos } from "#readiness";
import { allow, unless, type Act, type ActContext } from "../acts/draft.ts";
import { because } from "../judging/faults.ts";

/** Most photos of one side at one line: more is looked through, not looked at. */
const MOST_AT_A_LINE = 4;

/**
 * Puts a keeper's own photos of what is right, or wrong, to a line of a pattern: shown there from then on, on every kit
 * of it. They ask nothing and change nothing that is asked.
 *
 * @param doing - the station and who does it
 * @param pattern - the pattern whose line it is
 * @param body - the line, what the photos show, and the photos
 * @param there - the station's own photos of this pattern so far
 * @returns the line, or every reason against it: SN-450 no such line, SN-451 more than four of one side at one line
 */
export function pictureLine(
  doing: ActContext,
  pattern: Pattern,
  body: Bodies["line-pictured"],
  there: readonly LinePhotos[],
): Act<"line-pictured"> {
  const subject = `pattern:${pattern.id}`;
  const draft = { subject, kind: "line-pictured", body, place: STATION_PLACE, pattern: patternKey(pattern) } as const;
  return allow(doing, draft, [isLine(pattern, body), isRoom(body, there)]);
}

function isLine(pattern: Pattern, { step, check }: Bodies["line-pictured"]) {
  const checks = stepNamed(pattern, step)?.checks;
  const isThere = checks !== undefined && (check === undefined || checks.includes(check));
  const got = check === undefined ? step : `${step}/${check}`;
  return unless(isThere, because("SN-450", "body.step", got, "a line of the pattern", "Take the photo at its line."));
}

function isRoom({ step, check, shows, photos }: Bodies["line-pictured"], there: readonly LinePhotos[]) {
  const same = there.filter((one) => one.step === step && one.check === check && one.shows === shows);
  const count = same.flatMap((one) => one.photos).length + photos.length;
  const allowed = `at most ${MOST_AT_A_LINE} photos of what is ${shows} at one line`;
  return unless(
    count <= MOST_AT_A_LINE,
    because("SN-451", "body.photos", count, allowed, "Strike one that shows less, then take the new one."),
  );
}
