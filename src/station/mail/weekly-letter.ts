import { addDays, dayIn, formatDate, instantAt, weekdayOf, type PlainDate } from "#base";
import { instantOf } from "#log";
import { ENGLISH, inWords } from "#words";
import { boardOf } from "../board.ts";
import { stationEvents } from "../calendar/station-events.ts";
import { sayWorkOn } from "../calendar/work-on.ts";
import type { StationReading } from "../station-reading.ts";
import { workDueOf, type DueLine } from "../work/work-due.ts";
import type { Letter, MailWish, WeeklyWish } from "./mail-shelf.ts";

/** A server that was off at the hour still writes it within so long [s]; later it would be no news. */
const LATE_SECONDS = 2 * 86_400;
/** What ends within so long is told [day]. */
const AHEAD_DAYS = 31;

/** What is due at the station, at the hour that a person chose; empty where it is not that time, or not wanted. */
export function weeklyLetter(reading: StationReading, wish: MailWish, now: string): readonly Letter[] {
  if (wish.weekly === undefined) return [];
  const { day, at } = lastMoment(wish.weekly, zoneOf(reading), now);
  const age = instantOf(now) - instantOf(at);
  if (age > LATE_SECONDS * 1000 || instantOf(wish.since) > instantOf(at)) return [];
  const subject = `${reading.stationName}: the week from ${formatDate(day)}`;
  const { person, address } = wish;
  return [{ id: `weekly:${day}:${person}`, person, address, subject, text: weekText(reading, now) }];
}

function zoneOf({ places }: StationReading): string {
  return places.find(({ closed }) => !closed)?.zone ?? "UTC";
}

/** The newest of the chosen hours that is not ahead. */
function lastMoment({ weekday, hour }: WeeklyWish, zone: string, now: string): { day: PlainDate; at: string } {
  const today = dayIn(zone, now);
  const back = (weekdayOf(today) - weekday + 7) % 7;
  const momentOf = (day: PlainDate) => ({ day, at: instantAt(zone, `${day}T${String(hour).padStart(2, "0")}:00`) });
  const here = momentOf(addDays(today, -back));
  return instantOf(here.at) <= instantOf(now) ? here : momentOf(addDays(today, -back - 7));
}

const HEADS = {
  wet: "BACK AND WET, AT ONCE",
  overdue: "OVERDUE",
  week: "THIS WEEK",
  month: "THIS MONTH",
} as const;

function weekText(reading: StationReading, now: string): string {
  const strengths = boardOf(reading, now).places.map(
    ({ place, strength }) => `- ${place.name}: ${strength.holds} ready of ${strength.must} wanted`,
  );
  const work = workDueOf(reading, now);
  const parts = Object.entries(HEADS).map(([bucket, head]) =>
    section(head, work.filter((line) => line.bucket === bucket).map(lineText)),
  );
  return [section("STRENGTH", strengths), ...parts, section(`ENDS WITHIN ${AHEAD_DAYS} DAYS`, endings(reading, now))]
    .filter((part) => part !== "")
    .join("\n\n");
}

function section(head: string, lines: readonly string[]): string {
  return lines.length === 0 ? "" : [head, ...lines].join("\n");
}

function lineText(line: DueLine): string {
  const { tasks, by, said } = line;
  const day = said.day?.day ?? by;
  const when = day === undefined ? "" : `, by ${formatDate(day)}`;
  return `- ${sayWorkOn(line)}${when}: ${tasks.map(({ what }) => inWords(what, ENGLISH.standing)).join(" ")}`;
}

function endings(reading: StationReading, now: string): readonly string[] {
  const last = addDays(dayIn(zoneOf(reading), now), AHEAD_DAYS);
  return stationEvents(reading, now)
    .filter(({ sort, day }) => (sort === "lapse" || sort === "qualification") && day <= last)
    .map(({ day, summary }) => `- ${formatDate(day)}: ${summary}`);
}
