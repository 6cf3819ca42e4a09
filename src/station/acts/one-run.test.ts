import { describe, expect, it } from "vitest";
import type { Pattern, StepTimer } from "#kit";
import { Desk, refusalsOf, SMALL_PATTERN } from "../sample-station.ts";
import { enrolKit } from "./kit-acts.ts";
import { openTurnaround, startTimer, stopTimer } from "./turnaround-acts.ts";

const FIVE = 300;

/** The small pattern with two runs of one engine, at half throttle and over its range, and a wait beside them. */
const RUNS: Pattern = {
  ...SMALL_PATTERN,
  stages: SMALL_PATTERN.stages.flatMap((stage) => {
    if (stage.id !== "restow") return [stage];
    const [stow] = stage.steps;
    const clock = (id: string, line: number, timer: StepTimer) => ({ ...stow!, id, line, stows: [], timer });
    const half = clock("half", 2, { kind: "run", atLeast: FIVE, says: "Listen." });
    const range = clock("range", 3, { kind: "run", atLeast: FIVE, says: "Listen." });
    const drip = clock("drip", 4, { kind: "wait", atLeast: 120 });
    return [
      { id: "run", name: "Run", steps: [half, range, drip] } as const,
      { ...stage, steps: [{ ...stow!, line: 5 }] },
    ];
  }),
};

const items = [{ item: "cells", fitted: "2026-01-01", printed: "2027-03", quantity: 2 }];
const at = (step: string) => ({ turnaround: "t1", step });

/** A desk where the run at half throttle was just started, and when that was [ms]. */
function running() {
  const desk = new Desk(RUNS);
  const body = { name: "Kit 1", serial: "S-1", seal: "00417", items };
  desk.do(enrolKit(desk.as("ann"), { kit: "k1", place: "north", pattern: "small@1", body }));
  desk.do(openTurnaround(desk.as("ben"), desk.kit(), { turnaround: "t1", because: "routine", sealSeen: "00417" }));
  desk.do(startTimer(desk.as("ben"), desk.kit(), at("half")));
  return { desk, since: Date.parse(desk.kit().turnaround!.timers["half"]!.started!) };
}

function begun({ desk, since }: ReturnType<typeof running>, step: string, after: number) {
  const now = new Date(since + 1000 * after).toISOString();
  return startTimer({ ...desk.as("ben"), now }, desk.kit(), at(step));
}

describe("READY-42 one engine, one run at a time", () => {
  it("refuses a run while another goes on, says which, and takes it once that has lasted its time", () => {
    const made = running();
    const early = begun(made, "range", 10);
    expect(refusalsOf(early)).toEqual(["SN-265"]);
    expect(JSON.stringify(early)).toContain("The run at line 2 goes on");
    expect(refusalsOf(begun(made, "range", FIVE))).toEqual([]);
  });

  it("takes it once the other was stopped, even early, and begins the same run anew at any time", () => {
    const made = running();
    expect(refusalsOf(begun(made, "half", 10))).toEqual([]);
    const started = new Date(made.since).toISOString();
    made.desk.do(
      stopTimer(made.desk.as("ben"), made.desk.kit(), { ...at("half"), started, seconds: 9, reached: false }),
    );
    expect(refusalsOf(begun(made, "range", 10))).toEqual([]);
  });

  it("lets a wait go on beside a run", () => {
    const made = running();
    expect(refusalsOf(begun(made, "drip", 10))).toEqual([]);
    made.desk.do(startTimer(made.desk.as("ben"), made.desk.kit(), at("drip")));
    expect(refusalsOf(begun(made, "half", 20))).toEqual([]);
  });
});
