import { describe, expect, it } from "vitest";
import type { Pattern } from "#kit";
import { ENGLISH } from "#words";
import { Hand, kitOf, SAMPLE_PATTERN, seenRight } from "../kit/sample-kit.ts";
import { answersAt } from "./answers-at.ts";
import { standingOf } from "../standing/standing.ts";
import { isLastToProve, proofSoFar } from "./proof-so-far.ts";
import { standingInWords } from "../standing/in-words.ts";

/** The cells prove good by their date, by their volts, and by the torch they light. */
const PATTERN: Pattern = {
  ...SAMPLE_PATTERN,
  modes: SAMPLE_PATTERN.modes.map((mode) =>
    mode.id === "cells-old" ? { ...mode, remedy: "Fit new cells.", provedBy: ["light"] } : mode,
  ),
};
const WHERE = { turnaround: "t1", step: "look-torch" };
const LOW = { kind: "quantity", si: 1.1, dimension: "voltage", text: "1.1 V" } as const;

function found(): Hand {
  const by = new Hand().enrol().open();
  by.write("step-answered", { ...WHERE, check: "light", answer: "seen" });
  by.write("step-answered", { ...WHERE, check: "cell-date", answer: "seen", value: { kind: "date", date: "2027-03" } });
  by.write("step-answered", { ...WHERE, check: "volts", answer: "wrong", value: LOW });
  const raised = { finding: "f1", item: "cells", mode: "cells-old", effect: "grounds", photos: [] } as const;
  by.write("finding-raised", { ...raised, ...WHERE, check: "volts" });
  return by;
}

function soFar(by: Hand) {
  const kit = kitOf(by);
  return proofSoFar(kit.findings[0]!, PATTERN, kit.turnaround!);
}

const toDo = (by: Hand) =>
  soFar(by)
    .checks.filter(({ answered }) => !answered)
    .map(({ check }) => check.id);

describe("what the lines of a turnaround prove of a finding", () => {
  it("is nothing before something was done, whatever was answered", () => {
    expect(toDo(found())).toEqual(["cell-date", "volts", "light"]);
  });

  it("counts only answers since the remedy, those its mode names beside its own checks too", () => {
    const by = found();
    by.write("remedy-made", { finding: "f1", how: "mended", note: "New cells." });
    expect(toDo(by)).toEqual(["cell-date", "volts", "light"]);
    by.write("step-answered", seenRight("t1", { step: "look-torch", check: "volts" }));
    expect(toDo(by)).toEqual(["cell-date", "light"]);
    expect(soFar(by).proof).toBeUndefined();
  });

  it("has a last check, which the line of it waits for, and none while two are left", () => {
    const by = found();
    by.write("remedy-made", { finding: "f1", how: "mended", note: "New cells." });
    by.write("step-answered", seenRight("t1", { step: "look-torch", check: "volts" }));
    expect(["cell-date", "light"].filter((check) => isLastToProve(soFar(by), check))).toEqual([]);
    by.write("step-answered", seenRight("t1", { step: "look-torch", check: "cell-date" }));
    expect(["cell-date", "light", "other"].filter((check) => isLastToProve(soFar(by), check))).toEqual(["light"]);
    by.write("step-answered", seenRight("t1", { step: "look-torch", check: "light" }));
    expect(isLastToProve(soFar(by), "light")).toBe(true);
  });

  it("is whole once every check was seen right again, with its readings", () => {
    const by = found();
    by.write("remedy-made", { finding: "f1", how: "mended", note: "New cells." });
    for (const check of ["volts", "cell-date", "light"]) {
      by.write("step-answered", seenRight("t1", { step: "look-torch", check }));
    }
    const { proof } = soFar(by);
    expect(proof?.checks.map(({ check, answer }) => `${check} ${answer}`)).toEqual([
      "cell-date seen",
      "volts seen",
      "light seen",
    ]);
    by.write("finding-proved", proof!);
    expect(kitOf(by).findings[0]).toMatchObject({ closed: { by: "ann" } });
    by.write("step-answered", { ...WHERE, check: "light", answer: "wrong" });
    expect(soFar(by).proof).toBeUndefined();
  });
});

function mended(): Hand {
  const by = found();
  by.write("remedy-made", { finding: "f1", how: "mended", note: "New cells." });
  return by;
}

function seeTorch(by: Hand): void {
  for (const check of ["cell-date", "volts"]) {
    by.write("step-answered", seenRight("t1", { step: "look-torch", check }));
  }
}

