import { describe, expect, it } from "vitest";
import type { Pattern, Step } from "#kit";
import { ENGLISH } from "#words";
import type { Bodies } from "../kinds/kinds.ts";
import { Hand, kitOf, SAMPLE_PATTERN } from "../kit/sample-kit.ts";
import { sayWorks } from "./bar-words.ts";
import { barsAt } from "./barred.ts";

/** The sample with work in it: starting pulls a cord, warming runs the engine, refuelling opens the fuel. */
const DOES: Readonly<Record<string, Partial<Step>>> = {
  "look-pump": { does: ["water"] },
  start: { hazards: ["pulls-cord"] },
  warm: { hazards: ["runs-engine", "pumps-water"] },
  refuel: { hazards: ["fills-fuel"] },
  close: { does: ["lid"] },
};

const PATTERN: Pattern = {
  ...SAMPLE_PATTERN,
  modes: SAMPLE_PATTERN.modes.map((mode) =>
    mode.id === "pump-seized" ? { ...mode, forbids: ["start", "water"] } : mode,
  ),
  stages: SAMPLE_PATTERN.stages.map((stage) => ({
    ...stage,
    steps: stage.steps.map((step) => ({ ...step, ...DOES[step.id] })),
  })),
};

const WHERE = { turnaround: "t1", step: "look-pump", check: "turns" };
const SEIZED = { finding: "f1", item: "pump", mode: "pump-seized", effect: "grounds", photos: [], ...WHERE } as const;

const TOO_LOW: Bodies["delivery-measured"] = {
  turnaround: "t1",
  step: "warm",
  method: "timed-fill",
  lift: 2,
  rise: 1,
  throttle: 1,
  flow: 0.002,
  flowUncertainty: 1e-4,
  expected: 0.004,
  ratio: 0.5,
  verdict: "grounds",
  readings: {},
};

function hand(): Hand {
  return new Hand().enrol().open();
}

function barredBy(by: Hand): Readonly<Record<string, string>> {
  const kit = kitOf(by);
  const at = { kit, turnaround: kit.turnaround!, pattern: PATTERN };
  const steps = PATTERN.stages.flatMap((stage) => stage.steps);
  const found = steps.map(
    ({ id }) =>
      [
        id,
        barsAt(at, id)
          .map((bar) => bar.works.join("+"))
          .join(" "),
      ] as const,
  );
  return Object.fromEntries(found.filter(([, works]) => works !== ""));
}

describe("what a grounding finding bars", () => {
  it("is the work that its mode forbids, at every step that does it, and nothing else", () => {
    const by = hand();
    by.write("finding-raised", SEIZED);
    expect(barredBy(by)).toEqual({ "look-pump": "water", start: "start", warm: "start+water" });
  });

  it("is nothing where it only limits or is noted", () => {
    const by = hand();
    by.write("finding-raised", { ...SEIZED, mode: "pump-scratched", effect: "notes" });
    expect(barredBy(by)).toEqual({});
  });

  it("ends once something was done about it, and comes back when its line is found wrong again", () => {
    const by = hand();
    by.write("finding-raised", SEIZED);
    by.write("remedy-made", { finding: "f1", how: "mended", note: "Freed it." });
    expect(barredBy(by)).toEqual({});
    by.write("step-answered", { ...WHERE, answer: "wrong" });
    expect(Object.keys(barredBy(by))).toEqual(["look-pump", "start", "warm"]);
    by.write("remedy-made", { finding: "f1", how: "mended", note: "Changed the bearing." });
    expect(barredBy(by)).toEqual({});
    by.write("finding-proved", { finding: "f1", checks: [{ check: "turns", answer: "seen" }] });
    expect(barredBy(by)).toEqual({});
  });

  it("lets the check that found it be made again, and no other of its step", () => {
    const by = hand();
    by.write("finding-raised", SEIZED);
    const kit = kitOf(by);
    const at = { kit, turnaround: kit.turnaround!, pattern: PATTERN };
    expect(barsAt(at, "look-pump", "turns")).toEqual([]);
    expect(barsAt(at, "look-pump", "paint")).toHaveLength(1);
  });

  it("counts a line found wrong for which nobody raised a finding yet", () => {
    const by = hand();
    by.write("step-answered", { ...WHERE, answer: "wrong" });
    expect(barredBy(by)).toEqual({ "look-pump": "water", start: "start", warm: "start+water" });
  });

  it("names the line and the check that found it, with a finding and without", () => {
    const by = hand();
    by.write("step-answered", { ...WHERE, answer: "wrong" });
    const found = () => barsAt({ kit: kitOf(by), turnaround: kitOf(by).turnaround!, pattern: PATTERN }, "start")[0];
    expect(found()).toMatchObject({ step: "look-pump", check: "turns" });
    by.write("finding-raised", SEIZED);
    expect(found()).toMatchObject({ finding: "f1", step: "look-pump", check: "turns" });
  });

  it("lets a delivery that was measured too low be answered where it was measured, and bars what comes after", () => {
    const by = hand();
    by.write("delivery-measured", TOO_LOW);
    const kit = kitOf(by);
    const at = { kit, turnaround: kit.turnaround!, pattern: PATTERN };
    expect(barsAt(at, "warm")).toEqual([]);
    expect(barsAt(at, "start").map(({ works }) => works.join())).toEqual(["start"]);
  });

  it("is starting for a fault that the pattern does not know, unless the step it was found at tells more", () => {
    const by = hand();
    by.write("finding-raised", { ...SEIZED, mode: "other", note: "Smells odd." });
    expect(barredBy(by)).toEqual({ start: "start", warm: "start" });
    const atFuel = hand();
    const { check: _check, ...whole } = SEIZED;
    atFuel.write("finding-raised", { ...whole, mode: "other", step: "refuel", note: "Can leaks." });
    expect(Object.keys(barredBy(atFuel))).toEqual(["start", "warm", "refuel", "close"]);
  });

  it("is told in words", () => {
    expect(sayWorks(["fuel", "start"], ENGLISH.held)).toBe("letting fuel flow, starting it");
  });
});
