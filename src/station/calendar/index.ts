export { calendarOf, type CalendarView } from "./calendar.ts";
export { stationEvents, type CalendarEvent } from "./station-events.ts";
