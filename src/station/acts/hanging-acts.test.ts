import { describe, expect, it } from "vitest";
import type { Pattern } from "#kit";
import { enrolKit } from "./kit-acts.ts";
import { Desk, refusalsOf, SMALL_PATTERN } from "../sample-station.ts";
import { answerStep, openTurnaround, startTimer } from "./turnaround-acts.ts";

const NIGHT = 12 * 3600;

/** The small pattern with its hose hung up for a night before it is put back, and the seal check read as a hose's tag. */
const HUNG: Pattern = {
  ...SMALL_PATTERN,
  checks: SMALL_PATTERN.checks.map((check) => (check.kind === "match" ? { ...check, against: "recorded-tag" } : check)),
  stages: SMALL_PATTERN.stages.flatMap((stage) => {
    if (stage.id !== "restow") return [stage];
    const [stow] = stage.steps;
    const timer = { kind: "wait", atLeast: NIGHT, unattended: true } as const;
    const hang = { ...stow!, id: "hang", line: 2, text: "Hang it up.", stows: [], timer };
    return [{ id: "hang", name: "Hang", steps: [hang] } as const, { ...stage, steps: [{ ...stow!, line: 3 }] }];
  }),
};

const seen = (step: string) => ({ turnaround: "t1", step, answer: "seen" }) as const;
const HANG = { turnaround: "t1", step: "hang" };
const items = [{ item: "cells", fitted: "2026-01-01", printed: "2027-03", quantity: 2 }];

function opened(): Desk {
  const made = new Desk(HUNG);
  const body = { name: "Kit 1", serial: "S-1", seal: "00417", items };
  made.do(enrolKit(made.as("ann"), { kit: "k1", place: "north", pattern: "small@1", body }));
  const open = { turnaround: "t1", because: "routine", sealSeen: "00417" } as const;
  made.do(openTurnaround(made.as("ben"), made.kit(), open));
  return made;
}

function refused(made: Desk, step: string, now: string): readonly string[] {
  return refusalsOf(answerStep({ ...made.as("ben"), now }, made.kit(), seen(step)));
}

describe("READY-33 a line that hangs until tomorrow, by the station's rule", () => {
  it("refuses the later stage until it is answered, and that answer before its time", () => {
    const made = opened();
    made.do(startTimer(made.as("ben"), made.kit(), HANG));
    expect(refused(made, "stow", "2026-01-11T12:00:00Z")).toEqual(["SN-129"]);
    expect(refused(made, "hang", "2026-01-10T19:59:00Z")).toEqual(["SN-128"]);
    expect(refused(made, "hang", "2026-01-10T20:00:00Z")).toEqual([]);
    made.do(answerStep({ ...made.as("ben"), now: "2026-01-10T20:01:00Z" }, made.kit(), seen("hang")));
    expect(refused(made, "stow", "2026-01-10T20:02:00Z")).toEqual([]);
  });

  it("says what hangs and the way out", () => {
    const made = opened();
    const act = answerStep(made.as("ben"), made.kit(), seen("stow"));
    expect(act.kind === "refused" && act.because[0]?.remedy).toMatch(
      /^Line 2 is still to hang.*"not possible" and why\.$/,
    );
  });
});

describe("READY-34 a hose's tag, by the station's rule", () => {
  const tag = { turnaround: "t1", step: "look", check: "seal-number", answer: "seen" } as const;

  it("keeps the first number, and takes no other as right afterwards", () => {
    const made = opened();
    const first = { ...tag, value: { kind: "text", text: "H 07" } } as const;
    expect(refusalsOf(answerStep(made.as("ben"), made.kit(), tag))).toEqual(["SN-127"]);
    expect(refusalsOf(answerStep(made.as("ben"), made.kit(), first))).toEqual([]);
  });
});
