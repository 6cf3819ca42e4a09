import type { Bodies } from "#readiness";
import { beforeEach, describe, expect, it } from "vitest";
import { raiseFinding } from "../acts/finding-acts.ts";
import { enrolKit } from "../acts/kit-acts.ts";
import { answerStep, closeGrounded, openTurnaround } from "../acts/turnaround-acts.ts";
import { boardOf } from "../board.ts";
import { Desk, refusalsOf, SMALL_PATTERN } from "../sample-station.ts";
import {
  beginVisit,
  endVisit,
  neverFoundLines,
  paretoOf,
  planVisit,
  sizeOfVisit,
  reexamineLine,
  reachOf,
  sayReach,
  visitResult,
  type VisitWish,
} from "./index.ts";

const WISH: VisitWish = { places: ["north"], chance: 0.9, share: 0.1, seed: "0123456789abcdef" };
const TURNS = { kit: "k1", step: "look", check: "turns" } as const;
const VOLTS = { kit: "k1", step: "look", check: "volts" } as const;
const GOOD = { kind: "quantity", si: 1.5, dimension: "voltage", text: "1.5 V" } as const;

let desk: Desk;

/** A kit that Ann turned round. */
function turnedRound(kit: string, seal: string, turnsAs: "seen" | "wrong" = "seen"): void {
  const body = { name: `Kit ${kit}`, serial: `S-${kit}`, seal, items: [] };
  desk.do(enrolKit(desk.as("ann"), { kit, place: "north", pattern: "small@1", body }));
  const turnaround = `t-${kit}`;
  const at = { turnaround, step: "look" };
  desk.do(openTurnaround(desk.as("ann"), desk.kit(kit), { turnaround, because: "routine", sealSeen: seal }));
  desk.do(answerStep(desk.as("ann"), desk.kit(kit), { ...at, check: "turns", answer: turnsAs }));
  desk.do(answerStep(desk.as("ann"), desk.kit(kit), { ...at, check: "volts", answer: "seen", value: GOOD }));
  desk.do(closeGrounded(desk.as("ann"), desk.kit(kit), { turnaround, reason: "For the test.", seal: `${seal}-2` }));
}

beforeEach(() => {
  desk = new Desk();
});

const begin = (more: Partial<VisitWish> = {}, by = "cat") => beginVisit(desk.as(by), "v1", { ...WISH, ...more });
const visit = () => desk.fold.read().visits.find(({ id }) => id === "v1");
const look = (body: Bodies["line-reexamined"], by = "cat") => reexamineLine(desk.as(by), visit(), body);
const end = (body: Bodies["visit-ended"] = {}) => endVisit(desk.as("cat"), visit(), body);
const log = () => desk.fold.read();

