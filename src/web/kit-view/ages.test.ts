import { fetchWords } from "#words";
import { describe as group, expect, it } from "vitest";
import type { Finding, KitState, Mark, Remedy } from "#readiness";
import { groupByKit, listOpen, progressOf, sayAge } from "./ages.ts";

const words = await fetchWords("en", "kitLine");

const mark = (day: string): Mark => ({ entry: `e-${day}`, at: `${day}T09:00:00+00:00`, by: "ada", device: "phone" });
const remedy = (how: Remedy): Finding["remedies"][number] => ({ ...mark("2026-03-11"), remedy: how });

function finding(id: string, day: string, more: Partial<Finding> = {}): Finding {
  const raised = mark(day);
  return {
    id,
    item: "torch",
    mode: "other",
    effect: "notes",
    note: "Loose",
    photos: [],
    raised,
    remedies: [],
    ...more,
  };
}

function kit(id: string, ...findings: Finding[]): KitState {
  return {
    id,
    name: id,
    serial: id,
    place: "north",
    pattern: "trial-pump@1",
    enrolled: mark("2025-01-01"),
    contents: {},
    seals: [],
    findings,
    turnarounds: [],
    custody: { kind: "here" },
    runs: [],
    toSettle: [],
    heads: [],
  };
}

group("open findings", () => {
  const first = kit("a", finding("young", "2026-03-10"), finding("shut", "2026-01-01", { closed: mark("2026-02-01") }));
  const second = kit("b", finding("old", "2026-02-01"));
  const open = listOpen([first, second], new Map(), "2026-03-14", words);

  it("lists the oldest first, with its age in days, and leaves closed ones out", () => {
    expect(open.map((one) => [one.finding.id, one.days])).toEqual([
      ["old", 41],
      ["young", 4],
    ]);
  });

  it("puts the kit with the oldest finding first", () => {
    expect(groupByKit(open).map((one) => one.kit.id)).toEqual(["b", "a"]);
  });

  it("falls back to the note where the pattern has no such mode", () => {
    expect(open[0]).toMatchObject({ item: "torch", mode: "torch: Loose" });
  });
});

group("progress of a finding", () => {
  it("asks for a remedy, then for its proof, then is closed", () => {
    const bare = finding("f", "2026-03-01");
    const mended = { ...bare, remedies: [remedy({ finding: "f", how: "mended", note: "Tightened" })] };
    expect(progressOf(bare, "2026-03-14")).toBe("needs-remedy");
    expect(progressOf(mended, "2026-03-14")).toBe("needs-proof");
    expect(progressOf({ ...mended, closed: mark("2026-03-12") }, "2026-03-14")).toBe("closed");
  });

  it("lives with it through the day named, and no longer", () => {
    const livedWith = { ...mark("2026-03-01"), name: "Ada", limit: "daylight only", until: "2026-03-14" };
    const lived = finding("f", "2026-03-01", { livedWith });
    expect(progressOf(lived, "2026-03-14")).toBe("lived-with");
    expect(progressOf(lived, "2026-03-15")).toBe("needs-remedy");
  });

  it("says an age in words", () => {
    expect([0, 1, 41].map((days) => sayAge(days, words))).toEqual(["today", "1 day", "41 days"]);
  });
});
