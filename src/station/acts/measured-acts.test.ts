import { describe, expect, it } from "vitest";
import type { Pattern } from "#kit";
import type { Bodies } from "#readiness";
import { Desk, refusalsOf, SMALL_PATTERN } from "../sample-station.ts";
import { enrolKit } from "./kit-acts.ts";
import { answerStep, measureDelivery, openTurnaround } from "./turnaround-acts.ts";

/** The small pattern with figures for its pump, and a line at which its delivery is measured. */
const PUMP: Pattern = {
  ...SMALL_PATTERN,
  hydraulics: {} as NonNullable<Pattern["hydraulics"]>,
  checks: SMALL_PATTERN.checks.map((check) =>
    check.id === "volts"
      ? { ...check, id: "share", kind: "measure", item: "pump", dimension: "ratio", unit: "%", atLeast: 0.9 }
      : check,
  ),
  stages: SMALL_PATTERN.stages.map((stage) => ({
    ...stage,
    steps: stage.steps.map((step) =>
      step.id === "look" ? { ...step, checks: ["share"], measuresDelivery: true } : { ...step, measuresDelivery: true },
    ),
  })),
};

const LOOK = { turnaround: "t1", step: "look" };
const RUN: Bodies["delivery-measured"] = {
  ...LOOK,
  method: "timed-fill",
  lift: 2,
  rise: 1,
  throttle: 1,
  flow: 0.0038,
  flowUncertainty: 1e-4,
  expected: 0.004,
  ratio: 0.95,
  verdict: "as-expected",
  readings: {},
};

function opened(): Desk {
  const made = new Desk(PUMP);
  const items = [{ item: "cells", fitted: "2026-01-01", printed: "2027-03", quantity: 2 }];
  const body = { name: "Kit 1", serial: "S-1", items };
  made.do(enrolKit(made.as("ann"), { kit: "k1", place: "north", pattern: "small@1", body }));
  made.do(openTurnaround(made.as("ben"), made.kit(), { turnaround: "t1", because: "routine", sealSeen: "" }));
  return made;
}

function answered(made: Desk, body: Omit<Bodies["step-answered"], "turnaround">): readonly string[] {
  return refusalsOf(answerStep(made.as("ben"), made.kit(), { turnaround: "t1", ...body }));
}

function shareOf(si: number) {
  return { kind: "quantity", si, dimension: "ratio", text: `${100 * si} %` } as const;
}
const SEEN = { step: "look", check: "share", answer: "seen" } as const;

describe("READY-39 a delivery that nobody measured, by the station's rule", () => {
  it("is no answer: neither a bare share, nor done as written; that it was not possible is", () => {
    const made = opened();
    expect(answered(made, { ...SEEN, value: shareOf(0.91) })).toEqual(["SN-264"]);
    expect(answered(made, { step: "stow", answer: "seen" })).toEqual(["SN-264"]);
    const card = { fromCard: true, cardAt: "2027-03-14T09:00:00Z" };
    expect(answered(made, { ...SEEN, ...card, value: shareOf(0.91) })).toEqual([]);
    expect(answered(made, { step: "look", check: "share", answer: "wrong" })).toEqual([]);
    expect(answered(made, { step: "stow", answer: "not-possible", why: "No tank." })).toEqual([]);
  });

  it("is answered with what its measurement came to, and with nothing else", () => {
    const made = opened();
    made.do(measureDelivery(made.as("ben"), made.kit(), RUN));
    expect(answered(made, { ...SEEN, value: shareOf(0.91) })).toEqual(["SN-264"]);
    expect(answered(made, { ...SEEN, value: shareOf(0.95) })).toEqual([]);
    expect(answered(made, { step: "stow", answer: "seen" })).toEqual(["SN-264"]);
  });
});