describe("a visit is begun", () => {
  it("RULE-25 with a place, a chance and a share strictly between nothing and everything, by who assesses", () => {
    turnedRound("k1", "1");
    expect(refusalsOf(begin({ places: [] }))).toEqual(["SN-400"]);
    expect(refusalsOf(begin({ places: ["mars"] }))).toEqual(["SN-104", "SN-402"]);
    for (const chance of [0, 1, 1.2, -1, Number.NaN]) expect(refusalsOf(begin({ chance }))).toEqual(["SN-401"]);
    for (const share of [0, 1, 1.2]) expect(refusalsOf(begin({ share }))).toEqual(["SN-401"]);
    expect(refusalsOf(begin({ kits: 0 }))).toEqual(["SN-403"]);
    expect(refusalsOf(begin({ kits: 2 }))).toEqual(["SN-403"]);
    expect(refusalsOf(begin({ kits: 0.5 }))).toEqual(["SN-403"]);
    expect(refusalsOf(begin({ seed: "heads" }))).toEqual(["RD-102"]);
    expect(refusalsOf(begin({}, "ben"))).toEqual(["SN-103"]);
    expect(refusalsOf(begin())).toEqual([]);
  });

  it("RULE-25 says that there is nothing to compare: a place with no kit, a kit enrolled this morning", () => {
    expect(refusalsOf(begin())).toEqual(["SN-402"]);
    const body = { name: "Kit 1", serial: "S-1", seal: "1", items: [] };
    desk.do(enrolKit(desk.as("ann"), { kit: "k1", place: "north", pattern: "small@1", body }));
    expect(refusalsOf(begin())).toEqual(["SN-402"]);
    expect(planVisit(desk.as("cat"), WISH).frame.left.map(({ because }) => because)).toEqual(["nothing-written"]);
  });

  it("RULE-25 is told its size without a seed: every seed draws so many kits, and lines between the two", () => {
    for (let i = 1; i <= 12; i += 1) turnedRound(`k${i}`, `seal ${i}`);
    const { seed: _none, ...rule } = WISH;
    const size = sizeOfVisit(desk.as("cat"), rule);
    for (const seed of ["0123456789abcdef", "fedcba9876543210", "00000000000000aa"]) {
      const plan = planVisit(desk.as("cat"), { ...rule, seed });
      expect(plan.kits).toHaveLength(size.kits);
      expect(plan.lines.length).toBeGreaterThanOrEqual(size.lines.least.size);
      expect(plan.lines.length).toBeLessThanOrEqual(size.lines.most.size);
    }
    expect(sizeOfVisit(desk.as("cat"), { ...rule, kits: 40 }).kits).toBe(12);
    expect(sizeOfVisit(desk.as("cat"), { ...rule, places: [] }).kits).toBe(0);
  });

  it("RULE-25 with the sample that rule and seed give: kits first, then lines of those", () => {
    for (let i = 1; i <= 12; i += 1) turnedRound(`k${i}`, `seal ${i}`);
    const plan = planVisit(desk.as("cat"), WISH);
    expect(plan.ofKits).toMatchObject({ size: 8, wrong: 2 });
    expect(plan).toMatchObject({ all: 16, ofLines: { wrong: 2 } });
    expect(plan.lines).toHaveLength(plan.ofLines.size);
    desk.do(begin(), "cat");
    const { of, kits } = visit()!.begun;
    expect(kits).toBe(8);
    expect(of).toHaveLength(12);
    expect(of.filter(({ lines }) => lines !== undefined)).toHaveLength(8);
    expect(of.flatMap(({ lines = [] }) => lines)).toHaveLength(plan.ofLines.size);
    expect(visitResult(visit()!, log()).drawnAgain).toBe("same");
    const bent = { ...visit()!, begun: { ...visit()!.begun, seed: "ffffffffffffffff" } };
    expect(visitResult(bent, log()).drawnAgain).toBe("other");
    expect(visitResult(visit()!, { ...log(), kits: [] }).drawnAgain).toBe("not-known");
  });
});

describe("a line is looked at again", () => {
  beforeEach(() => {
    turnedRound("k1", "1");
    desk.do(begin(), "cat");
  });

  it("RULE-26 only where it was drawn, while the visit is on, and never by who wrote it", () => {
    expect(refusalsOf(look({ ...TURNS, answer: "seen" }, "ann"))).toEqual(["SN-407"]);
    expect(refusalsOf(look({ ...TURNS, answer: "seen" }, "ben"))).toEqual(["SN-103"]);
    expect(refusalsOf(look({ ...TURNS, check: "seal-number", answer: "seen" }))).toContain("SN-406");
    expect(refusalsOf(reexamineLine(desk.as("cat"), undefined, { ...TURNS, answer: "seen" }))).toEqual(["SN-405"]);
    expect(refusalsOf(look({ ...TURNS, answer: "seen" }))).toEqual([]);
    desk.do(end({ reason: "Dark." }), "cat");
    expect(refusalsOf(look({ ...TURNS, answer: "seen" }))).toEqual(["SN-405"]);
    expect(refusalsOf(end({ reason: "Dark." }))).toEqual(["SN-405"]);
  });

  it("RULE-26 as seen with its reading, and one that is right; as not possible with why", () => {
    expect(refusalsOf(look({ ...VOLTS, answer: "seen" }))).toEqual(["SN-127"]);
    expect(refusalsOf(look({ ...VOLTS, answer: "seen", value: { ...GOOD, si: 1.1, text: "1.1 V" } }))).toEqual([
      "SN-126",
    ]);
    expect(refusalsOf(look({ ...VOLTS, answer: "seen", value: GOOD }))).toEqual([]);
    expect(refusalsOf(look({ ...VOLTS, answer: "not-possible" }))).toEqual(["RD-102"]);
    expect(refusalsOf(look({ ...VOLTS, answer: "not-possible", why: "No meter." }))).toEqual([]);
  });

  it("RULE-27 as wrong only with a finding on the kit", () => {
    expect(refusalsOf(look({ ...TURNS, answer: "wrong" }))).toEqual(["SN-408"]);
    expect(refusalsOf(look({ ...TURNS, answer: "wrong", finding: "f1" }))).toEqual(["SN-408"]);
    raise("f1");
    expect(refusalsOf(look({ ...TURNS, answer: "wrong", finding: "f1" }))).toEqual([]);
  });

  it("RULE-28 ends once every line was looked at, or with why some were not", () => {
    desk.do(look({ ...TURNS, answer: "seen" }), "cat");
    expect(refusalsOf(end())).toEqual(["SN-409"]);
    expect(refusalsOf(end({ reason: " " }))).toContain("SN-409");
    desk.do(look({ ...VOLTS, answer: "seen", value: GOOD }), "cat");
    expect(refusalsOf(end())).toEqual([]);
  });

  it("READY-32 changes nothing of kits and standings", () => {
    const at = "2026-01-10T09:00:00Z";
    const before = structuredClone([log().kits, boardOf(log(), at)]);
    desk.do(look({ ...TURNS, answer: "seen" }), "cat");
    desk.do(look({ ...VOLTS, answer: "not-possible", why: "No meter." }), "cat");
    desk.do(end(), "cat");
    expect([log().kits, boardOf(log(), at)]).toEqual(before);
    expect(neverFoundLines(log(), 1).map(({ looks }) => looks)).toEqual([1, 1]);
  });
});

