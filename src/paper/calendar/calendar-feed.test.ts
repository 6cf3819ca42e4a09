import { join } from "node:path";
import fc from "fast-check";
import ICAL from "ical.js";
import { beforeAll, describe, expect, it } from "vitest";
import { addDays } from "#base";
import { demoEntries } from "#demo";
import type { Entry } from "#log";
import type { Bodies } from "#readiness";
import { calendarOf, createStationFold, stationEvents, type CalendarEvent, type StationReading } from "#station";
import { readPatternFolders } from "#store/patterns";
import { onceADay } from "./once-a-day.ts";
import { renderMonthSheet, writeCalendar } from "../index.ts";

const TODAY = "2027-03-15";
const NOW = `${TODAY}T10:00:00Z`;
const { patterns } = readPatternFolders([join(import.meta.dirname, "..", "..", "..", "patterns")]);
const demo = demoEntries({ patterns, today: TODAY, seed: 3 });

let reading: StationReading;
beforeAll(() => {
  reading = stationOf([]);
});

function stationOf(more: readonly Entry[]): StationReading {
  const fold = createStationFold(patterns);
  fold.add([...demo, ...more]);
  return fold.read();
}

/** What an independent parser makes of a feed. */
function parsed(text: string) {
  const events = new ICAL.Component(ICAL.parse(text)).getAllSubcomponents("vevent").map((one) => new ICAL.Event(one));
  return events.map((one) => ({
    uid: one.uid,
    summary: one.summary,
    description: one.description,
    isDay: one.startDate.isDate,
    day: one.startDate.toString(),
    end: one.endDate.toString(),
  }));
}

/** Openings of a kit as somebody accepts them a day later. */
function planned(id: string, openings: Bodies["openings-planned"]["openings"]): Entry {
  const kit = reading.kits.find(({ name }) => name === "Pump 1")!;
  const line = { place: kit.place, subject: `kit:${kit.id}`, kind: "openings-planned", pattern: kit.pattern };
  return {
    id,
    ...line,
    at: NOW,
    by: "mara-tolliver",
    device: "workbench-tablet",
    after: kit.heads,
    body: { openings },
  };
}

const plain = (text: string) => text.replace(/[\p{Cc}\u2028\u2029]+/gu, " ").trim();
const sortsOf = (id: string) => new Set(calendarOf(reading, id, NOW)!.events.map(({ sort }) => sort));
const named = (id: string) => calendarOf(reading, id, NOW)!.events.flatMap(({ people }) => people);
const pages = (pdf: string) => pdf.match(/\/Type \/Page\b(?!s)/g)!.length;
const sheetOf = async (month: string, events = stationEvents(reading, NOW)) => {
  const people = new Map(reading.people.map(({ id, name }) => [id, name]));
  const pdf = await renderMonthSheet({ stationName: reading.stationName, month, events, people, now: NOW });
  return Buffer.from(pdf).toString("latin1");
};

const OPENING = { id: "o-1", week: "2027-04-05", renews: ["Proof run"], by: ["jonas-wick"] };

describe("the muster of a place", () => {
  it("names every kit of the place that is due within a month of the first, with its day", () => {
    const place = reading.places.find(({ name }) => name === "Boathouse")!;
    const kits = reading.kits.filter((kit) => kit.place === place.id && !kit.retired);
    const muster = stationEvents(reading, NOW).find(({ uid }) => uid === `${place.id}-muster`)!;
    const told = kits.filter(({ name }) => new RegExp(`${name}(?! ?\\d)`).test(muster.description));
    expect(told.length).toBeGreaterThan(1);
  });
});

