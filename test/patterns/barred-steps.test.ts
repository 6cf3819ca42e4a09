import { describe, expect, it } from "vitest";
import { allSteps, workOf, type Pattern } from "#kit";
import { barsAt, proofWanted, type KitState } from "#readiness";
import { shippedPattern } from "./shipped-patterns.ts";

/** What the shipped patterns bar while a finding grounds, step by step, against what a keeper would not do. */

const MARK = { entry: "e1", at: "2026-01-10T08:00:00Z", by: "ann", device: "tablet" };

function barredBy(pattern: Pattern, mode: string, step: string): readonly string[] {
  const { item } = pattern.modes.find(({ id }) => id === mode)!;
  const finding = {
    id: "f1",
    item,
    mode,
    effect: "grounds",
    photos: [],
    raised: MARK,
    turnaround: "t1",
    step,
    remedies: [],
  };
  const turnaround = {
    id: "t1",
    because: "routine",
    opened: { ...MARK, sealSeen: "1" },
    answers: {},
    timers: {},
    measured: [],
  };
  const kit = { findings: [finding], turnarounds: [], turnaround } as unknown as KitState;
  return allSteps(pattern)
    .filter(({ id }) => barsAt({ kit, turnaround, pattern }, id).length > 0)
    .map(({ id }) => id);
}

describe("the petrol kit", () => {
  const pattern = shippedPattern("brinnet-450@2");

  it("with its fuel coupling cut: no open cock, no start, no wrapping, no lid", () => {
    const barred = barredBy(pattern, "coupling-o-ring-cut", "fuel-coupling-step");
    for (const step of [
      "carburettor-step",
      "prime-start-ready",
      "start",
      "warm",
      "pull-spare",
      "wrap-set",
      "wipe-rim",
      "close-clamp",
    ])
      expect(barred).toContain(step);
    for (const step of ["oil-step", "ports", "stop-run", "stop-spare", "part-fuel-line", "stow-tools", "fit-seal"])
      expect(barred).not.toContain(step);
  });

  it("with water in its petrol: no start, and the tank may be drained and filled", () => {
    const barred = barredBy(pattern, "fuel-water", "fuel-sample-step");
    expect(barred).toContain("start");
    expect(barred).not.toContain("refuel");
  });

  it("with a worn fold in the discharge hose: nothing is pumped, and the set may be started dry for its carburettor", () => {
    const barred = barredBy(pattern, "discharge-fold-worn", "discharge-hose-step");
    expect(barred).toContain("warm");
    expect(barred).not.toContain("dry-carburettor");
  });

  it("never bars a line that stops, airs or shuts something", () => {
    const ending = ["vent", "air-fuel", "stop-run", "stop-spare", "dry-uncouple", "part-fuel-line"];
    for (const step of allSteps(pattern).filter(({ id }) => ending.includes(id))) expect(workOf(step)).toEqual([]);
  });

  const proofOf = (mode: string, item: string) => {
    const finding = { mode, item } as Parameters<typeof proofWanted>[0];
    return proofWanted(finding, pattern);
  };

  it("proves a mended leak by a run, not by a look alone", () => {
    const proof = proofOf("coupling-o-ring-cut", "fuel-coupling").map(({ id }) => id);
    expect(proof).toEqual(["coupling-o-ring-look", "carburettor-look", "starts-in-six", "runs-through-range"]);
  });

  it.each(pattern.modes.filter(({ provedBy = [] }) => provedBy.includes("runs-through-range")))(
    "proves $name by looking for fuel with white paper, beside the run",
    ({ id, item }) => {
      const wiped = proofOf(id, item).filter(({ ask, expect: right }) => /white paper/.test(ask) && /dry/.test(right));
      expect(wiped).not.toEqual([]);
    },
  );
});

describe("READY-26 the petrol kit with its fuel coupling parted, one of its two checks answered", () => {
  const pattern = shippedPattern("brinnet-450@2");
  const held = (...seen: readonly string[]) => {
    const answers = Object.fromEntries(seen.map((key) => [key, { answer: "seen" }]));
    const turnaround = { id: "t1", answers, timers: {}, measured: [] } as never;
    const kit = { findings: [], turnarounds: [], turnaround } as unknown as KitState;
    return (step: string) => barsAt({ kit, turnaround, pattern }, step);
  };
  const half = held("fuel-coupling-step/coupling-o-ring-look");

  it.each(["carburettor-step", "prime-start-ready", "start", "wrap-set", "close-clamp"])("bars %s", (step) => {
    expect(half(step)).toMatchObject([{ step: "fuel-coupling-step", open: "coupling-parts" }]);
  });

  it("bars no line before it, none that its work does not touch, and not itself", () => {
    for (const step of ["fuel-sample-step", "oil-step", "rig-suction", "fuel-coupling-step"])
      expect(half(step)).toEqual([]);
  });

  it("bars nothing once both are answered, nor before either is", () => {
    const done = held("fuel-coupling-step/coupling-o-ring-look", "fuel-coupling-step/coupling-parts");
    expect([...done("carburettor-step"), ...held()("carburettor-step")]).toEqual([]);
  });
});

describe("the electric kit", () => {
  it("with a damaged cable is not plugged in", () => {
    const barred = barredBy(shippedPattern("ossel-200@2"), "cable-damaged", "examine-cable");
    expect(barred).toEqual(
      expect.arrayContaining(["rig-rcd", "run-start", "run-five", "run-measure", "run-float", "run-flush"]),
    );
    expect(barred).not.toContain("dry-pump");
  });
});
