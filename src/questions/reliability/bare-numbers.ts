import type { TimeFields } from "./time-units.ts";

/** Fields of the questions about standby and rates, by what a bare number in them is read in. */
const SECONDS: TimeFields = new Set([
  "time",
  "over",
  "b",
  "interval",
  "scale",
  "testTime",
  "repairTime",
  "overhaul",
  "from",
  "to",
]);
const PER_SECOND: TimeFields = new Set(["failureRate", "median"]);

/**
 * What bare numbers were read in: nobody reckons a pump's failures by the second, and one who left the unit out is told.
 * Nothing is nothing in any unit.
 *
 * @param given - as it was given, before its units are gone
 * @returns words to put behind what an answer rests on, a space before them; none where every time and rate had its unit
 */
export function sayBare(given: unknown): string {
  const bare = bareIn(given);
  const read = [
    ...(bare.some((field) => SECONDS.has(field)) ? ["a time in seconds"] : []),
    ...(bare.some((field) => PER_SECOND.has(field)) ? ["a rate per second"] : []),
  ];
  if (read.length === 0) return "";
  return ` Numbers without a unit (${[...new Set(bare)].join(", ")}) were read as ${read.join(" and ")}: write "0.3 per year" or "2 years" if you mean that.`;
}

function bareIn(given: unknown): readonly string[] {
  if (Array.isArray(given)) return given.flatMap(bareIn);
  if (typeof given !== "object" || given === null) return [];
  return Object.entries(given).flatMap(([key, value]: readonly [string, unknown]) => {
    const isOne = typeof value === "number" && value !== 0 && (SECONDS.has(key) || PER_SECOND.has(key));
    return isOne ? [key] : bareIn(value);
  });
}
