import { describe, expect, it } from "vitest";
import type { Pattern } from "#kit";
import { ENGLISH, inWords } from "#words";
import { sayBarred, sayWayOut } from "../findings/bar-words.ts";
import { barsAt, type Bar } from "../findings/barred.ts";
import { hangingOf } from "./hanging.ts";
import { Hand, kitOf, SAMPLE_PATTERN } from "./sample-kit.ts";
import { sealingRefusals } from "./sealing.ts";
import { sayRefusal } from "./refusal.ts";

/** The sample with its pump hung up for a night after the run, before anything is put back. */
const HUNG: Pattern = {
  ...SAMPLE_PATTERN,
  stages: SAMPLE_PATTERN.stages.map((stage) => ({
    ...stage,
    steps: stage.steps.map((step) =>
      step.id === "warm" ? { ...step, timer: { kind: "wait", atLeast: 12 * 3600, unattended: true } } : step,
    ),
  })),
};

const WARM = { turnaround: "t1", step: "warm" };
const NOT_DRY = { ...WARM, answer: "not-possible", why: "Called out." } as const;

function hand(): Hand {
  return new Hand().enrol().open();
}

function at(by: Hand) {
  const kit = kitOf(by);
  return { kit, turnaround: kit.turnaround!, pattern: HUNG };
}

const barred = (by: Hand): readonly string[] =>
  HUNG.stages
    .flatMap(({ steps }) => steps)
    .flatMap(({ id }) => (barsAt(at(by), id).some(({ hangs }) => hangs) ? [id] : []));

const nameOf = ({ said }: Bar) => (typeof said === "string" ? said : inWords(said, ENGLISH.held));

describe("READY-33 what hangs until tomorrow", () => {
  it("hangs for its hours from the instant of its start, over midnight", () => {
    const by = hand();
    expect(hangingOf(at(by).turnaround, HUNG)).toMatchObject({ step: { id: "warm" } });
    expect(hangingOf(at(by).turnaround, HUNG)?.until).toBeUndefined();
    const { at: started } = by.write("timer-started", WARM);
    expect(hangingOf(at(by).turnaround, HUNG)?.until).toBe(Date.parse(started) + 12 * 3_600_000);
  });

  it("bars every later line, whatever its work, and none before it", () => {
    const by = hand();
    expect(barred(by)).toEqual(["spare", "stow", "refuel", "close"]);
    by.write("timer-started", WARM);
    expect(barred(by)).toEqual(["spare", "stow", "refuel", "close"]);
    expect(sayBarred(barsAt(at(by), "stow")[0]!, ENGLISH.held)).toBe(
      "Line 6 hangs, and is not answered yet. Nothing after it is done before that.",
    );
  });

  it("is said as it stands: still to hang, hanging, stopped before its time, hung long enough", () => {
    const wordsOf = (by: Hand) =>
      barsAt(at(by), "stow").map((bar) => `${nameOf(bar)}. ${sayWayOut(bar, ENGLISH.held)}`);
    const by = hand();
    expect(wordsOf(by)).toEqual([
      'Line 6 is still to hang, and is not answered yet. Answer it when its time is over, or "not possible" and why.',
    ]);
    const { at: started } = by.write("timer-started", WARM);
    expect(wordsOf(by)[0]).toMatch(/^Line 6 hangs, and is not answered yet/);
    by.write("timer-stopped", { ...WARM, started, seconds: 3600, reached: false });
    expect(wordsOf(by)).toEqual([
      'Line 6 was stopped before its time and hangs no more; it is not answered yet. Hang it again for its time, or answer it "not possible" and why.',
    ]);
    expect(hangingOf(at(by).turnaround, HUNG)).toMatchObject({ stopped: "early" });
    const long = hand();
    const again = long.write("timer-started", WARM);
    long.write("timer-stopped", { ...WARM, started: again.at, seconds: 43_300, reached: true });
    expect(wordsOf(long)[0]).toMatch(/^Line 6 has hung long enough, and is not answered yet. Answer it, /);
  });

  it("bars nothing once it was answered: seen dry, or not possible and why", () => {
    const seen = hand();
    seen.write("step-answered", { ...WARM, answer: "seen" });
    expect([barred(seen), hangingOf(at(seen).turnaround, HUNG)]).toEqual([[], undefined]);
    const called = hand();
    called.write("step-answered", NOT_DRY);
    expect(barred(called)).toEqual([]);
    const wet = hand();
    wet.write("step-answered", { ...WARM, answer: "wrong" });
    expect(barred(wet)).toContain("stow");
  });

  it("keeps the kit from being sealed before its time", () => {
    const by = hand();
    for (const line of ["open", "warm", "stow"])
      by.write("step-answered", { turnaround: "t1", step: line, answer: "seen" });
    by.write("timer-stopped", { ...WARM, started: "2026-01-10T08:00:00Z", seconds: 3600, reached: false });
    const refusals = sealingRefusals({ ...at(by), allKits: [], seal: "00500" });
    expect(refusals.filter(({ step }) => step === "warm").map((one) => sayRefusal(one, ENGLISH.held))).toEqual([
      expect.stringMatching(/^Its time has not run/),
    ]);
  });

  it("does not hang where its pattern leaves it out after what the kit met", () => {
    const after: Pattern = {
      ...HUNG,
      stages: HUNG.stages.map((stage) => ({
        ...stage,
        steps: stage.steps.map((step) => (step.id === "warm" ? { ...step, after: ["salt"] as const } : step)),
      })),
    };
    expect(hangingOf(at(hand()).turnaround, after)).toBeUndefined();
  });
});
