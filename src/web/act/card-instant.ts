/**
 * Day and time of day of a card as an instant on this device's clock.
 *
 * @param day - "YYYY-MM-DD"
 * @param time - "14:05" or "9:30"
 * @returns RFC 3339 with offset; undefined while either is missing or no time of day
 */
export function cardInstant(day: string | undefined, time: string): string | undefined {
  const parts = /^\s*([01]?\d|2[0-3])[:.]([0-5]\d)\s*$/.exec(time);
  if (day === undefined || !parts) return undefined;
  const wall = `${day}T${parts[1]!.padStart(2, "0")}:${parts[2]}:00`;
  return `${wall}${offsetAt(new Date(wall))}`;
}

function offsetAt(date: Date): string {
  const minutes = -date.getTimezoneOffset();
  const [hours, rest] = [Math.floor(Math.abs(minutes) / 60), Math.abs(minutes) % 60];
  return `${minutes < 0 ? "-" : "+"}${String(hours).padStart(2, "0")}:${String(rest).padStart(2, "0")}`;
}
