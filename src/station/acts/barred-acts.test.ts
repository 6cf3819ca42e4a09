import { describe, expect, it } from "vitest";
import type { Pattern } from "#kit";
import { Desk, refusalsOf, SMALL_PATTERN } from "../sample-station.ts";
import { makeRemedy, proveFinding, raiseFinding } from "./finding-acts.ts";
import { enrolKit } from "./kit-acts.ts";
import * as turnarounds from "./turnaround-acts.ts";

/** The small pattern with a pump that may not run while it is seized, and is proved by its volts too. */
const PATTERN: Pattern = {
  ...SMALL_PATTERN,
  modes: [{ id: "seized", item: "pump", name: "seized", effect: "grounds", forbids: ["start"], provedBy: ["volts"] }],
  stages: SMALL_PATTERN.stages.map((stage) => ({
    ...stage,
    steps: stage.steps.map((step) => (step.id === "stow" ? { ...step, does: ["start"] } : step)),
  })),
};
const CELLS = { item: "cells", fitted: "2026-01-01", printed: "2027-03", quantity: 2 };
const ENROL = { kit: "k1", place: "north", pattern: "small@1", body: { name: "Kit 1", serial: "S-1", items: [CELLS] } };
const SEIZED = { finding: "f1", item: "pump", mode: "seized", effect: "grounds", photos: [] } as const;
const STOW = { turnaround: "t1", step: "stow" };

function seized(): Desk {
  const desk = new Desk(PATTERN);
  desk.do(enrolKit(desk.as("ann"), ENROL));
  desk.do(
    turnarounds.openTurnaround(desk.as("ben"), desk.kit(), { turnaround: "t1", because: "routine", sealSeen: "" }),
  );
  desk.do(raiseFinding(desk.as("ben"), desk.kit(), SEIZED));
  return desk;
}

describe("work that an open finding forbids", () => {
  it("is not written down as done, begun, counted or measured, and says why and what to do", () => {
    const desk = seized();
    const [ben, kit] = [desk.as("ben"), desk.kit()];
    const seen = turnarounds.answerStep(ben, kit, { ...STOW, answer: "seen" });
    expect(refusalsOf(seen)).toEqual(["SN-129"]);
    expect(JSON.stringify(seen)).toContain("Pump: seized. It forbids starting it. Mend it");
    expect(refusalsOf(turnarounds.startTimer(ben, kit, STOW))).toEqual(["SN-129"]);
    expect(refusalsOf(turnarounds.countPulls(ben, kit, { ...STOW, pulls: 1, started: false }))).toEqual(["SN-129"]);
    expect(refusalsOf(turnarounds.timePrime(ben, kit, { ...STOW, seconds: 30, primed: true }))).toEqual(["SN-129"]);
  });

  it("is still told of as it was: found wrong, not possible, started, stopped", () => {
    const desk = seized();
    const [ben, kit] = [desk.as("ben"), desk.kit()];
    expect(refusalsOf(turnarounds.answerStep(ben, kit, { ...STOW, answer: "wrong" }))).toEqual([]);
    expect(refusalsOf(turnarounds.answerStep(ben, kit, { ...STOW, answer: "not-possible", why: "Barred" }))).toEqual(
      [],
    );
    expect(refusalsOf(turnarounds.countPulls(ben, kit, { ...STOW, pulls: 1, started: true }))).toEqual([]);
    const stopped = { ...STOW, started: "2026-01-10T08:00:00Z", seconds: 9, reached: false };
    expect(refusalsOf(turnarounds.stopTimer(ben, kit, stopped))).toEqual([]);
  });

  it("goes on once something was done about it, for its proof, and the proof wants all that its mode names", () => {
    const desk = seized();
    desk.do(makeRemedy(desk.as("ben"), desk.kit(), { finding: "f1", how: "mended", note: "Freed." }));
    const [ben, kit] = [desk.as("ben"), desk.kit()];
    expect(refusalsOf(turnarounds.startTimer(ben, kit, STOW))).toEqual([]);
    const turns = { check: "turns", answer: "seen" } as const;
    expect(refusalsOf(proveFinding(ben, kit, { finding: "f1", checks: [turns] }))).toEqual(["SN-134"]);
    const value = { kind: "quantity", si: 6, dimension: "voltage", text: "6 V" } as const;
    const volts = { check: "volts", answer: "seen", value } as const;
    expect(refusalsOf(proveFinding(ben, kit, { finding: "f1", checks: [turns, volts] }))).toEqual([]);
  });
});