describe("a proof over more than one line", () => {
  /** The pump's shaft, at line 2, proves the cells beside their own checks at line 3. */
  const overTwo: Pattern = {
    ...SAMPLE_PATTERN,
    modes: SAMPLE_PATTERN.modes.map((mode) => (mode.id === "cells-old" ? { ...mode, provedBy: ["turns"] } : mode)),
  };
  const SHAFT = { turnaround: "t1", step: "look-pump", check: "turns" } as const;

  const over = (by: Hand) => {
    const kit = kitOf(by);
    return proofSoFar(kit.findings[0]!, overTwo, kit.turnaround!);
  };
  const left = (by: Hand) =>
    over(by)
      .checks.filter(({ answered }) => !answered)
      .map(({ check }) => check.id);

  it("READY-43 is asked in the pattern's order, and a later line proves nothing before the earlier one", () => {
    const by = mended();
    expect(left(by)).toEqual(["turns", "cell-date", "volts"]);
    seeTorch(by);
    expect(left(by)).toEqual(["turns", "cell-date", "volts"]);
    by.write("step-answered", { ...SHAFT, answer: "seen" });
    expect(left(by)).toEqual(["cell-date", "volts"]);
    seeTorch(by);
    expect(over(by).proof?.checks.map(({ check }) => check)).toEqual(["turns", "cell-date", "volts"]);
  });

  it("READY-43 falls at the later line once the earlier one is answered again", () => {
    const by = mended();
    by.write("step-answered", { ...SHAFT, answer: "seen" });
    seeTorch(by);
    by.write("step-answered", { ...SHAFT, answer: "seen" });
    expect(over(by).proof).toBeUndefined();
    expect(left(by)).toEqual(["cell-date", "volts"]);
    expect(isLastToProve(over(by), "volts")).toBe(false);
  });

  it("READY-43 falls there too where something else of the earlier line is answered again", () => {
    const by = mended();
    by.write("step-answered", { ...SHAFT, answer: "seen" });
    seeTorch(by);
    by.write("step-answered", { ...SHAFT, check: "paint", answer: "seen" });
    expect(left(by)).toEqual(["cell-date", "volts"]);
  });

  it("READY-43 keeps what was found wrong again at the later line, whatever is answered before it", () => {
    const by = mended();
    by.write("step-answered", { ...WHERE, check: "light", answer: "seen" });
    by.write("step-answered", { ...WHERE, check: "volts", answer: "wrong", value: LOW });
    by.write("step-answered", { ...SHAFT, answer: "seen" });
    expect(over(by).isRefuted).toBe(true);
  });
});

describe("a proof by a run", () => {
  const START = { id: "starts", kind: "prove", item: "pump", ask: "Start it.", expect: "It runs." } as const;
  const RUNS = { id: "runs", kind: "prove", item: "pump", ask: "Run it.", expect: "Steady.", finds: [] } as const;
  const checked = { start: ["starts"], warm: ["runs"] } as const;
  const byRun: Pattern = {
    ...SAMPLE_PATTERN,
    checks: [...SAMPLE_PATTERN.checks, { ...START, finds: ["pump-seized"] }, RUNS],
    modes: SAMPLE_PATTERN.modes.map((mode) => (mode.id === "cells-old" ? { ...mode, provedBy: ["runs"] } : mode)),
    stages: SAMPLE_PATTERN.stages.map((stage) => ({
      ...stage,
      steps: stage.steps.map((step) => ({ ...step, checks: checked[step.id as "warm"] ?? step.checks })),
    })),
  };
  const proofOf = (by: Hand) => {
    const kit = kitOf(by);
    return proofSoFar(kit.findings[0]!, byRun, kit.turnaround!);
  };
  const ran = { turnaround: "t1", step: "warm", check: "runs", answer: "seen" } as const;

  it.each([undefined, "wrong", "not-possible"] as const)(
    "READY-44 is none while its start was answered %s, though pulls were counted",
    (answer) => {
      const by = mended();
      seeTorch(by);
      const start = { turnaround: "t1", step: "start" };
      by.write("pulls-counted", { ...start, pulls: 2, started: true });
      if (answer) by.write("step-answered", { ...start, check: "starts", answer });
      by.write("step-answered", ran);
      expect(proofOf(by).proof).toBeUndefined();
    },
  );

  it("READY-44 is one once its start was seen right, and the run after it", () => {
    const by = mended();
    seeTorch(by);
    by.write("step-answered", { turnaround: "t1", step: "start", check: "starts", answer: "seen" });
    by.write("step-answered", ran);
    expect(proofOf(by).proof?.checks.map(({ check }) => check)).toEqual(["cell-date", "volts", "starts", "runs"]);
  });
});

describe("the answers given at one line", () => {
  it("are all kept, oldest first: 1.1 V, then 1.52 V", () => {
    const by = found();
    by.write("step-answered", seenRight("t1", { step: "look-torch", check: "volts" }));
    const given = answersAt(by.entries, { ...WHERE, check: "volts" });
    expect(given.map(({ answer }) => answer.value?.kind === "quantity" && answer.value.text)).toEqual([
      "1.1 V",
      "1.52 V",
    ]);
    expect(answersAt(by.entries, { ...WHERE, turnaround: "t2", check: "volts" })).toEqual([]);
  });
});

function told(by: Hand): readonly string[] {
  const kit = kitOf(by);
  const { restore } = standingInWords(standingOf(kit, PATTERN, "2026-01-10", {}), ENGLISH.standing);
  return restore.what.filter((what) => what.includes("out of date"));
}

describe("what is still to be done about a finding", () => {
  it("is its remedy, then its proof alone, at the lines that are left", () => {
    const by = found();
    expect(told(by)).toEqual(["Torch cells: out of date: Fit new cells."]);
    by.write("remedy-made", { finding: "f1", how: "replaced", part: "Cells", quantity: 1 });
    expect(told(by)).toEqual(["Torch cells: out of date: prove it at line 3."]);
  });

  it("is its remedy again once the proof found it wrong", () => {
    const by = found();
    by.write("remedy-made", { finding: "f1", how: "replaced", part: "Cells", quantity: 1 });
    by.write("step-answered", { ...WHERE, check: "volts", answer: "wrong", value: LOW });
    expect(told(by)).toEqual(["Torch cells: out of date: Fit new cells."]);
  });
});
