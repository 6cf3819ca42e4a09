import { mayWrite, isKeeper } from "../judging/permission.ts";
import type { StationReading } from "../station-reading.ts";
import type { CalendarEvent } from "./calendar-event.ts";
import { stationEvents } from "./station-events.ts";

/** What the calendar of a person holds, and all that its link gives away. */
export interface CalendarView {
  readonly name: string;
  readonly events: readonly CalendarEvent[];
}

/**
 * The calendar of a person: what is theirs, what nobody has taken where they may work on kits, and every lapse and muster.
 * Who decides for others sees everybody's.
 *
 * @param reading - the station as its log tells it
 * @param person - id
 * @param now - RFC 3339
 * @returns undefined for nobody of the station, and for who has left
 */
export function calendarOf(reading: StationReading, person: string, now: string): CalendarView | undefined {
  const owner = reading.people.find(({ id, left }) => id === person && !left);
  if (owner === undefined) return undefined;
  const isHand = mayWrite(owner.role, "work-taken");
  const isFor = ({ people, sort }: CalendarEvent): boolean => {
    if (isKeeper(owner.role) || people.includes(person)) return true;
    return people.length === 0 && (isHand || sort === "lapse" || sort === "muster");
  };
  const events = stationEvents(reading, now).filter(isFor);
  return { name: `${reading.stationName}: kits, ${owner.name}`, events };
}