describe("a calendar as a file of RFC 5545", () => {
  it("is read by ical.js with every event on its day, whole days without a zone (RFC 5545, 3.6.1)", () => {
    const view = calendarOf(reading, "mara-tolliver", NOW)!;
    expect(new Set(view.events.map(({ sort }) => sort))).toEqual(new Set(["work", "lapse", "muster", "qualification"]));
    const read = parsed(writeCalendar(view, NOW));
    expect(read.map(({ day, summary }) => [day, summary])).toEqual(
      view.events.map(({ day, summary }) => [day, summary]),
    );
    for (const one of read) expect([one.isDay, one.end]).toEqual([true, addDays(one.day, 1)]);
    expect(new Set(read.map(({ uid }) => uid)).size).toBe(read.length);
  });

  it("has no line over 75 octets and ends each with CR LF (RFC 5545, 3.1)", () => {
    const text = writeCalendar(calendarOf(reading, "mara-tolliver", NOW)!, NOW);
    const lines = text.split("\r\n");
    expect(lines.filter((line) => Buffer.byteLength(line) > 75)).toEqual([]);
    expect(lines.filter((line) => line.includes("\n") || line.includes("\r"))).toEqual([]);
    expect([lines[0], lines.findLast((line) => line !== "")]).toEqual(["BEGIN:VCALENDAR", "END:VCALENDAR"]);
  });

  it("lets no name break out of its line, whatever is in it", () => {
    const words = fc.string({ unit: "binary", minLength: 1, maxLength: 120 });
    const nasty = fc.oneof(words, fc.constantFrom("a\r\nEND:VEVENT\r\nBEGIN:VEVENT", 'x;y,"z\\n', "\u2028\u0000;"));
    fc.assert(
      fc.property(nasty, nasty, (summary, description) => {
        const event: CalendarEvent = { uid: "u", sort: "work", day: TODAY, summary, description, people: [] };
        const [read, ...rest] = parsed(writeCalendar({ name: summary, events: [event] }, NOW));
        expect(rest).toEqual([]);
        expect([read!.summary, read!.description ?? ""]).toEqual([plain(summary), plain(description)]);
      }),
    );
  });

  it("keeps the UID of an opening when the plan moves it to another week", () => {
    const first = stationOf([planned("0199aaaa-0000-7000-8000-000000000001", [OPENING])]);
    const moved = stationOf([planned("0199aaaa-0000-7000-8000-000000000001", [{ ...OPENING, week: "2027-05-10" }])]);
    const [before, after] = [first, moved].map((station) =>
      parsed(writeCalendar(calendarOf(station, "jonas-wick", NOW)!, NOW)).filter(
        ({ summary }) => summary === "Open Pump 1",
      ),
    );
    expect(before).toMatchObject([{ day: "2027-04-05" }]);
    expect(after).toMatchObject([{ day: "2027-05-10" }]);
    expect(after![0]!.uid).toBe(before![0]!.uid);
  });

  it("keeps the UIDs of all that is still there a week later", () => {
    const uids = (now: string) => new Set(stationEvents(reading, now).map(({ uid }) => uid));
    const later = uids("2027-03-22T10:00:00Z");
    const lapses = stationEvents(reading, NOW).filter(({ sort, day }) => sort === "lapse" && day > "2027-03-22");
    expect(lapses.length).toBeGreaterThan(3);
    for (const { uid } of lapses) expect(later).toContain(uid);
  });
});

describe("the sheet of a month", () => {
  it("names each kit once a day, with all that it has that day", () => {
    const lapse = { uid: "b", sort: "lapse", kit: "k1", day: TODAY, people: [] } as const;
    const events: readonly CalendarEvent[] = [
      {
        ...lapse,
        uid: "a",
        sort: "work",
        summary: "Turn round Pump 1",
        description: "Renew the fuel.",
        people: ["ann"],
      },
      { ...lapse, summary: "Pump 1: last good day, then fuel too old", description: "It then grounds the kit." },
      { ...lapse, uid: "c", kit: "k2", summary: "Pump 2: last good day", description: "" },
    ];
    expect(onceADay(events).map(({ summary }) => summary)).toEqual(["Turn round Pump 1", "Pump 2: last good day"]);
    expect(onceADay(events)[0]).toMatchObject({
      description: "Renew the fuel. Pump 1: last good day, then fuel too old. It then grounds the kit.",
      people: ["ann"],
    });
    const all = onceADay(stationEvents(reading, NOW)).flatMap(({ day, kit }) => (kit ? [`${day} ${kit}`] : []));
    expect(new Set(all).size).toBe(all.length);
  });
});

describe("whose calendar it is", () => {
  it("shows crew what is theirs and what nobody took, and a keeper everybody's", () => {
    expect(new Set(named("jonas-wick"))).toEqual(new Set(["jonas-wick"]));
    expect(new Set(named("mara-tolliver")).size).toBeGreaterThan(2);
  });

  it("shows who does not work on kits the lapses and musters alone", () => {
    expect(sortsOf("hal-brandreth")).toEqual(new Set(["lapse", "muster"]));
  });

  it("is none for nobody, and for who has left", () => {
    const left = { ...reading, people: reading.people.map((one) => ({ ...one, left: true })) };
    expect(calendarOf(reading, "nobody", NOW)).toBeUndefined();
    expect(calendarOf(left, "mara-tolliver", NOW)).toBeUndefined();
  });
});

/** A line of the log about Pump 12, which is overdue. */
function aboutLate(id: string, kind: string, body: object): Entry {
  const kit = reading.kits.find(({ name }) => name === "Pump 12")!;
  return { ...planned(id, []), subject: `kit:${kit.id}`, pattern: kit.pattern, after: kit.heads, kind, body } as Entry;
}

