import { dateFault, dateOf, isDate, type PlainDate } from "./calendar.ts";
import { InputError } from "./errors.ts";

const INSTANT_TEXT =
  /^(\d{4}-\d{2}-\d{2})T([01]\d|2[0-3]):[0-5]\d:([0-5]\d|60)(\.\d{1,9})?(Z|[+-]([01]\d|2[0-3]):[0-5]\d)$/;

const CLOCK_TEXT = /^(\d{4}-\d{2}-\d{2})T([01]\d|2[0-3]):[0-5]\d(:[0-5]\d)?$/;
const HOUR_MS = 3_600_000;
const DAY_MS = 24 * HOUR_MS;

/**
 * Calendar day at which an instant falls in a zone.
 *
 * @param zone - IANA time zone, such as "Pacific/Auckland"
 * @param instant - RFC 3339 with offset
 * @throws InputError BA-114 unknown zone, BA-115 no instant
 * @example dayIn("Pacific/Auckland", "2026-03-14T20:00:00Z") // "2026-03-15"
 */
export function dayIn(zone: string, instant: string): PlainDate {
  if (!isInstant(instant)) throw dateFault("BA-115", "instant", instant, "an instant with its offset");
  const parts = zoneFormat(zone).formatToParts(new Date(instant));
  const read = (type: string) => Number(parts.find((part) => part.type === type)?.value);
  return dateOf({ year: read("year"), month: read("month"), day: read("day") });
}

/** True for an IANA time zone that this runtime knows. */
export function isZone(zone: string): boolean {
  try {
    zoneFormat(zone);
    return true;
  } catch (thrown) {
    if (thrown instanceof InputError) return false;
    throw thrown;
  }
}

/** True for an RFC 3339 instant with offset on a day that exists. */
export function isInstant(text: string): boolean {
  const parts = INSTANT_TEXT.exec(text);
  return parts !== null && isDate(parts[1]!) && !Number.isNaN(Date.parse(text));
}

/** The day an instant was written under, on the clock of whoever wrote it: the part before "T". */
export function dayWritten(instant: string): PlainDate {
  return instant.slice(0, 10);
}

/**
 * Hours that really pass between two readings of a wall clock in a zone: 23 on the night that summer time begins.
 *
 * @param zone - IANA time zone
 * @param from - clock time, "2025-03-08T12:00"
 * @param to - clock time, later or earlier
 * @returns hours [h], negative where `to` is earlier
 * @throws InputError BA-114 unknown zone, BA-117 no clock time
 * @example hoursBetween("America/New_York", "2025-03-08T12:00", "2025-03-09T12:00") // 23
 */
export function hoursBetween(zone: string, from: string, to: string): number {
  return (clockInstant(zone, to) - clockInstant(zone, from)) / HOUR_MS;
}

/**
 * Instant at which a wall clock in a zone shows a time; one that a change of clocks leaves out counts by the offset
 * before it.
 *
 * @param zone - IANA time zone
 * @param clock - clock time, "2025-03-08T12:00"
 * @returns RFC 3339, in UTC
 * @throws InputError BA-114 unknown zone, BA-117 no clock time
 * @example instantAt("America/New_York", "2025-03-08T12:00") // "2025-03-08T17:00:00.000Z"
 */
export function instantAt(zone: string, clock: string): string {
  return new Date(clockInstant(zone, clock)).toISOString();
}

/** Milliseconds since 1970 at a clock time; one that a change of clocks leaves out counts by the offset before it. */
function clockInstant(zone: string, clock: string): number {
  const read = CLOCK_TEXT.exec(clock);
  if (!read || !isDate(read[1]!)) throw dateFault("BA-117", "clock", clock, 'a clock time such as "2025-03-08T12:00"');
  const wanted = Date.parse(`${clock}Z`);
  const offsets = [wanted - DAY_MS, wanted + DAY_MS].map((near) => offsetAt(zone, near));
  const fits = offsets
    .map((offset) => wanted - offset)
    .filter((instant) => wanted - offsetAt(zone, instant) === instant);
  return fits.length > 0 ? Math.min(...fits) : wanted - offsets[0]!;
}

/** Milliseconds by which clocks in a zone are ahead of UTC at an instant. */
function offsetAt(zone: string, instant: number): number {
  const parts = zoneFormat(zone, { hour: "numeric", minute: "numeric", second: "numeric", hourCycle: "h23" });
  const read = new Map(parts.formatToParts(new Date(instant)).map(({ type, value }) => [type, Number(value)]));
  const at = (type: Intl.DateTimeFormatPartTypes) => read.get(type) ?? 0;
  const shown = Date.UTC(at("year"), at("month") - 1, at("day"), at("hour"), at("minute"), at("second"));
  return shown - Math.floor(instant / 1000) * 1000;
}

/** Whole and part seconds from one instant to another, as wall clocks that were right would tell. */
export function secondsBetween(from: string, to: string): number {
  return (Date.parse(to) - Date.parse(from)) / 1000;
}

function zoneFormat(zone: string, more: Intl.DateTimeFormatOptions = {}): Intl.DateTimeFormat {
  try {
    return new Intl.DateTimeFormat("en-u-ca-iso8601-nu-latn", {
      timeZone: zone,
      year: "numeric",
      month: "numeric",
      day: "numeric",
      ...more,
    });
  } catch (thrown) {
    if (!(thrown instanceof RangeError)) throw thrown;
    throw dateFault("BA-114", "zone", zone, 'an IANA time zone such as "Pacific/Auckland"');
  }
}
