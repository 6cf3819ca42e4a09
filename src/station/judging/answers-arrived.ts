import type { Fault } from "#base";
import type { Check, Pattern } from "#kit";
import type { Entry } from "#log";
import type { Against, Bodies, Value } from "#readiness";
import { answerFaults, type GivenAnswer } from "./answer-faults.ts";

/** How far behind the instant in UTC the calendar is at the latest place on Earth [ms]. */
const LATEST_ZONE_MS = 12 * 3_600_000;

interface Shelf {
  patternNamed?(version: string): Pattern | undefined;
}

/**
 * Holds the answers of a line that arrives against their readings, by the pattern that the line was made under. What
 * only the kit's own log tells is not judged here: whether a wait was over, and which seal stood on record; the reading
 * itself says which. A printed date is held against the day of the line wherever on Earth that day is earliest.
 *
 * @returns SN-126 and SN-127; nothing where the pattern is not known here
 */
export function judgeAnswers(entry: Entry, { patternNamed }: Shelf): readonly Fault[] {
  const pattern = entry.pattern === undefined ? undefined : patternNamed?.(entry.pattern);
  const checks = new Map(pattern?.checks.map((check) => [check.id, check]));
  const today = new Date(Date.parse(entry.at) - LATEST_ZONE_MS).toISOString().slice(0, 10);
  return answersOf(entry).flatMap(({ check: id, field, ...given }) => {
    const check = checks.get(id);
    if (check === undefined || mayBeUnread(check, given)) return [];
    return answerFaults(check, given, againstOf(check, given.value, today), field);
  });
}

/** Measured once: only the kit's own log tells whether it was. */
function mayBeUnread(check: Check, { value }: GivenAnswer): boolean {
  return check.kind === "measure" && check.once === true && value === undefined;
}

interface Arrived extends GivenAnswer {
  readonly check: string;
  readonly field: string;
}

function answersOf({ kind, body }: Entry): readonly Arrived[] {
  if (kind === "finding-proved") {
    const { checks } = body as Bodies["finding-proved"];
    return checks.map((given, i) => ({ ...given, field: `body.checks.${i}.value` }));
  }
  const { check, answer, value } = body as Bodies["step-answered"];
  return check === undefined ? [] : [{ check, answer, ...(value && { value }), field: "body.value" }];
}

function againstOf(check: Check, value: Value | undefined, today: string): Against {
  const isRecorded = check.kind === "match" && check.against !== undefined && value?.kind === "match";
  return isRecorded ? { today, recorded: value.second } : { today };
}