function days(station: StationReading) {
  return stationEvents(station, NOW)
    .filter(({ summary, sort }) => summary.endsWith("Pump 12") && (sort === "work" || sort === "opening"))
    .map(({ day, summary }) => [day, summary]);
}

describe("what is overdue", () => {
  const opening = aboutLate.bind(null, "0199aaaa-0000-7000-8000-000000000001", "openings-planned");
  const openings = [{ ...OPENING, week: "2027-03-22" }];

  it("stands on today, planned for a later week or not", () => {
    expect(days(stationOf([]))).toEqual([[TODAY, "Turn round Pump 12"]]);
    expect(days(stationOf([opening({ openings })]))).toEqual([
      [TODAY, "Overdue: Turn round Pump 12"],
      ["2027-03-22", "Open Pump 12"],
    ]);
  });

  it("stands on the day given to it too, and not on its planned week beside that", () => {
    const dated = aboutLate("0199aaaa-0000-7000-8000-000000000002", "work-dated", {
      work: "opening",
      day: "2027-03-18",
    });
    expect(days(stationOf([opening({ openings }), dated]))).toEqual([
      [TODAY, "Overdue: Turn round Pump 12"],
      ["2027-03-18", "Turn round Pump 12"],
    ]);
  });
});

const lent = (count: number) => [{ name: "fuel can", count }];

/** Pump 12 as it was handed over with two fuel cans and came back with one, from salt water. */
function backWet(): StationReading {
  const away = { to: "the Avocet", method: "line", sealBroken: true, lent: lent(2) };
  const back = { exposure: ["salt"], lent: lent(1) };
  return stationOf([
    { ...aboutLate("0199aaaa-0000-7000-8000-000000000001", "handed-over", away), at: "2027-03-14T06:00:00Z" },
    { ...aboutLate("0199aaaa-0000-7000-8000-000000000002", "returned", back), at: "2027-03-14T09:00:00Z" },
  ]);
}

describe("a kit that came back wet, with a thing lent still out", () => {
  it("has its first flush on top, at its time, and on today once that is past", () => {
    const [late, flush] = stationEvents(backWet(), NOW);
    expect(late).toMatchObject({ day: TODAY, sort: "flush" });
    expect(late!.summary).toMatch(/^Overdue: first flush of Pump 12, due by \d\d:\d\d on 14 March 2027\. Flush now$/);
    expect(flush).toMatchObject({ day: "2027-03-14", sort: "flush" });
    const read = parsed(writeCalendar(calendarOf(backWet(), "mara-tolliver", NOW)!, NOW));
    const timed = read.filter(({ isDay }) => !isDay);
    expect(timed).toMatchObject([{ summary: flush!.summary, day: flush!.at!.replace(".000Z", "Z") }]);
    expect(calendarOf(backWet(), "jonas-wick", NOW)!.events[0]).toEqual(late);
  });

  it("is not fetched itself: what was lent with it is", () => {
    const fetched = stationEvents(backWet(), NOW).filter(({ summary }) => summary.startsWith("Fetch"));
    expect(fetched.map(({ summary }) => summary)).toContain("Fetch 1 fuel can, lent with Pump 12 to the Avocet");
    expect(fetched.map(({ summary }) => summary)).not.toContain("Fetch Pump 12");
  });

  it("is not said to be at once on a day to come", () => {
    const dated = { work: "opening", day: "2027-03-18" };
    const station = stationOf([aboutLate("0199aaaa-0000-7000-8000-000000000002", "work-dated", dated)]);
    const own = stationEvents(station, NOW).find(
      ({ day, summary }) => day === dated.day && summary.endsWith("Pump 12"),
    )!;
    expect(own.description).not.toContain("At once");
  });
});

describe("a month on paper", () => {
  it("is one sheet for a month in which nothing has its day, and for one of six weeks", async () => {
    expect(pages(await sheetOf("2031-02"))).toBe(1);
    expect(pages(await sheetOf("2032-08"))).toBe(1);
  });

  it("takes as many sheets as its events fill", async () => {
    const many = Array.from({ length: 90 }, (_, at) => ({
      uid: `u${at}`,
      sort: "work" as const,
      day: addDays("2027-03-01", at % 31),
      summary: `Turn round Pump ${at}`,
      description: "Renew the fuel. It lapses. ".repeat(3),
      people: ["jonas-wick"],
    }));
    expect(pages(await sheetOf("2027-03", many))).toBeGreaterThan(2);
    expect(pages(await sheetOf("2027-04", many))).toBe(1);
  });
});
