import { describe, expect, it } from "vitest";
import { fetchWords } from "#words";
import { checkNamed, type Check, type Pattern } from "#kit";
import type { Entry } from "#log";
import type { Trend } from "#readiness";
import { answerWordsOf, judgeStationClock, timelineLines } from "#station";
import { cardPieces } from "#src/paper/turnaround-card/card-pieces.ts";
import { PATTERN } from "#test/contracts/doors.ts";
import { sayLimits } from "#web/act/reading.ts";
import { SAMPLE } from "#web/kit-view/sample.ts";
import { sayStationClock } from "#web/device/clock.ts";
import { tellCasualty } from "#web/pages/casualty/casualty-telling.ts";
import { sayTrend } from "#web/pages/kit/page/trend-words.ts";
import { paperAddress } from "#web/parts/paper-address.ts";

/* One quantity through the doors that say it: the same words, and the reader's units, on screen, paper and server. */

const act = await fetchWords("en", "act");
const notices = await fetchWords("en", "notices");
const told = await fetchWords("en", "casualtyTold");
const trends = { trends: await fetchWords("en", "trends"), standing: await fetchWords("en", "standing") };

const TIMED: Check = { id: "t", item: "torch", kind: "timed", ask: "", expect: "", finds: [], atMost: 0 };
const NOW = "2027-03-14T10:00:00.000Z";

/** What the record on paper says of a check's limit. */
function onRecord(check: Check, units: "metric" | "us" = "metric"): string {
  const pattern: Pattern = { ...SAMPLE, checks: [check] };
  const value = { kind: "text", text: "read" } as const;
  return answerWordsOf({ pattern, units }, { check: check.id, answer: "seen", value });
}

/** Everything a card for one turnaround has written on it, as it is handed to the drawing of pages. */
function onCard(units: "metric" | "us"): string {
  const written: string[] = [];
  const page: unknown = new Proxy(() => page, {
    get: (_, name) => (name === "y" ? 0 : name === "text" ? (words: string) => (written.push(words), page) : page),
    set: () => true,
    apply: () => page,
  });
  for (const piece of cardPieces({ pattern: PATTERN, units }, 8, new Map())) {
    piece.draw(page as PDFKit.PDFDocument, 0, 100);
  }
  return written.join("\n");
}

describe("a length of time", () => {
  it.each([45, 90, 119, 120, 3700])("of %d s is the same limit on screen and on the record", (atMost) => {
    const check = { ...TIMED, atMost } as Check;
    const limit = sayLimits(check, { units: "metric", words: act })!;
    expect(limit).toMatch(/^at most \d/);
    expect(onRecord(check)).toContain(limit);
  });

  it.each([6, 190, 47 * 60, 72 * 60])("of %d min between two clocks is the same by server and device", (minutes) => {
    const aheadMs = minutes * 60_000;
    const clocks = ["ann", "ben"].map((person) => ({ device: person, person, aheadMs }));
    const verdict = judgeStationClock(NOW, undefined, clocks);
    const shown = sayStationClock({ kind: "behind", byMs: aheadMs }, notices);
    const span = /is (.*) behind/.exec(shown)![1]!;
    expect(verdict).toMatchObject({ kind: "behind", because: expect.stringContaining(`is ${span} behind`) });
  });
});

const CORD = checkNamed(SAMPLE, "cord")!;
const BOAT = { kind: "motor boat", length: 9 } as const;
const PUMP = { pump: "p1", name: "Pump 1", space: "s1", running: true, flow: 0.2 / 60, lift: 2 };

function entry(kind: string, body: unknown): Entry {
  const id = "0190a000-0000-7000-8000-000000000001";
  return { id, kind, at: NOW, place: "north", subject: "casualty:c1", by: "ann", device: "d", body } as Entry;
}

function onTimeline(kind: string, body: unknown): string {
  const lines = timelineLines({ lines: [{ entry: entry(kind, body) }], kits: [], units: "us" });
  return lines.map(({ words }) => words).join(" ");
}

function trend(what: Trend["what"], value: number): Trend {
  return { what, points: [{ at: NOW, turnaround: "t1", value }] };
}

describe("a reader who chose US units", () => {
  it.each<[string, () => string, RegExp]>([
    ["a limit on screen", () => sayLimits(CORD, { units: "us", words: act })!, /50\.0.cm \(1\.64.ft\)/],
    ["a limit on the record", () => onRecord(CORD, "us"), /at least 50\.0.cm \(1\.64.ft\)/],
    ["a limit on the card", () => onCard("us"), /at least 50\.0.cm \(1\.64.ft\)/],
    ["a pump on the sheet", () => tellCasualty(entry("pump-set", PUMP), "us", told), /53.US gpm/],
    ["a pump on the timeline", () => onTimeline("pump-set", PUMP), /53.US gpm.*lift 6\.6.ft/],
    [
      "a sounding on the timeline",
      () => onTimeline("sounding-taken", { level: 0.3, text: "30 cm" }),
      /30 cm \(12.in\)/,
    ],
    [
      "a boat on the sheet",
      () => tellCasualty(entry("casualty-opened", { name: "A", boat: BOAT }), "us", told),
      /29\.5.ft/,
    ],
    ["a trim on the sheet", () => tellCasualty(entry("stability-seen", { trim: 0.3 }), "us", told), /12.in/],
    ["a trim on the timeline", () => onTimeline("stability-seen", { trim: 0.3 }), /12.in/],
    ["petrol on the kit's page", () => sayTrend(trend("fuel", 0.0009), "us", trends), /Last 0\.951.US qt/],
    ["water on the kit's page", () => sayTrend(trend("water", 2e-5), "us", trends), /Last 0\.676.US fl oz/],
  ])("is given them: %s", (_, say, words) => {
    expect(say()).toMatch(words);
  });

  it("is sent every paper in them", () => {
    expect(paperAddress("/api/paper/card/p@1.pdf?kit=k1", "us")).toBe("/api/paper/card/p@1.pdf?kit=k1&units=us");
    expect(paperAddress("/api/paper/turnaround/k1/t1.pdf", "us")).toBe("/api/paper/turnaround/k1/t1.pdf?units=us");
  });
});
