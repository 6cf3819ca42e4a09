import { sayDuration, type Words } from "#words";
import type { Ambient, StationClockOff } from "#station";
import { uuidv7 } from "uuidv7";

/** Clock and ids of a real device. */
export const deviceAmbient: Ambient = {
  now: () => withOffset(new Date()),
  newId: () => uuidv7(),
};

/** RFC 3339 with the device's own offset, as its wall clock shows: "2026-03-14T14:02:05.120+13:00". */
export function withOffset(date: Date, offsetMinutes = -date.getTimezoneOffset()): string {
  const wall = new Date(date.getTime() + offsetMinutes * 60_000).toISOString().slice(0, -1);
  const sign = offsetMinutes < 0 ? "-" : "+";
  const size = Math.abs(offsetMinutes);
  return `${wall}${sign}${twoFigures(size / 60)}:${twoFigures(size % 60)}`;
}

function twoFigures(part: number): string {
  return String(Math.floor(part)).padStart(2, "0");
}

/** Difference beyond which the person is told [ms]: half of what the station refuses. */
export const CLOCK_WARNING_MS = 2 * 60_000;

/**
 * How far this device's clock is ahead of the server's [ms], from one question and answer.
 * The server wrote its time somewhere between; the middle is the best guess, and half a second its own rounding.
 */
export function clockAhead(serverMs: number, askedMs: number, answeredMs: number): number {
  return (askedMs + answeredMs) / 2 - (serverMs + 500);
}

/** "This device's clock is 3 h 10 min ahead of the station's", or nothing where it is near enough. */
export function sayClockDifference(
  aheadMs: number | undefined,
  words: Words["frame"],
  verb: "is" | "was" = "is",
): string | undefined {
  if (aheadMs === undefined || Math.abs(aheadMs) < CLOCK_WARNING_MS) return undefined;
  const said = { span: sayDuration(Math.abs(aheadMs) / 1000, "clocks") };
  if (verb === "was") return aheadMs > 0 ? words.clockWasAhead(said) : words.clockWasBehind(said);
  return aheadMs > 0 ? words.clockAhead(said) : words.clockBehind(said);
}

/** "The station's clock is 3 h 10 min behind", by the station's own word. */
export function sayStationClock({ kind, byMs }: StationClockOff, words: Words["notices"]): string {
  const said = { span: sayDuration(byMs / 1000, "clocks") };
  return kind === "ahead" ? words.stationAhead(said) : words.stationBehind(said);
}
