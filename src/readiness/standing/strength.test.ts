import { ENGLISH, inWords } from "#words";
import { describe, expect, it } from "vitest";
import { bandsOf } from "./bands.ts";
import { findingsByAge, provingChecks } from "../findings/finding-list.ts";
import { recordOf } from "../kit/record.ts";
import { Hand, kitOf, SAMPLE_LINES, SAMPLE_PATTERN } from "../kit/sample-kit.ts";
import { standingOf } from "./standing.ts";
import type { KitState } from "../state.ts";
import { firstToEnd, shortfallsOf, strengthOf } from "./strength.ts";
import { trendsOf } from "../trends/trends.ts";

const TODAY = "2026-01-20";
const NORTH = { id: "north", name: "North", strength: 2, zone: "UTC", closed: false };
const RANGE = { from: TODAY, to: "2027-01-19" };

function sealed(kit: string, cells: string): KitState {
  const hand = new Hand("tablet", 0, "2026-01-10", kit).enrol().open().doAll();
  hand.write("item-fitted", { item: "cells", fitted: "2026-01-10", printed: cells, quantity: 2 });
  hand.write("step-answered", { turnaround: "t1", step: "close", answer: "seen" });
  return kitOf(hand.seal(`seal-${kit}`));
}

function standings(kits: readonly KitState[]) {
  return new Map(kits.map((kit) => [kit.id, standingOf(kit, SAMPLE_PATTERN, TODAY, {})]));
}

describe("strength of a place", () => {
  const kits = [sealed("a", "2026-02-15"), sealed("b", "2026-04"), sealed("c", "2025-12")];

  it("counts ready kits that are there, with limits or without", () => {
    expect(strengthOf(NORTH, kits, standings(kits))).toEqual({ must: 2, holds: 2, withLimits: 0, short: 0 });
    const elsewhere = { ...NORTH, id: "south" };
    expect(strengthOf(elsewhere, kits, standings(kits))).toEqual({ must: 2, holds: 0, withLimits: 0, short: 2 });
    const [first, ...rest] = kits;
    const retired = [{ ...first!, retired: { ...first!.enrolled, reason: "Worn out." } }, ...rest];
    expect(strengthOf(NORTH, retired, standings(kits)).holds).toBe(1);
  });

  it("READY-16 falls short from the day after the first kit lapses, as its bands tell", () => {
    const bands = new Map(kits.map((kit) => [kit.id, bandsOf(kit, SAMPLE_PATTERN, RANGE, {})]));
    expect(shortfallsOf(NORTH, kits, bands, RANGE)).toEqual([
      { from: "2026-02-16", to: "2026-04-30", holds: 1, must: 2 },
      { from: "2026-05-01", to: "2027-01-19", holds: 0, must: 2 },
    ]);
  });

  it("READY-16 names as the first to end what strength falls short by: a muster due only limits", () => {
    const [, kit] = kits;
    const bands = new Map([[kit!.id, bandsOf(kit!, SAMPLE_PATTERN, RANGE, {})]]);
    const [short] = shortfallsOf({ ...NORTH, strength: 1 }, [kit!], bands, RANGE);
    const first = firstToEnd([kit!], standings([kit!]));
    expect([short!.from, first?.lapse.day, first && inWords(first.lapse.what, ENGLISH.standing)]).toEqual([
      "2026-05-01",
      "2026-04-30",
      "Torch cells out of date",
    ]);
  });

  it("names the kit whose standing ends first", () => {
    const first = firstToEnd(kits, standings(kits));
    expect([first?.kit.id, first?.lapse.day]).toEqual(["a", "2026-02-15"]);
    expect(firstToEnd([], new Map())).toBeUndefined();
  });
});

describe("the year ahead of a kit", () => {
  it("is bands of one standing each", () => {
    const bands = bandsOf(sealed("a", "2026-04"), SAMPLE_PATTERN, RANGE, {});
    expect(bands.map(({ from, to, standing }) => `${from} ${to} ${standing}`)).toEqual([
      "2026-01-20 2026-02-24 ready",
      "2026-02-25 2026-04-30 ready-with-limits",
      "2026-05-01 2027-01-19 grounded",
    ]);
    expect(bandsOf(sealed("a", "2026-04"), SAMPLE_PATTERN, { from: "2026-02-02", to: "2026-02-01" }, {})).toEqual([]);
  });
});

