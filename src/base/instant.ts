import { dateFault, dateOf, isDate, type PlainDate } from "./calendar.ts";
import { InputError } from "./errors.ts";

const INSTANT_TEXT =
  /^(\d{4}-\d{2}-\d{2})T([01]\d|2[0-3]):[0-5]\d:([0-5]\d|60)(\.\d{1,9})?(Z|[+-]([01]\d|2[0-3]):[0-5]\d)$/;

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

/** Whole and part seconds from one instant to another, as wall clocks that were right would tell. */
export function secondsBetween(from: string, to: string): number {
  return (Date.parse(to) - Date.parse(from)) / 1000;
}

function zoneFormat(zone: string): Intl.DateTimeFormat {
  try {
    return new Intl.DateTimeFormat("en-u-ca-iso8601-nu-latn", {
      timeZone: zone,
      year: "numeric",
      month: "numeric",
      day: "numeric",
    });
  } catch (thrown) {
    if (!(thrown instanceof RangeError)) throw thrown;
    throw dateFault("BA-114", "zone", zone, 'an IANA time zone such as "Pacific/Auckland"');
  }
}
