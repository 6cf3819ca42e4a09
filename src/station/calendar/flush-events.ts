import { dayIn, formatDate, type PlainDate } from "#base";
import { sayMet, type FlushDue } from "#readiness";
import { ENGLISH } from "#words";
import type { DueLine } from "../work/work-due.ts";
import type { CalendarEvent } from "./calendar-event.ts";

/**
 * A first flush that is still to come: at its time, and once that is past on today too. It is for every hand, whoever took
 * the turnaround: it cannot wait for one of them.
 *
 * @param now - RFC 3339
 */
export function flushEvents({ kit, place, flush }: DueLine, now: string): readonly CalendarEvent[] {
  if (flush === undefined) return [];
  const at = new Date(flush.by).toISOString();
  const [day, today] = [dayIn(place.zone, at), dayIn(place.zone, now)];
  const event: CalendarEvent = {
    uid: `${kit.enrolled.entry}-flush`,
    sort: "flush",
    kit: kit.id,
    day,
    at,
    summary: `First flush of ${kit.name}, due by ${clockAt(place.zone, at)}`,
    description: sayWhy(flush),
    people: [],
  };
  if (flush.by >= Date.parse(now)) return [event];
  const { at: _time, ...late } = event;
  return [
    { ...late, uid: `${event.uid}-overdue`, day: today, summary: sayLate(kit.name, { ...event, at }, place) },
    event,
  ];
}

function sayWhy({ all }: FlushDue): string {
  const aid = [...new Set(all.flatMap(({ firstAid }) => firstAid))].join(" ");
  return `It met ${sayMet(
    all.map(({ what }) => what),
    ENGLISH.standing,
  )}. ${aid}`;
}

function sayLate(kit: string, { day, at }: { day: PlainDate; at: string }, { zone }: DueLine["place"]): string {
  return `Overdue: first flush of ${kit}, due by ${clockAt(zone, at)} on ${formatDate(day)}. Flush now`;
}

/** "14:05" on the clocks of a zone. */
function clockAt(zone: string, at: string): string {
  const format = { timeZone: zone, hour: "2-digit", minute: "2-digit", hourCycle: "h23" } as const;
  return new Intl.DateTimeFormat("en-GB", format).format(new Date(at));
}
