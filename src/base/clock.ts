const CLOCK = /^([0-3]?\d|4[0-7]):([0-5]\d)(?::([0-5]\d))?$/;

/**
 * Reads a time of day.
 *
 * @param text - "14:05" or "14:05:30"; after midnight the hours may count on, "24:10" for ten past
 * @returns seconds since the midnight it counts from [s]; undefined for anything else
 * @range 0:00 to 47:59:59: two days running
 * @source ISO 8601-1:2019, 5.3.1 (hours and minutes with a colon; counting on past 24 is this program's own) (FROM MEMORY)
 * @example readClock("14:05") // 50700
 */
export function readClock(text: string): number | undefined {
  const read = CLOCK.exec(text.trim());
  if (!read) return undefined;
  const [hours, minutes, seconds] = read.slice(1).map((part) => Number(part ?? 0));
  return hours! * 3600 + minutes! * 60 + seconds!;
}
