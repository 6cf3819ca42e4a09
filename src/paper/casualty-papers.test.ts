import type { Entry } from "#log";
import { applyCasualtyEntry, type Bodies, type CasualtyState, type EntryKind } from "#readiness";
import { describe, expect, it } from "vitest";
import { renderCasualtyTimeline } from "./index.ts";

const now = "2027-03-14T12:00:00Z";
const space = { id: "s1", name: "Cabin", sort: "cabin", part: "middle" } as const;

function line<Kind extends EntryKind>(minute: number, kind: Kind, body: Bodies[Kind]): Entry {
  const at = new Date(Date.UTC(2027, 2, 14, 10, minute)).toISOString();
  const id = `0190a000-0000-7000-8000-${String(10 * minute).padStart(12, "0")}`;
  return { id, place: "station", subject: "casualty:c1", kind, at, by: "ann", device: "d", body };
}

const ENTRIES = [
  line(0, "casualty-opened", { name: "Grey boat", boat: { kind: "motor boat", length: 9 }, space }),
  line(1, "sounding-taken", { space: "s1", level: 0.3, text: "30 cm" }),
  line(2, "pump-set", { pump: "p", name: "Pump 1", space: "s1", running: true, flow: 0.003 }),
  line(3, "pump-refuelled", { pump: "p" }),
  line(4, "hole-patched", { space: "s1", open: 0.5 }),
  line(5, "stability-seen", { list: -0.17, rollPeriod: 4, righting: "comes-back" }),
  line(5.2, "pump-seen", { pump: "p", sign: "weak" }),
  line(5.4, "stability-seen", { deckEdge: "awash", overSill: true, trim: 0.3, leaving: true }),
  line(5.6, "tow-set", { under: true }),
  line(6, "fuel-smelt", {}),
  line(7, "fuel-cleared", { note: "Skipper found it clear." }),
  line(8, "sounding-taken", { space: "s1", level: 0.2, text: "20 cm" }),
  line(9, "casualty-changed", { boat: { kind: "motor boat", length: 9, beam: 3 } }),
  line(10, "casualty-noted", { about: "people", note: "Four aboard." }),
  line(11, "casualty-closed", { outcome: "towed-in" }),
];

function timelineOf(entries: readonly Entry[]) {
  const casualty = entries.reduce<CasualtyState | undefined>(applyCasualtyEntry, undefined)!;
  return {
    stationName: "Brannock Reach",
    casualty,
    lines: entries.map((entry, i) => (i === 3 ? { entry, struck: "Not refuelled." } : { entry })),
    kits: [
      { name: "Pump 1", handed: { at: "2027-03-14T10:02:00Z", method: "line" as const, by: "ann" } },
      { name: "Pump 2" },
    ],
    said: new Map([["e1", "Losing: 97 in 100. Be ready to leave her."]]),
    people: new Map([["ann", "Ann"]]),
    units: "us" as const,
    now,
  };
}

function pages(pdf: Uint8Array): number {
  return [
    ...Buffer.from(pdf)
      .toString("latin1")
      .matchAll(/\/Type \/Page\b(?!s)/g),
  ].length;
}

describe("timeline of a casualty", () => {
  it("tells every kind of line there is about casualties", async () => {
    const pdf = await renderCasualtyTimeline(timelineOf(ENTRIES));
    expect(Buffer.from(pdf.slice(0, 5)).toString()).toBe("%PDF-");
    expect(pages(pdf)).toBe(2);
  });

  it("grows with the log, and draws nothing of a single sounding", async () => {
    const many = Array.from({ length: 90 }, (_, i) =>
      line(12 + i, "sounding-taken", { space: "s1", level: 0.3, text: "30 cm" }),
    );
    expect(pages(await renderCasualtyTimeline(timelineOf([...ENTRIES, ...many])))).toBeGreaterThan(2);
    expect(pages(await renderCasualtyTimeline(timelineOf(ENTRIES.slice(0, 2))))).toBe(1);
  });

  it("is the same file for the same casualty", async () => {
    const [one, other] = [
      await renderCasualtyTimeline(timelineOf(ENTRIES)),
      await renderCasualtyTimeline(timelineOf(ENTRIES)),
    ];
    expect(Buffer.from(one).equals(Buffer.from(other))).toBe(true);
  });
});
