import { addDays, dayIn, formatDate, type PlainDate } from "#base";
import { outlookOf, practiceOf, type KitState, type Place } from "#readiness";
import { boardOf, type Board } from "../board.ts";
import { practisingOf } from "../people/need-second.ts";
import type { StationReading } from "../station-reading.ts";
import { workDueOf, type DueLine } from "../work/work-due.ts";

/** Something that has its day in a station's calendar. */
export interface CalendarEvent {
  /** The same when the day moves; unlike any other of any station. */
  readonly uid: string;
  readonly sort: "opening" | "work" | "lapse" | "muster" | "qualification";
  readonly day: PlainDate;
  readonly summary: string;
  readonly description: string;
  /** Ids of those it is for; empty where nobody has taken it. */
  readonly people: readonly string[];
}

/**
 * Everything with a day at a station: openings planned, work due, the day on which each kit's standing ends, the next
 * muster of each place, and the last day of what each person holds. What is overdue stands on today.
 *
 * @param reading - the station as its log tells it
 * @param now - RFC 3339
 * @returns by day, then by words
 */
export function stationEvents(reading: StationReading, now: string): readonly CalendarEvent[] {
  const board = boardOf(reading, now);
  const kits = board.places.flatMap((place) => place.kits.map(({ kit }) => kit));
  const all = [
    ...kits.flatMap((kit) => openingEvents(kit, reading)),
    ...workDueOf(reading, now).flatMap((line) => workEvent(line, dayIn(line.place.zone, now)) ?? []),
    ...lapseEvents(board),
    ...board.places.flatMap(({ place, day }) => musterEvent(reading, place, day) ?? []),
    ...qualificationEvents(reading, now),
  ];
  return all.toSorted((one, other) => (`${one.day}${one.summary}` < `${other.day}${other.summary}` ? -1 : 1));
}

/** Entries have ids that no other station has; a kit's own id may be one that many choose. */
function uidOf(kit: KitState, what: string): string {
  return `${kit.enrolled.entry}-${what}`;
}

function openingEvents(kit: KitState, { people }: StationReading): readonly CalendarEvent[] {
  return (kit.planned?.openings ?? []).map(({ id, week, renews, by }) => {
    const names = by.map((one) => people.find((person) => person.id === one)?.name ?? one).join(", ");
    const what = renews.length > 0 ? `Renews ${renews.join(", ")}. ` : "";
    const who = names === "" ? "" : ` By ${names}.`;
    const description = `${what}Planned for the week of ${formatDate(week)}.${who}`;
    return { uid: `${id}-planned`, sort: "opening", day: week, summary: `Open ${kit.name}`, description, people: by };
  });
}

const WORK = { opening: "Turn round", muster: "Muster", return: "Fetch", settle: "Settle a difference on" } as const;

/** A line of work has its day; a muster that nobody took stands with its place, a planned opening in its week. */
function workEvent(line: DueLine, today: PlainDate): CalendarEvent | undefined {
  const { kit, work, tasks, said, planned } = line;
  const people = said.takers.map(({ person }) => person);
  const isSaid = said.day !== undefined || people.length > 0;
  if (!isSaid && (work === "muster" || planned !== undefined)) return undefined;
  const due = said.day?.day ?? line.by ?? today;
  const late = line.by === undefined ? "Overdue. " : "";
  const description = `${late}${tasks.map(({ what, why }) => `${what} ${why}`).join(" ")}`;
  const day = due < today ? today : due;
  return { uid: uidOf(kit, work), sort: "work", day, summary: `${WORK[work]} ${kit.name}`, description, people };
}

function lapseEvents({ places }: Board): readonly CalendarEvent[] {
  return places.flatMap(({ kits, place }) =>
    kits.flatMap(({ kit, standing: { lapse } }) => {
      if (!lapse) return [];
      const summary = `${kit.name}: last day as it stands`;
      const description = `${lapse.what} At ${place.name}.`;
      return [{ uid: uidOf(kit, "lapse"), sort: "lapse" as const, day: lapse.day, summary, description, people: [] }];
    }),
  );
}

/** The day by which the first kit of a place wants to be seen. */
function musterEvent(reading: StationReading, place: Place, today: PlainDate): CalendarEvent | undefined {
  const due = reading.kits.flatMap((kit) => {
    const day = kit.place === place.id && !kit.retired ? musterDay(reading, kit) : undefined;
    return day === undefined ? [] : [{ kit, day: day < today ? today : day }];
  });
  if (due.length === 0) return undefined;
  const day = due.map((one) => one.day).reduce((first, one) => (one < first ? one : first));
  const names = due.filter((one) => one.day === day).map(({ kit }) => kit.name);
  const summary = `Muster at ${place.name}`;
  return { uid: `${place.id}-muster`, sort: "muster", day, summary, description: names.join(", "), people: [] };
}

function musterDay(reading: StationReading, kit: KitState): PlainDate | undefined {
  const pattern = reading.patterns.get(kit.pattern);
  if (!pattern) return undefined;
  const { conditions } = outlookOf(kit, pattern, reading.policy);
  const from = conditions.find(({ reason }) => reason.rule === "muster")?.from;
  return from && addDays(from, -1);
}

function qualificationEvents(reading: StationReading, now: string): readonly CalendarEvent[] {
  const today = dayIn(reading.places[0]?.zone ?? "UTC", now);
  const set = reading.qualifications.filter(({ retired }) => !retired);
  const book = practiceOf(practisingOf(reading), set);
  return set.flatMap(({ id, name }) =>
    book.holders(id, today).map((person) => ({
      uid: `${id}-${person.id}-held`,
      sort: "qualification" as const,
      day: book.holding(id, person.id)!.until,
      summary: `${name}: last day it is held by ${person.name}`,
      description: "Doing it once more before then keeps it.",
      people: [person.id],
    })),
  );
}
