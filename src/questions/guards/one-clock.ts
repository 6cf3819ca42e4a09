import { readClock, type Fault } from "#base";
import { sayDuration } from "#words";
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

/** An instant in the words of whoever gave the times. */
export type SayInstant = (at: number) => string;

/**
 * How the instants of a question are said back: as times of day where they were given so, "14:05", after midnight counted on;
 * else as time from the start they count from, "14 min".
 *
 * @param given - as it was given, before its units are gone
 */
export function instantsSaid(given: unknown): SayInstant {
  return instantsIn(given, "").some(({ value }) => isClock(value)) ? sayClock : sayCounted;
}

function sayClock(at: number): string {
  const [hours, minutes, seconds] = [Math.floor(at / 3600), Math.floor((at % 3600) / 60), at % 60];
  const shown = seconds === 0 ? [hours, minutes] : [hours, minutes, Math.round(seconds)];
  return shown.map((part) => String(part).padStart(2, "0")).join(":");
}

/** An instant counted from a start [s]. */
export function sayCounted(at: number): string {
  return at < 0 ? `${sayDuration(-at)} before the start` : sayDuration(at);
}
