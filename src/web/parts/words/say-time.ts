const form = (parts: Intl.DateTimeFormatOptions) => new Intl.DateTimeFormat("en-GB", parts);

/** Made once: making one takes many times as long as using it, and a sheet says a hundred times at every tap. */
const FORMS = {
  month: form({ year: "numeric", month: "short", timeZone: "UTC" }),
  day: form({ year: "numeric", month: "short", day: "numeric", timeZone: "UTC" }),
  dayHere: form({ year: "numeric", month: "short", day: "numeric" }),
  timeHere: form({ hour: "2-digit", minute: "2-digit" }),
};

/** "14 Mar 2027", or "Mar 2027" for a month. An instant gives its day on the reader's clock. */
export function sayDay(at: string): string {
  const isMonth = /^\d{4}-\d{2}$/.test(at);
  const isDay = /^\d{4}-\d{2}-\d{2}$/.test(at);
  return FORMS[isMonth ? "month" : isDay ? "day" : "dayHere"].format(new Date(at));
}

/** "14:02" on the reader's clock. */
export function sayTime(at: string | number): string {
  return FORMS.timeHere.format(new Date(at));
}

/** "14 Mar 2027, 14:02" on the reader's clock. */
export function sayInstant(at: string): string {
  return `${sayDay(at)}, ${sayTime(at)}`;
}

/** A length of time for a clock face: "2:05", "1:02:05". */
export function sayElapsed(seconds: number): string {
  const whole = Math.max(0, Math.floor(seconds));
  const [h, m, s] = [Math.floor(whole / 3600), Math.floor(whole / 60) % 60, whole % 60];
  return h > 0 ? `${h}:${twoFigures(m)}:${twoFigures(s)}` : `${m}:${twoFigures(s)}`;
}

function twoFigures(part: number): string {
  return String(part).padStart(2, "0");
}
