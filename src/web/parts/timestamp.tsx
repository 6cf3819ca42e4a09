import { sayDay, sayInstant, sayTime } from "./words/say-time.ts";

export interface TimestampProps {
  /** RFC 3339 instant, or a day "YYYY-MM-DD" or month "YYYY-MM". */
  readonly at: string;
  /** `day`: the day only. `time`: hours and minutes only. */
  readonly as?: "instant" | "day" | "time";
}

/** A moment or a day, in words, on the reader's own clock. */
export function Timestamp({ at, as }: TimestampProps) {
  const isDay = !at.includes("T");
  const text = isDay || as === "day" ? sayDay(at) : as === "time" ? sayTime(at) : sayInstant(at);
  return (
    <time className="tabular" dateTime={at}>
      {text}
    </time>
  );
}
