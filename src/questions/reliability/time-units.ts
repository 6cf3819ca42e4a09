import { isDate, printGiven, type Fault } from "#base";

/** A time as it was given, and where. */
interface GivenTime {
  readonly field: string;
  readonly time: unknown;
}

/** Fields of one question that are times; names of groups and things are none. */
export type TimeFields = ReadonlySet<string>;

/** Ages in `lifetimes`; `b` is the time of a prior. */
export const LIFE_TIMES: TimeFields = new Set([
  "failedAt",
  "goodAt",
  "after",
  "before",
  "renewedAt",
  "until",
  "from",
  "to",
  "b",
]);

/** Times in `trend`. */
export const TREND_TIMES: TimeFields = new Set(["at", "times", "end", "ends"]);

/** Whether any time was text with its unit, or a day: those are turned into seconds. */
function isTextTime(given: unknown, fields: TimeFields): boolean {
  return timesIn(given, fields).some(({ time }) => typeof time === "string");
}

/** The unit of every time in an answer: what text and days were turned into, else what was told; units where nothing was. */
export function unitOfTimes(given: unknown, fields: TimeFields, told: string | undefined): string {
  return isTextTime(given, fields) ? "s" : (told ?? "units");
}

/** Whether any time was a day of the calendar: "2026-03-14". */
export function isDay(given: unknown, fields: TimeFields): boolean {
  return timesIn(given, fields).some(({ time }) => isDayText(time));
}

/** A bare number among times in text would be read in seconds, which nobody means; nothing is nothing in any unit. A day and a length of time are not alike either. */
export function checkTimeUnits(given: unknown, fields: TimeFields): readonly Fault[] {
  const all = timesIn(given, fields);
  const hasDay = all.some(({ time }) => isDayText(time));
  if (hasDay)
    return faultAt(
      all.find(({ time }) => !isDayText(time)),
      DAYS_MIXED,
    );
  if (!all.some(({ time }) => typeof time === "string")) return [];
  return faultAt(
    all.find(({ time }) => typeof time === "number" && time !== 0),
    MIXED,
  );
}

function faultAt(found: GivenTime | undefined, fault: Omit<Fault, "field" | "got">): readonly Fault[] {
  return found ? [{ ...fault, field: found.field, got: printGiven(found.time) }] : [];
}

function isDayText(time: unknown): boolean {
  return typeof time === "string" && isDate(time);
}

function timesIn(given: unknown, fields: TimeFields, field = "", isTime = false): readonly GivenTime[] {
  if (Array.isArray(given)) return given.flatMap((one, i) => timesIn(one, fields, `${field}[${i}]`, isTime));
  if (typeof given !== "object" || given === null) return isTime ? [{ field, time: given }] : [];
  const inside = (key: string) => (field === "" ? key : `${field}.${key}`);
  return Object.entries(given).flatMap(([key, value]) => timesIn(value, fields, inside(key), fields.has(key)));
}

const DAYS_MIXED = {
  code: "QU-226",
  allowed: "all days, as 2026-03-14, or none",
  remedy: "Give every time as a day, or every time as a length of time from one start.",
};
const MIXED = {
  code: "QU-225",
  allowed: "all times with their unit, or all bare numbers",
  remedy: 'A bare number beside times in text would be read in seconds: write its unit too, as in "10 months".',
};
