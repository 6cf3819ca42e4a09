import type { Check, Pattern } from "#kit";
import { ENGLISH } from "#words";
import { describe, expect, it } from "vitest";
import { standingOf } from "../standing/standing.ts";
import { isToldAlone, datesOf, datesUnknown, lastGoodDay } from "./life.ts";
import { Hand, kitOf, SAMPLE_PATTERN } from "./sample-kit.ts";
import { sealingRefusals } from "./sealing.ts";
import { standingInWords } from "../standing/in-words.ts";

const SHEET = { file: "kits.csv", row: 4 };
const gasket = SAMPLE_PATTERN.items.find(({ id }) => id === "gasket")!;

function fromSheet(): Hand {
  const hand = new Hand();
  const read = [
    { item: "gasket", of: "fitted" as const, date: "2025-06-01" },
    { item: "gasket", of: "made" as const, date: "2025-02" },
  ];
  hand.write("kit-enrolled", { name: "Kit 1", serial: "S-1", seal: "00417", items: [], read, sheet: SHEET });
  return hand;
}

const LOOK: Check = { id: "lid", kind: "look", item: "gasket", ask: "Press it.", expect: "Springs back.", finds: [] };
/** The sample pattern with its lid gasket in the hand at the line that opens the lid. */
const IN_HAND: Pattern = {
  ...SAMPLE_PATTERN,
  checks: [...SAMPLE_PATTERN.checks, LOOK],
  stages: SAMPLE_PATTERN.stages.map((stage) =>
    stage.id === "open" ? { ...stage, steps: stage.steps.map((step) => ({ ...step, checks: ["lid"] })) } : stage,
  ),
};

function dateRefusals(hand: Hand): readonly (string | undefined)[] {
  const kit = kitOf(hand);
  const held = sealingRefusals({ kit, turnaround: kit.turnaround!, pattern: IN_HAND, allKits: [kit] });
  return held.filter(({ rule }) => rule === "date").map(({ item }) => item);
}

describe("what a sheet tells", () => {
  it("is marked as told, with every date it has of one thing", () => {
    const kit = kitOf(fromSheet());
    expect(kit.sheet).toEqual(SHEET);
    expect(kit.dates?.["gasket"]).toMatchObject({ fitted: "2025-06-01", made: "2025-02", told: true });
    expect(datesOf(kit, gasket, SAMPLE_PATTERN)).toEqual({ fitted: "2025-06-01", made: "2025-02-01" });
  });

  it("counts for the day of a lapse, and is asked for at the first turnaround all the same", () => {
    const kit = kitOf(fromSheet());
    expect(lastGoodDay(gasket, datesOf(kit, gasket, SAMPLE_PATTERN))).not.toBe("unknown");
    expect(datesUnknown(kit, SAMPLE_PATTERN).map(({ id }) => id)).toContain("gasket");
  });

  it("gives way to what is read off the thing, or to a new one", () => {
    const hand = fromSheet();
    hand.write("date-read", { item: "gasket", of: "fitted", date: "2025-07-01" });
    expect(isToldAlone(kitOf(hand), gasket, SAMPLE_PATTERN)).toBe(false);
    const other = fromSheet();
    other.write("item-fitted", { item: "gasket", fitted: "2026-01-02", quantity: 1 });
    expect(isToldAlone(kitOf(other), gasket, SAMPLE_PATTERN)).toBe(false);
  });

  it("does not overwrite what was read before the sheet came in", () => {
    const hand = new Hand();
    hand.write("date-read", { item: "gasket", of: "fitted", date: "2025-07-01" });
    const read = [{ item: "gasket", of: "fitted" as const, date: "2025-06-01" }];
    hand.write("kit-enrolled", { name: "Kit 1", serial: "S-1", items: [], read, sheet: SHEET });
    expect(kitOf(hand).dates?.["gasket"]).toMatchObject({ fitted: "2025-07-01" });
  });

  it("READY-27 of a turnaround makes no kit ready, dates no lapse and is none of its turnarounds", () => {
    const hand = fromSheet();
    const before = standingOf(kitOf(hand), SAMPLE_PATTERN, "2026-01-10", {});
    hand.write("turnaround-told", { day: "2026-01-05", doneBy: "M. Hale", result: "All good", sheet: SHEET });
    const kit = kitOf(hand);
    expect(standingOf(kit, SAMPLE_PATTERN, "2026-01-10", {})).toEqual(before);
    expect([before.standing, standingInWords(before, ENGLISH.standing).because[0]?.text]).toEqual([
      "grounded",
      "New, first turnaround to do.",
    ]);
    expect(kit.turnarounds).toEqual([]);
    expect(kit.told).toMatchObject([{ day: "2026-01-05", doneBy: "M. Hale", result: "All good", sheet: SHEET }]);
  });

  it("holds the seal back until the thing itself was read, at the line where it is in the hand", () => {
    const hand = fromSheet().open();
    hand.write("step-answered", { turnaround: "t1", step: "open", check: "lid", answer: "seen" });
    hand.doAll();
    expect(dateRefusals(hand)).toEqual(["gasket"]);
    hand.write("date-read", { item: "gasket", of: "fitted", date: "2025-06-01", turnaround: "t1", step: "open" });
    expect(dateRefusals(hand)).toEqual([]);
  });
});