function raise(finding: string, kit = "k1"): void {
  const where = { step: "look", check: "turns" };
  const what = { finding, item: "pump", mode: "seized", effect: "grounds" as const, photos: [] };
  desk.do(raiseFinding(desk.as("cat"), desk.kit(kit), { ...where, ...what }), "cat");
}

/** Lines drawn in the one kit, those compared, and whether it is to be turned round. */
function toldOfKit() {
  const [kit] = visitResult(visit()!, log()).kits;
  return [kit!.lines.length, kit!.compared, kit!.isNotTurnedRound];
}

describe("what a visit showed", () => {
  it("is told: agreement, kappa, what was missed, and kits to be turned round", () => {
    desk.today = "2026-01-10";
    for (let i = 1; i <= 3; i += 1) turnedRound(`k${i}`, `seal ${i}`, i === 2 ? "wrong" : "seen");
    desk.today = "2026-01-20";
    desk.do(begin({ kits: 3, chance: 0.99, share: 0.01 }), "cat");
    for (const kit of ["k1", "k2", "k3"]) {
      const isWrong = kit !== "k3";
      if (isWrong) raise(`f-${kit}`, kit);
      const answer = isWrong ? ({ answer: "wrong", finding: `f-${kit}` } as const) : ({ answer: "seen" } as const);
      desk.do(look({ ...TURNS, kit, ...answer }), "cat");
      desk.do(look({ ...VOLTS, kit, answer: "seen", value: GOOD }), "cat");
    }
    desk.do(end(), "cat");
    const result = visitResult(visit()!, log());
    expect(result.missed.map(({ kit, check }) => `${kit} ${check}`)).toEqual(["k1 turns"]);
    expect(result.falseAlarms).toEqual([]);
    expect(result.agreed).toMatchObject({ count: 5, of: 6 });
    expect(result.wrong).toMatchObject({ count: 2, of: 6 });
    expect(result.kappa).toMatchObject({ kind: "told" });
    expect(result.kappa.kind === "told" && result.kappa.kappa).toBeCloseTo(4 / 7, 12);
    expect(result.kits.map(({ isNotTurnedRound }) => isNotTurnedRound)).toEqual([true, true, true]);
    const at = { turnaround: "t9", because: "routine" as const, sealSeen: "seal 1-2" };
    desk.do(openTurnaround(desk.as("ann"), desk.kit("k1"), at));
    expect(visitResult(visit()!, log()).kits.map(({ isNotTurnedRound }) => isNotTurnedRound)).toEqual([
      false,
      true,
      true,
    ]);
  });

  it("counts the lines compared, and calls no kit looked into of which only the closed container was seen", () => {
    const [first, ...others] = SMALL_PATTERN.stages;
    desk = new Desk({ ...SMALL_PATTERN, stages: [{ ...first!, id: "open" }, ...others] });
    turnedRound("k1", "1");
    desk.today = "2026-01-20";
    desk.do(begin(), "cat");
    desk.do(look({ ...TURNS, answer: "seen" }), "cat");
    desk.do(look({ ...VOLTS, answer: "not-possible", why: "No meter." }), "cat");
    expect(toldOfKit()).toEqual([2, 1, false]);
    desk.do(look({ ...VOLTS, answer: "seen", value: GOOD }), "cat");
    expect(toldOfKit()).toEqual([2, 2, true]);
  });

  it("says that kappa cannot be told where all lines were right, and nothing of a visit at which nothing was looked at", () => {
    turnedRound("k1", "1");
    desk.do(begin(), "cat");
    const none = visitResult(visit()!, log());
    expect(none.kappa).toEqual({ kind: "cannot-tell", because: "nothing-compared" });
    expect([none.agreed, none.wrong]).toEqual([undefined, undefined]);
    desk.do(look({ ...TURNS, answer: "seen" }), "cat");
    const one = visitResult(visit()!, log());
    expect(one.kappa).toEqual({ kind: "cannot-tell", because: "one-word-only" });
    expect(one.agreed).toMatchObject({ count: 1, of: 1 });
    expect([reachOf(visit()!, none).ofLines, reachOf(visit()!, none).ofKits]).toEqual([0, 0]);
    const { share } = visit()!.begun;
    expect(reachOf(visit()!, one)).toMatchObject({ lines: 1, kits: 1, ofKits: 1 });
    expect(share).toBe(0.1);
    expect(reachOf(visit()!, one)).toMatchObject({ ofLines: 1 / 2, isLeast: false });
    const bare = visitResult(visit()!, { ...log(), patterns: new Map() });
    expect(reachOf(visit()!, bare).isLeast).toBe(true);
    expect(reachOf(visit()!, bare).ofLines).toBeCloseTo(share, 12);
    expect(sayReach(visit()!, reachOf(visit()!, one))).toContain("1 line in 1 of 1 kits looked at.");
  });
});

