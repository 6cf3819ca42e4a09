import type { Person } from "#readiness";
import { describe, expect, it } from "vitest";
import type { Act, ActContext } from "../acts/draft.ts";
import { dateWork, planOpenings, putOffWork, setAbsence, setHours, takeWork } from "./work-acts.ts";

const KIT = { id: "k1", name: "Kit 1", place: "north", pattern: "sample@1" } as ActContext["kits"][number];
const ANN: Person = { id: "ann", name: "Ann", role: "crew", left: false };
const BEN: Person = { id: "ben", name: "Ben", role: "keeper", left: false };
const CAT: Person = { id: "cat", name: "Cat", role: "commander", left: false };

function doing(me: Person): ActContext {
  const empty = { parts: [], kits: [], places: [], boats: [], devices: [], patterns: new Map() };
  return { ...empty, me, today: "2026-06-15", people: [ANN, BEN, CAT] };
}

const LINE = { kit: KIT, work: "opening", groundsAfter: "2026-07-10", isGrounding: false } as const;

function codes(act: Act): readonly string[] {
  return act.kind === "entry" ? [] : act.because.map(({ code }) => code);
}

describe("what people say of work due", () => {
  it("is a line about the kit, at its place and under its pattern", () => {
    expect(takeWork(doing(ANN), LINE, "ann")).toEqual({
      kind: "entry",
      draft: {
        subject: "kit:k1",
        kind: "work-taken",
        body: { work: "opening", person: "ann" },
        place: "north",
        pattern: "sample@1",
      },
    });
    expect(codes(takeWork(doing(ANN), LINE, undefined))).toEqual([]);
  });

  it("is given to others by a keeper alone, and only to who may work on kits", () => {
    expect(codes(takeWork(doing(ANN), LINE, "ben"))).toEqual(["SN-211"]);
    expect(codes(takeWork(doing(BEN), LINE, "ann"))).toEqual([]);
    expect(codes(takeWork(doing(BEN), LINE, "cat"))).toEqual(["SN-213"]);
    expect(codes(takeWork(doing(CAT), LINE, "cat"))).toContain("SN-103");
  });

  it("never gives a day or puts off past the day that grounds", () => {
    expect(codes(dateWork(doing(ANN), LINE, "2026-07-10"))).toEqual([]);
    expect(codes(dateWork(doing(ANN), LINE, "2026-07-11"))).toEqual(["SN-216"]);
    expect(codes(dateWork(doing(ANN), LINE, "2026-06-14"))).toEqual(["SN-214"]);
    const reason = "Waiting for a gasket.";
    expect(codes(putOffWork(doing(ANN), LINE, { until: "2026-07-10", reason }))).toEqual([]);
    expect(codes(putOffWork(doing(ANN), LINE, { until: "2026-07-11", reason }))).toEqual(["SN-216"]);
    expect(codes(putOffWork(doing(ANN), { ...LINE, isGrounding: true }, { until: "2026-07-01", reason }))).toEqual([
      "SN-215",
    ]);
    expect(codes(putOffWork(doing(ANN), LINE, { until: "2026-07-01", reason: " " }))).toEqual(["RD-102"]);
  });

  it("never puts a muster off past its own last day, nor at all once that is past", () => {
    const muster = { kit: KIT, work: "muster", latest: "2026-06-20", isGrounding: false } as const;
    const reason = "Nobody is there.";
    const { latest: _latest, ...past } = muster;
    expect(codes(putOffWork(doing(ANN), muster, { until: "2026-06-20", reason }))).toEqual([]);
    expect(codes(putOffWork(doing(ANN), muster, { until: "2026-06-21", reason }))).toEqual(["SN-216"]);
    expect(codes(putOffWork(doing(ANN), past, { until: "2026-06-16", reason }))).toEqual(["SN-216"]);
    expect(codes(dateWork(doing(ANN), past, "2026-06-16"))).toEqual([]);
  });

  it("plans openings on Mondays that are not past", () => {
    const opening = { id: "o1", week: "2026-06-15", renews: ["fuel"], by: ["ann"] };
    expect(codes(planOpenings(doing(BEN), KIT, [opening]))).toEqual([]);
    expect(codes(planOpenings(doing(BEN), KIT, [{ ...opening, week: "2026-06-16" }]))).toEqual(["RD-102"]);
    expect(codes(planOpenings(doing(BEN), KIT, [{ ...opening, week: "2026-06-08" }]))).toEqual(["SN-217"]);
    expect(codes(planOpenings(doing(ANN), KIT, [opening]))).toEqual(["SN-103"]);
  });

  it("lets each say their own days away, and a keeper those of others", () => {
    const days = { from: "2026-07-01", to: "2026-07-14" };
    expect(codes(setAbsence(doing(ANN), "ann", days))).toEqual([]);
    expect(codes(setAbsence(doing(ANN), "ben", days))).toEqual(["SN-212"]);
    expect(codes(setAbsence(doing(BEN), "ann", days))).toEqual([]);
    expect(codes(setAbsence(doing(BEN), "nobody", days))).toEqual(["SN-218"]);
    expect(codes(setAbsence(doing(BEN), "ann", { from: "2026-07-14", to: "2026-07-01" }))).toEqual(["RD-102"]);
    expect(codes(setHours(doing(BEN), "ann", 4))).toEqual([]);
    expect(codes(setHours(doing(BEN), "ann", 169))).toEqual(["RD-102"]);
  });
});
