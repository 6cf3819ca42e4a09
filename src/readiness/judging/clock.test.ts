import { describe, expect, it } from "vitest";
import type { Pattern } from "#kit";
import { ENGLISH } from "#words";
import { Hand, kitOf, SAMPLE_PATTERN } from "../kit/sample-kit.ts";
import { sealingRefusals } from "../kit/sealing.ts";
import { clockAt, endedBy } from "./clock.ts";
import { stepGate } from "./step-gate.ts";
import { sayRefusal } from "../kit/refusal.ts";

/** Warming runs the engine, which a seized pump forbids, and which proves it freed. */
const PATTERN: Pattern = {
  ...SAMPLE_PATTERN,
  modes: SAMPLE_PATTERN.modes.map((mode) =>
    mode.id === "pump-seized" ? { ...mode, forbids: ["start"] } : { ...mode, forbids: [] },
  ),
  stages: SAMPLE_PATTERN.stages.map((stage) => ({
    ...stage,
    steps: stage.steps.map((step) => (step.id === "warm" ? { ...step, hazards: ["runs-engine"] } : step)),
  })),
};
const WARM = { turnaround: "t1", step: "warm" };
const STOPPED = { ...WARM, started: "2026-01-10T00:02:00Z", seconds: 303, reached: true };
const SEIZED = { finding: "f1", item: "pump", mode: "pump-seized", effect: "grounds", photos: [] } as const;
const DARK = { finding: "f2", item: "torch", mode: "torch-dim", effect: "grounds", photos: [] } as const;

function at(by: Hand) {
  const kit = kitOf(by);
  return { kit, turnaround: kit.turnaround!, pattern: PATTERN };
}

function gateOf(by: Hand) {
  const step = PATTERN.stages.flatMap(({ steps }) => steps).find(({ id }) => id === "warm")!;
  return stepGate(step, clockAt(at(by), "warm"), "2026-01-10T09:00:00Z");
}

function running(): Hand {
  const by = new Hand().enrol().open();
  by.write("timer-started", WARM);
  return by;
}

describe("a run during which the engine has to be stopped", () => {
  it("READY-40 ends with the finding, and begins from nought after the mend", () => {
    const by = running();
    by.write("finding-raised", SEIZED);
    expect(clockAt(at(by), "warm")).toBeUndefined();
    expect(endedBy(at(by), "warm")?.id).toBe("f1");
    by.write("remedy-made", { finding: "f1", how: "mended", note: "Freed." });
    expect(gateOf(by)).toMatchObject({ open: false, because: "not-started" });
    by.write("timer-started", WARM);
    expect(endedBy(at(by), "warm")).toBeUndefined();
    expect(gateOf(by)).toMatchObject({ open: true });
  });

  it("READY-40 proves nothing where its clock went on and was stopped later, even for the sealing", () => {
    const by = running();
    by.write("finding-raised", SEIZED);
    by.write("remedy-made", { finding: "f1", how: "mended", note: "Freed." });
    by.write("finding-proved", { finding: "f1", checks: [{ check: "turns", answer: "seen" }] });
    by.doAll();
    by.write("timer-stopped", STOPPED);
    expect(gateOf(by)).toMatchObject({ open: false, because: "not-started" });
    const texts = sealingRefusals({ ...at(by), allKits: [] }).map((one) => sayRefusal(one, ENGLISH.held));
    expect(texts).toContain("Its time has not run: line 6, Warm it up.");
  });

  it("goes on through a finding that does not forbid it, and stands where it was over before", () => {
    const by = running();
    by.write("finding-raised", DARK);
    expect(clockAt(at(by), "warm")?.started).toBeDefined();
    by.write("timer-stopped", STOPPED);
    by.write("finding-raised", SEIZED);
    expect(gateOf(by)).toMatchObject({ open: true });
  });
});
