import type { Entry } from "#log";
import type { Pattern } from "#kit";
import type { Role } from "#readiness";
import { describe, expect, it } from "vitest";
import { judgeEntry, type EntryFacts } from "./judge-entry.ts";

const LINE: Entry = {
  id: "0190a000-0000-7000-8000-000000000001",
  place: "north",
  subject: "kit:k1",
  kind: "mustered",
  at: "2026-01-10T08:00:00Z",
  by: "ann",
  device: "tablet",
  body: { sealSeen: "00417", containerSound: true },
};
const JOINED: Entry = {
  ...LINE,
  id: "0190a000-0000-7000-8000-000000000004",
  place: "station",
  subject: "person:ann",
  kind: "person-joined",
  body: { name: "Ann", role: "administrator" },
};
const UNDONE: Entry = {
  ...JOINED,
  id: "0190a000-0000-7000-8000-000000000005",
  kind: "struck",
  body: { entry: JOINED.id, reason: "Mistaken." },
};
const BENS: Entry = { ...LINE, id: "0190a000-0000-7000-8000-000000000002", by: "ben" };

const NAMED: Entry = {
  ...BENS,
  id: "0190a000-0000-7000-8000-000000000006",
  kind: "second-named",
  body: { turnaround: "t", qualification: "q", second: "ann" },
};

function facts(role: Role = "crew"): EntryFacts {
  return {
    person: "ann",
    role,
    device: "tablet",
    hasPlace: (id) => id === "north",
    hasPattern: (version) => version === "sample@1",
    find: (id) => [LINE, BENS, JOINED, UNDONE, NAMED].find((entry) => entry.id === id),
  };
}

function codes(change: Partial<Entry>, role: Role = "crew"): readonly string[] {
  return judgeEntry({ ...LINE, ...change }, facts(role)).map((fault) => `${fault.code} ${fault.field}`);
}

const confirm = (body: object) => codes({ kind: "second-confirmed", body: { turnaround: "t", ...body } });

const STRIKE = { id: "0190a000-0000-7000-8000-000000000003", kind: "struck" };
const ENROL = { kind: "kit-enrolled", body: { name: "K", serial: "S", items: [] } };
const HANDED = { to: "Grey boat", method: "passed", sealBroken: false };
const LIVED = { finding: "f", how: "lived-with", name: "Ann", limit: "Gently.", until: "2026-03" };

function sounding(taken: string): Partial<Entry> {
  const body = { space: "s1", level: 0.4, text: "40 cm", taken };
  return { subject: "casualty:c1", kind: "sounding-taken", place: "station", body };
}

function late(taken: string): Partial<Entry> {
  const body = { pump: "p1", sign: "no-water", taken };
  return { subject: "casualty:c1", kind: "pump-seen", place: "station", body };
}

