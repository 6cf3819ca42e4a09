export { calendarOf, type CalendarView } from "./calendar.ts";
export type { CalendarEvent } from "./calendar-event.ts";
export { stationEvents } from "./station-events.ts";
