import type { CalendarEvent } from "#station";

/**
 * The events of a sheet with each kit once a day: what else it has that day is told with the first, with everybody whom any
 * of it is for.
 *
 * @param events - the most pressing of a day first
 */
export function onceADay(events: readonly CalendarEvent[]): readonly CalendarEvent[] {
  const once = new Map<string, CalendarEvent>();
  for (const event of events) {
    const key = event.kit === undefined ? event.uid : `${event.day} ${event.kit}`;
    const first = once.get(key);
    once.set(key, first ? join(first, event) : event);
  }
  return [...once.values()];
}

function join(one: CalendarEvent, other: CalendarEvent): CalendarEvent {
  const description = [one.description, `${other.summary}.`, other.description].filter(Boolean).join(" ");
  return { ...one, description, people: [...new Set([...one.people, ...other.people])] };
}
