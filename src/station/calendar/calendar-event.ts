import type { PlainDate } from "#base";

/** Something that has its day in a station's calendar. */
export interface CalendarEvent {
  /** The same when the day moves; unlike any other of any station. */
  readonly uid: string;
  readonly sort: "flush" | "opening" | "work" | "lapse" | "muster" | "qualification";
  readonly day: PlainDate;
  /** RFC 3339, where it has a time; else it is of its whole day. */
  readonly at?: string;
  /** Id of the kit that it is about, where it is about one. */
  readonly kit?: string;
  readonly summary: string;
  readonly description: string;
  /** Ids of those it is for; empty where nobody has taken it. */
  readonly people: readonly string[];
}