describe("the record of a turnaround", () => {
  it("has every line of the pattern in order, answered or not, a line for each check", () => {
    const hand = new Hand().enrol().open();
    const value = { kind: "date" as const, date: "2027-03" };
    hand.write("step-answered", { turnaround: "t1", step: "look-torch", check: "cell-date", answer: "seen", value });
    const record = recordOf(kitOf(hand).turnaround, SAMPLE_PATTERN);
    expect(record).toHaveLength(SAMPLE_LINES.length + 1);
    expect(record.map((line) => line.line)).toEqual([1, 2, 2, 3, 3, 3, 4, 5, 6, 7, 8, 9, 10]);
    expect(record[4]).toMatchObject({ line: 3, text: "Read the date.", check: "cell-date", answer: "seen", value });
    expect(record[4]?.mark?.by).toBe("ann");
    expect(record[0]).toEqual({ line: 1, stage: "open", step: "open", text: "Open the lid." });
  });
});

describe("the record of a line that says what is done after its answers", () => {
  it("has it at the last check of the line, and nowhere else", () => {
    const afterwards = "Close it.";
    const stages = SAMPLE_PATTERN.stages.map((stage) => ({
      ...stage,
      steps: stage.steps.map((step) => (step.line === 3 ? { ...step, afterwards } : step)),
    }));
    const record = recordOf(undefined, { ...SAMPLE_PATTERN, stages });
    const told = record.filter((line) => line.afterwards !== undefined);
    expect(told).toMatchObject([{ line: 3, afterwards }]);
    expect(told[0]?.check).toBe(
      stages
        .flatMap(({ steps }) => steps)
        .find(({ line }) => line === 3)
        ?.checks.at(-1),
    );
  });
});

describe("open findings", () => {
  it("are proved by the checks that find their mode, or by those at which or on whose item they were raised", () => {
    const hand = new Hand().enrol();
    const base = { item: "torch", effect: "notes" as const, photos: [] };
    hand.write("finding-raised", { ...base, finding: "a", mode: "torch-dim" });
    hand.write("finding-raised", { ...base, finding: "b", mode: "other", note: "Rattles.", check: "light" });
    hand.write("finding-raised", { ...base, finding: "c", item: "pump", mode: "other", note: "Rattles." });
    const ids = kitOf(hand).findings.map((finding) => provingChecks(finding, SAMPLE_PATTERN).map((check) => check.id));
    expect(ids).toEqual([["light"], ["light"], ["turns", "paint"]]);
  });

  it("are listed oldest first, closed ones left out", () => {
    const hand = new Hand().enrol();
    const base = { item: "torch", mode: "torch-dim", effect: "limits" as const, photos: [] };
    hand.write("finding-raised", { ...base, finding: "new" }, "2026-01-15");
    hand.write("finding-raised", { ...base, finding: "old" }, "2026-01-11");
    hand.write("finding-raised", { ...base, finding: "gone" }, "2026-01-12");
    hand.write("remedy-made", { finding: "gone", how: "mended", note: "Done." }, "2026-01-16");
    hand.write("finding-proved", { finding: "gone", checks: [{ check: "light", answer: "seen" }] }, "2026-01-17");
    const aged = findingsByAge([kitOf(hand)], TODAY);
    expect(aged.map(({ finding, days }) => [finding.id, days])).toEqual([
      ["old", 9],
      ["new", 5],
    ]);
  });
});

describe("trends of runs", () => {
  it("take pulls and primes that led to a start and to water, and every delivery ratio", () => {
    const hand = new Hand().enrol().open().doAll().seal().open("t2", "00500");
    hand.write("pulls-counted", { turnaround: "t2", step: "start", pulls: 6, started: false });
    hand.write("prime-timed", { turnaround: "t2", step: "prime", seconds: 51, primed: true });
    const values = trendsOf(kitOf(hand)).map((trend) => [trend.what, trend.points.map((point) => point.value)]);
    expect(values).toEqual([
      ["pulls", [3]],
      ["prime", [32, 51]],
      ["delivery", []],
    ]);
  });
});
