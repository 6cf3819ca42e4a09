export * from "./errors.ts";
export * from "./nth.ts";
export * from "./quantity.ts";
export { findUnit } from "./quantity-text.ts";
export { dimensions, unitsOf, type Unit } from "./units.ts";
export {
  addDays,
  compareDates,
  dateOf,
  dateOfNumber,
  dateParts,
  dayNumber,
  daysBetween,
  daysInMonth,
  earlierDate,
  formatDate,
  formatMonth,
  gs1Date,
  isDate,
  isLeapYear,
  isMonth,
  lastDayOf,
  parseDate,
  weekdayOf,
  type DateParts,
  type PlainDate,
} from "./calendar.ts";
export { sayCount } from "./say-count.ts";
export { sum } from "./sum.ts";
export { parsedJson } from "./parsed-json.ts";
export { isSeenName, plainName } from "./plain-name.ts";
export * from "./span.ts";
export * from "./csv.ts";
export * from "./written-date.ts";
export * from "./instant.ts";
export { readClock } from "./clock.ts";
export * from "./recurrence.ts";
export * from "./cautions.ts";