describe("how far a visit reached", () => {
  it("is the chance it was drawn by, where every line that was drawn was looked at", () => {
    for (let i = 1; i <= 12; i += 1) turnedRound(`k${i}`, `seal ${i}`);
    const plan = planVisit(desk.as("cat"), WISH);
    desk.do(begin(), "cat");
    for (const { kit, step, check } of plan.lines) {
      const value = check === "volts" ? { value: GOOD } : {};
      desk.do(look({ kit, step, check, answer: "seen", ...value }), "cat");
    }
    desk.do(end(), "cat");
    const reach = reachOf(visit()!, visitResult(visit()!, log()));
    expect(reach).toMatchObject({ lines: plan.ofLines.size, isLeast: false });
    expect(reach.ofLines).toBeCloseTo(plan.ofLines.chance, 12);
    expect(reach.ofLines).toBeGreaterThanOrEqual(WISH.chance);
    expect(sayReach(visit()!, reach)).not.toContain("or more");
  });
});

describe("where findings fall", () => {
  it("counts by item, mode, place and pattern over a span, most first, and ends at all of them", () => {
    turnedRound("k1", "1");
    turnedRound("k2", "2");
    for (const [finding, kit] of [
      ["f1", "k1"],
      ["f2", "k2"],
      ["f3", "k2"],
    ] as const)
      raise(finding, kit);
    const volts = { finding: "f4", item: "cells", mode: "other", effect: "notes" as const, photos: [], note: "Green." };
    desk.do(raiseFinding(desk.as("cat"), desk.kit("k1"), volts), "cat");
    const span = { from: "2026-01-10", to: "2026-01-10" };
    expect(paretoOf(log(), "item", span)).toEqual([
      { key: "small pump", label: "Pump", count: 3, share: 0.75, upTo: 0.75 },
      { key: "small cells", label: "Cells", count: 1, share: 0.25, upTo: 1 },
    ]);
    expect(paretoOf(log(), "mode", span).map(({ label }) => label)).toEqual(["Pump: seized", "Cells: something else"]);
    expect(paretoOf(log(), "place", span)).toMatchObject([{ label: "north", count: 4, upTo: 1 }]);
    expect(paretoOf(log(), "pattern", span)).toMatchObject([{ label: "Small pump", count: 4 }]);
    expect(paretoOf(log(), "item", { from: "2026-01-11", to: "2026-02-01" })).toEqual([]);
  });

  it("tells lines that never found anything in so many openings, with what they may still find", () => {
    turnedRound("k1", "1");
    turnedRound("k2", "2");
    turnedRound("k3", "3", "wrong");
    expect(neverFoundLines(log(), 3).map(({ check, looks, line }) => [check.id, looks, line])).toEqual([
      ["volts", 3, 1],
    ]);
    expect(neverFoundLines(log(), 3)[0]!.below).toBeCloseTo(1 - 0.05 ** (1 / 3), 12);
    expect(neverFoundLines(log(), 4)).toEqual([]);
  });
});
