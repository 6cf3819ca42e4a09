import { readClock, type Fault } from "#base";
import { faultOf } from "./guard-fault.ts";

/** Fields that hold an instant, and those that hold none whatever their names. */
const INSTANTS = ["at", "from", "to", "now"];
const NO_INSTANTS = ["vessel", "boat", "compartment"];

interface Told {
  readonly field: string;
  readonly value: unknown;
}

/**
 * QU-160: times of day and times counted from a start in one question. They cannot be put beside one another: of those
 * that are fewer, the first is named.
 *
 * @param given - as it was given, before its units are gone
 */
export function onOneClock(given: unknown): readonly Fault[] {
  const told = instantsIn(given, "");
  const clocks = told.filter(({ value }) => isClock(value));
  const counted = told.filter(({ value }) => !isClock(value));
  if (clocks.length === 0 || counted.length === 0) return [];
  const [odd] = clocks.length < counted.length ? clocks : counted;
  const allowed = "all times of day (14:05), or all counted from one start (5 min)";
  return [faultOf("QU-160", odd!.field, odd!.value, allowed, "Put every time on the same clock, now too.")];
}

function isClock(value: unknown): boolean {
  return typeof value === "string" && readClock(value) !== undefined;
}

function instantsIn(given: unknown, path: string): readonly Told[] {
  if (Array.isArray(given)) return given.flatMap((one, i) => instantsIn(one, `${path}[${i}]`));
  if (typeof given !== "object" || given === null) return [];
  return Object.entries(given).flatMap(([key, value]: [string, unknown]) => {
    if (NO_INSTANTS.includes(key)) return [];
    const field = path === "" ? key : `${path}.${key}`;
    if (!INSTANTS.includes(key)) return instantsIn(value, field);
    return typeof value === "string" || typeof value === "number" ? [{ field, value }] : [];
  });
}
