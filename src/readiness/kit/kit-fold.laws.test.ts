import type { Entry } from "#log";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { shuffled } from "#src/log/testing/shuffled.ts";
import { Hand, kitFrom } from "./sample-kit.ts";
import { standingOf } from "../standing/standing.ts";
import { SAMPLE_PATTERN } from "./sample-kit.ts";

/** What one of two devices may do next; whatever it is, the log must read the same on both. */
const DEEDS: readonly ((hand: Hand) => unknown)[] = [
  (hand) => hand.open("t1"),
  (hand) => hand.open("t2"),
  (hand) => hand.write("step-answered", { turnaround: "t1", step: "open", answer: "seen" }),
  (hand) => hand.write("step-answered", { turnaround: "t1", step: "open", answer: "wrong" }),
  (hand) => hand.write("pulls-counted", { turnaround: "t1", step: "start", pulls: 2, started: true }),
  (hand) => hand.write("item-fitted", { item: "cells", fitted: "2026-01-10", printed: "2028-01", quantity: 2 }),
  (hand) => hand.write("item-fitted", { item: "cells", fitted: "2026-01-10", printed: "2027-01", quantity: 2 }),
  (hand) => hand.seal("00500", "t1"),
  (hand) => hand.seal("00501", "t1"),
  (hand) => hand.write("closed-grounded", { turnaround: "t2", reason: "Dark." }),
  (hand) => hand.write("mustered", { sealSeen: "00500", containerSound: true }),
  (hand) => hand.write("handed-over", { to: "the vessel", method: "line", sealBroken: false }),
  (hand) => hand.write("returned", { exposure: ["salt"] }),
  (hand) =>
    hand.write("handed-over", { to: "a", method: "line", sealBroken: false, lent: [{ name: "fuel can", count: 2 }] }),
  (hand) => hand.write("returned", { exposure: [], lent: [{ name: "fuel can", count: 1 }] }),
  (hand) => hand.write("lent-settled", { returned: lastReturn(hand), name: "fuel can", how: "came-back" }),
  (hand) =>
    hand.write("returned", {
      exposure: ["fuel", "oil"],
      counted: [{ item: "pump", as: "damaged" }],
      findings: [{ finding: "f", item: "pump", mode: "pump-scratched", effect: "notes" }],
    }),
  (hand) => hand.write("flushed", {}),
  (hand) =>
    hand.write("finding-raised", { finding: "f", item: "pump", mode: "pump-seized", effect: "grounds", photos: [] }),
  (hand) => hand.write("remedy-made", { finding: "f", how: "mended", note: "Freed." }),
  (hand) => hand.write("finding-proved", { finding: "f", checks: [{ check: "turns", answer: "seen" }] }),
  (hand) => hand.write("kit-moved", { to: "south" }),
  (hand) => strikeLast(hand),
];

function lastReturn(hand: Hand): string {
  return hand.entries.findLast(({ kind }) => kind === "returned")?.id ?? "none";
}

function strikeLast(hand: Hand): void {
  const last = hand.entries.at(-1);
  if (last && last.kind !== "struck") hand.write("struck", { entry: last.id, reason: "Mistaken." });
}

const deeds = fc.array(fc.integer({ min: 0, max: DEEDS.length - 1 }), { maxLength: 25 });

/** What two devices wrote, apart, after the same beginning. */
const apart = fc.tuple(deeds, deeds, deeds).map(([together, one, other]) => {
  const tablet = new Hand().enrol();
  for (const deed of together) DEEDS[deed]?.(tablet);
  const phone = tablet.fork("phone");
  for (const deed of one) DEEDS[deed]?.(tablet);
  for (const deed of other) DEEDS[deed]?.(phone);
  return [...tablet.entries, ...phone.entries] as readonly Entry[];
});

describe("the fold of a kit", () => {
  it("is the same whatever the order in which entries arrive", () => {
    fc.assert(
      fc.property(apart, fc.infiniteStream(fc.nat()), (entries, keys) => {
        const mixed = shuffled(entries, keys);
        expect(kitFrom(mixed)).toEqual(kitFrom(entries));
      }),
      { seed: 20260110, numRuns: 300 },
    );
  });

  it("is the same when entries come one by one, each twice", () => {
    fc.assert(
      fc.property(apart, (entries) => {
        expect(kitFrom(entries.flatMap((entry) => [entry, entry]))).toEqual(kitFrom(entries));
      }),
      { seed: 20260111, numRuns: 100 },
    );
  });

  it("always has a standing with a reason, and never calls a kit ready with something to settle", () => {
    fc.assert(
      fc.property(apart, (entries) => {
        const kit = kitFrom(entries);
        const { standing, because } = standingOf(kit, SAMPLE_PATTERN, "2026-01-20", {});
        expect(because.length).toBeGreaterThan(0);
        if (kit.toSettle.length > 0) expect(["grounded", "open", "away"]).toContain(standing);
      }),
      { seed: 20260112, numRuns: 300 },
    );
  });
});
