import { addDays } from "#base";
import type { CalendarEvent, CalendarView } from "#station";
import ical, { ICalCalendarMethod, ICalEventTransparency } from "ical-generator";

/** How often a calendar asks again [s]: two hours, common practice of calendar programs. */
const ASKED_EVERY = 7_200;

/**
 * A calendar as a file of RFC 5545. An event is a whole day, without a time zone, so that it stays on its day wherever it is
 * read; one that has a time stands at it. Its UID is the same when the day moves.
 *
 * @param now - RFC 3339, when it was worked out
 * @source RFC 5545, September 2009, sections 3.3.4, 3.6.1 and 3.8.4.7
 */
export function writeCalendar({ name, events }: CalendarView, now: string): string {
  const calendar = ical({
    name: inOneLine(name),
    prodId: { company: "Drykeel", product: "Drykeel" },
    method: ICalCalendarMethod.PUBLISH,
    ttl: ASKED_EVERY,
  });
  for (const event of events) calendar.createEvent(eventOf(event, now));
  return calendar.toString();
}

function eventOf({ uid, day, at, summary, description, sort }: CalendarEvent, now: string) {
  const wholeDay = { start: midnight(day), end: midnight(addDays(day, 1)), allDay: true };
  return {
    id: `${uid}@drykeel`,
    ...(at === undefined ? wholeDay : { start: new Date(at) }),
    stamp: new Date(now),
    summary: inOneLine(summary),
    description: inOneLine(description),
    categories: [{ name: sort }],
    transparency: ICalEventTransparency.TRANSPARENT,
  };
}

function midnight(day: string): Date {
  return new Date(`${day}T00:00:00Z`);
}

/** RFC 5545 has no place for control characters; a name with line ends in it stays one line. */
function inOneLine(text: string): string {
  return text.replace(/[\p{Cc}\u2028\u2029]+/gu, " ").trim();
}
