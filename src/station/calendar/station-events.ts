import { addDays, dayIn, formatDate, type PlainDate } from "#base";
import { outlookOf, practiceOf, type KitState, type Place, type Reason } from "#readiness";
import { ENGLISH, inWords } from "#words";
import { boardOf } from "../board.ts";
import { practisingOf } from "../people/need-second.ts";
import type { StationReading } from "../station-reading.ts";
import type { CalendarEvent } from "./calendar-event.ts";
import { flushEvents } from "./flush-events.ts";
import { sayWorkOn } from "./work-on.ts";
import { workDueOf, type DueLine } from "../work/work-due.ts";

/**
 * Everything with a day at a station: first flushes, openings planned, work due, the first lapse of each kit, the next
 * muster of each place, and the last day of what each person holds. What is overdue stands on today.
 *
 * @param reading - the station as its log tells it
 * @param now - RFC 3339
 * @returns first flushes, then the rest by day and by words
 */
export function stationEvents(reading: StationReading, now: string): readonly CalendarEvent[] {
  const board = boardOf(reading, now);
  const kits = board.places.flatMap((place) => place.kits.map(({ kit }) => kit));
  const work = workDueOf(reading, now);
  const all = [
    ...kits.flatMap((kit) => openingEvents(kit, reading)),
    ...work.flatMap((line) => flushEvents(line, now)),
    ...work.flatMap((line) => workEvents(line, dayIn(line.place.zone, now))),
    ...board.places.flatMap(({ place, day, kits: here }) => [
      ...here.flatMap(({ kit }) => lapseEvent(kit, place, endingsOf(reading, kit), day) ?? []),
      ...musterEvent(reading, place, day),
    ]),
    ...qualificationEvents(reading, now),
  ];
  return all.toSorted((one, other) => (orderOf(one) < orderOf(other) ? -1 : 1));
}

/** A flush that is overdue stands on top of all: it is counted in hours. */
function orderOf({ sort, day, at, summary }: CalendarEvent): string {
  const rank = sort !== "flush" ? 2 : at === undefined ? 0 : 1;
  return `${rank}${day}${summary}`;
}

/** Entries have ids that no other station has; a kit's own id may be one that many choose. */
function uidOf(kit: KitState, what: string): string {
  return `${kit.enrolled.entry}-${what}`;
}

function openingEvents(kit: KitState, { people }: StationReading): readonly CalendarEvent[] {
  // An opening with a day of its own stands on that day, not on its week's Monday too.
  const isDated = kit.work?.opening?.day !== undefined;
  return (kit.planned?.openings ?? []).slice(isDated ? 1 : 0).map(({ id, week, renews, by }) => {
    const names = by.map((one) => people.find((person) => person.id === one)?.name ?? one).join(", ");
    const what = renews.length > 0 ? `Renews ${renews.join(", ")}. ` : "";
    const who = names === "" ? "" : ` By ${names}.`;
    const description = `${what}Planned for the week of ${formatDate(week)}.${who}`;
    const of = { uid: `${id}-planned`, sort: "opening", kit: kit.id } as const;
    return { ...of, day: week, summary: `Open ${kit.name}`, description, people: by };
  });
}

/**
 * A line of work has its day; a muster that nobody took stands with its place, a planned opening in its week. What is
 * overdue stands on today whatever day was found for it.
 */
function workEvents(line: DueLine, today: PlainDate): readonly CalendarEvent[] {
  const { kit, work, tasks, said, planned } = line;
  const isLate = line.bucket === "overdue" || line.bucket === "wet";
  const people = said.takers.map(({ person }) => person);
  const isSaid = said.day !== undefined || people.length > 0;
  if (work === "muster" && !isSaid) return [];
  const due = said.day?.day ?? line.by ?? today;
  const day = due < today ? today : due;
  const event = {
    uid: uidOf(kit, work),
    sort: "work" as const,
    kit: kit.id,
    day,
    summary: sayWorkOn(line),
    description: `${line.by === undefined && day === today ? "At once. " : ""}${tasks.map(({ what }) => inWords(what, ENGLISH.standing)).join(" ")}`,
    people,
  };
  const own = isSaid || planned === undefined ? [event] : [];
  if (!isLate || own.some((one) => one.day === today)) return own;
  return [...own, { ...event, uid: uidOf(kit, `${work}-overdue`), day: today, summary: `Overdue: ${event.summary}` }];
}

/** The first thing of a kit that lapses, musters aside: those have their own day. */
function lapseEvent(kit: KitState, place: Place, ends: readonly Ending[], today: PlainDate): CalendarEvent | undefined {
  const ahead = ends.filter(({ day, rule }) => rule !== "muster" && day >= today);
  const first = ahead.reduce<Ending | undefined>(
    (one, other) => (one && one.day <= other.day ? one : other),
    undefined,
  );
  if (first === undefined) return undefined;
  const summary = `${kit.name}: last good day, then ${first.what}`;
  const description = `It then ${first.bears} the kit. At ${place.name}.`;
  const of = { uid: uidOf(kit, "lapse"), sort: "lapse", kit: kit.id } as const;
  return { ...of, day: first.day, summary, description, people: [] };
}

/** Kits that want to be seen so soon after the first of their place are named with it [day]. */
const MUSTER_DAYS = 31;

/** The day by which the first kit of a place wants to be seen, and which others could be seen with it. */
function musterEvent(reading: StationReading, place: Place, today: PlainDate): readonly CalendarEvent[] {
  const due = reading.kits.flatMap((kit) => {
    const isHere = kit.place === place.id && !kit.retired;
    const muster = isHere ? endingsOf(reading, kit).find(({ rule }) => rule === "muster") : undefined;
    return muster === undefined ? [] : [{ kit, day: muster.day < today ? today : muster.day }];
  });
  if (due.length === 0) return [];
  const day = due.map((one) => one.day).reduce((first, one) => (one < first ? one : first));
  const names = due
    .filter((one) => one.day <= addDays(day, MUSTER_DAYS))
    .toSorted((one, other) => (one.day < other.day ? -1 : one.day > other.day ? 1 : 0))
    .map((one) => (one.day === day ? one.kit.name : `${one.kit.name} by ${formatDate(one.day)}`));
  const summary = `Muster at ${place.name}`;
  return [{ uid: `${place.id}-muster`, sort: "muster", day, summary, description: names.join(", "), people: [] }];
}

/** Something of a kit that is good up to a day. */
interface Ending {
  readonly day: PlainDate;
  readonly rule: Reason["rule"];
  readonly bears: "grounds" | "limits";
  readonly what: string;
}

/** What of a kit lapses when: what is only noted has no day in a calendar. */
function endingsOf(reading: StationReading, kit: KitState): readonly Ending[] {
  const pattern = reading.patterns.get(kit.pattern);
  if (!pattern) return [];
  const { conditions } = outlookOf(kit, pattern, reading.policy);
  return conditions.flatMap(({ from, bears, reason, ends }) => {
    if (from === undefined || (bears !== "grounds" && bears !== "limits")) return [];
    return [{ day: addDays(from, -1), rule: reason.rule, bears, what: inWords(ends ?? reason.said, ENGLISH.standing) }];
  });
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