describe("an entry judged on arrival", () => {
  it("is good when its writer, device, role, place and body are", () => {
    expect(codes({})).toEqual([]);
    expect(codes({ ...ENROL, pattern: "sample@1" }, "keeper")).toEqual([]);
    expect(codes(sounding("2026-01-10T07:40:00Z"))).toEqual([]);
    expect(codes(late("2026-01-10T07:40:00Z"))).toEqual([]);
  });

  it("refused for the writer's role names the roles that may: SN-103", () => {
    const [fault] = judgeEntry({ ...LINE, kind: "handed-over", body: HANDED }, facts("commander"));
    expect(fault).toMatchObject({ code: "SN-103", allowed: expect.stringContaining("commander") });
    expect(fault!.remedy).toBe("Ask somebody who may: keeper, crew, administrator.");
  });

  it.each<[string, Partial<Entry>, Role, readonly string[]]>([
    ["a forged writer", { by: "ben" }, "crew", ["SN-101 by"]],
    ["another device", { device: "phone" }, "crew", ["SN-102 device"]],
    ["a role that may not", ENROL, "crew", ["SN-103 kind", "SN-108 pattern"]],
    ["a role that may only look", {}, "commander", ["SN-103 kind"]],
    ["a foreign place", { place: "elsewhere" }, "crew", ["SN-104 place"]],
    ["the station as a kit's place", { place: "station" }, "crew", ["SN-104 place"]],
    ["a subject of another sort", { subject: "person:k1", place: "station" }, "crew", ["SN-105 subject"]],
    ["a kind that nobody knows", { kind: "kit-painted" }, "crew", ["RD-101 kind"]],
    [
      "a body of another shape",
      { body: { sealSeen: 417 } },
      "crew",
      ["RD-102 body.sealSeen", "RD-102 body.containerSound"],
    ],
    ["a pattern the station lacks", { ...ENROL, pattern: "other@1" }, "keeper", ["SN-108 pattern"]],
    ["a move to nowhere", { kind: "kit-moved", body: { to: "nowhere" } }, "keeper", ["SN-109 body.to"]],
    ["a sounding read after it was written", sounding("2026-01-10T08:00:01Z"), "crew", ["SN-156 body.taken"]],
    ["a pump started after it was written", late("2026-01-10T08:00:01Z"), "crew", ["SN-156 body.taken"]],
    ["a pump started days before", late("2026-01-08T08:00:00Z"), "crew", ["SN-157 body.taken"]],
    ["a sounding read days before", sounding("2026-01-08T08:00:00Z"), "crew", ["SN-157 body.taken"]],
    ["a sounding at no instant", sounding("08:00"), "crew", ["RD-102 body.taken"]],
    ["living with a finding, by crew", { kind: "remedy-made", body: LIVED }, "crew", ["SN-107 body.how"]],
    [
      "a strike of a line not kept",
      { ...STRIKE, body: { entry: ENROL.kind, reason: "x" } },
      "crew",
      ["SN-106 body.entry"],
    ],
    [
      "a strike of another's line, by crew",
      { ...STRIKE, body: { entry: BENS.id, reason: "x" } },
      "crew",
      ["SN-106 body.entry"],
    ],
  ])("is refused for %s", (_, change, role, expected) => {
    expect(codes(change, role)).toEqual(expected);
  });

  it("RULE-3 may strike one's own line, and as keeper another's, of the same subject", () => {
    expect(codes({ ...STRIKE, body: { entry: LINE.id, reason: "Wrong kit." } })).toEqual([]);
    expect(codes({ ...STRIKE, body: { entry: BENS.id, reason: "Wrong kit." } }, "keeper")).toEqual([]);
    const elsewhere = { ...STRIKE, subject: "kit:k2", body: { entry: LINE.id, reason: "Wrong kit." } };
    expect(codes(elsewhere, "keeper")).toEqual(["SN-106 body.entry"]);
  });

  it.each(["crew", "keeper"] as const)("undoes nothing, as %s, that the role could not have done", (role) => {
    const strike = { ...STRIKE, place: "station", subject: "person:ann" };
    const undo = (id: string) => ({ ...strike, body: { entry: id, reason: "I want it back." } });
    expect(codes(undo(JOINED.id), role)).toEqual(["SN-106 body.entry"]);
    expect(codes(undo(UNDONE.id), role)).toEqual(["SN-106 body.entry"]);
    expect(codes(undo(JOINED.id), "administrator")).toEqual([]);
    expect(codes(undo(UNDONE.id), "administrator")).toEqual([]);
  });

  it.each([
    ["ann", ["SN-227 body.second"]],
    ["ben", []],
  ])("RULE-16 names as second person never who does it: %s for Ann", (second, expected) => {
    const body = { turnaround: "t", qualification: "q", second };
    expect(codes({ kind: "second-named", body })).toEqual(expected);
  });

  it("RULE-31 takes no word of who saw it that is another's, and no PIN that a device says was proved", () => {
    expect(confirm({ named: NAMED.id })).toEqual([]);
    expect(confirm({ named: BENS.id })).toEqual(["SN-232 body.named"]);
    expect(confirm({ named: "not-here-yet" })).toEqual([]);
    expect(confirm({ named: NAMED.id, byPin: true })).toEqual(["SN-233 body.byPin"]);
  });

  it.each([
    ["ben", ["SN-227 body.second"]],
    ["ann", []],
  ])("RULE-16 names as second person never who is told of: %s for Ben", (second, expected) => {
    const body = { qualification: "q", day: "2026-01-09", how: "Course.", second };
    const line = { subject: "person:ben", kind: "practice-told", place: "station", body };
    expect(codes(line, "keeper")).toEqual(expected);
  });

  it("takes a qualification of a keeper, about a qualification alone", () => {
    const ties = [{ to: "sheet" }];
    const body = { name: "Q", ties, every: "1 year", seenBy: "holders", alone: "never" };
    const line = { subject: "qualification:q", kind: "qualification-set", place: "station", body };
    expect(codes(line, "keeper")).toEqual([]);
    expect(codes(line, "crew")).toEqual(["SN-103 kind"]);
    expect(codes({ ...line, subject: "place:q" }, "keeper")).toEqual(["SN-105 subject"]);
  });

  it.each<[string, object, readonly string[]]>([
    ["longer than the manual of any version", { pattern: "pump", every: "13 months" }, ["SN-261 body.every"]],
    ["as long as the oldest version had it", { pattern: "pump", every: "2 years" }, ["SN-261 body.every"]],
    ["as the manual has it", { pattern: "pump", every: "1 year" }, []],
    ["in days, a little longer", { pattern: "pump", every: "367 days" }, ["SN-261 body.every"]],
    ["of a pattern that is not here", { pattern: "none", every: "1 month" }, ["SN-263 body.pattern"]],
    ["back to the manual, of any pattern", { pattern: "none" }, []],
    ["where the manual says nothing", { pattern: "free", every: "90 months" }, []],
  ])("RULE-30 holds an interval that somebody accepts to the manual: %s", (_, body, expected) => {
    const versions = [
      { id: "pump", version: 1, policy: { turnaround: { months: 24 } } },
      { id: "pump", version: 2, policy: { turnaround: { months: 12 } } },
      { id: "free", version: 1, policy: {} },
    ] as unknown as readonly Pattern[];
    const line = { ...LINE, subject: "station", place: "station", kind: "opening-interval-set", body };
    const judged = judgeEntry(line, { ...facts("keeper"), allPatterns: () => versions });
    expect(judged.map(({ code, field }) => `${code} ${field}`)).toEqual(expected);
  });

  it("RULE-2 is told every fault at once", () => {
    expect(codes({ by: "ben", device: "phone", place: "elsewhere", body: {} }, "commander")).toEqual([
      "RD-102 body.sealSeen",
      "RD-102 body.containerSound",
      "SN-101 by",
      "SN-102 device",
      "SN-104 place",
      "SN-103 kind",
    ]);
  });
});
