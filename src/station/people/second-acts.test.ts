import { confirmedBy, toConfirm, type Bodies } from "#readiness";
import { beforeEach, describe, expect, it } from "vitest";
import { enrolKit } from "../acts/kit-acts.ts";
import { answerStep, fitItem, openTurnaround, sealKit, startTimer } from "../acts/turnaround-acts.ts";
import { Desk, refusalsOf, SMALL_PATTERN } from "../sample-station.ts";
import { retireQualification, setQualification } from "./qualification-acts.ts";
import { confirmSecond, goOnAlone, nameSecond, tellPractice } from "./second-acts.ts";

const RESTOWING: Bodies["qualification-set"] = {
  name: "Restowing",
  ties: [{ to: "stage", stage: "restow" }],
  every: "6 months",
  seenBy: "holders",
  alone: "with-note",
};
const STOW = { turnaround: "t1", step: "stow", answer: "seen" } as const;
const HERE = { turnaround: "t1", qualification: "restowing" } as const;

let desk: Desk;

beforeEach(() => {
  desk = new Desk();
  const body = { name: "Kit 1", serial: "S-1", seal: "00417", items: [] };
  desk.do(enrolKit(desk.as("ann"), { kit: "k1", place: "north", pattern: "small@1", body }));
  desk.do(openTurnaround(desk.as("ann"), desk.kit(), { turnaround: "t1", because: "routine", sealSeen: "00417" }));
  desk.today = "2026-02-01";
  desk.do(setQualification(desk.as("ann"), "restowing", RESTOWING));
});

const tell = (person: string, day: string) =>
  desk.do(tellPractice(desk.as("ann"), person, { qualification: "restowing", day, how: "Course at Brannock." }));

describe("a line that needs a qualification", () => {
  it("RULE-14 is refused from who does not hold it, and the refusal names who may see it done", () => {
    tell("ann", "2026-01-20");
    const act = answerStep(desk.as("ben"), desk.kit(), STOW);
    expect(refusalsOf(act)).toEqual(["SN-225"]);
    expect(act.kind === "refused" && act.because[0]!.remedy).toBe(
      "Restowing: You have not done it yet. Name who sees it done: ann. Or go on with a note.",
    );
    expect(refusalsOf(answerStep(desk.as("ann"), desk.kit(), STOW))).toEqual([]);
  });

  it("RULE-14 is taken once a second person is named, who then brings the doer on", () => {
    tell("ann", "2026-01-20");
    desk.do(nameSecond(desk.as("ben"), desk.kit(), { ...HERE, second: "ann" }), "ben");
    desk.do(answerStep(desk.as("ben"), desk.kit(), STOW), "ben");
    desk.do(setQualification(desk.as("ann"), "restowing", { ...RESTOWING, alone: "never" }));
    desk.today = "2026-07-30";
    expect(refusalsOf(answerStep(desk.as("ben"), desk.kit(), STOW))).toEqual([]);
    desk.today = "2026-08-03";
    expect(refusalsOf(answerStep(desk.as("ben"), desk.kit(), STOW))).toEqual(["SN-225"]);
  });

  it("RULE-14 asks neither who finds it wrong nor who finds it not possible", () => {
    tell("ann", "2026-01-20");
    expect(refusalsOf(answerStep(desk.as("ben"), desk.kit(), { ...STOW, answer: "wrong" }))).toEqual([]);
    const cannot = { ...STOW, answer: "not-possible", why: "No light." } as const;
    expect(refusalsOf(answerStep(desk.as("ben"), desk.kit(), cannot))).toEqual([]);
    expect(refusalsOf(startTimer(desk.as("ben"), desk.kit(), { turnaround: "t1", step: "stow" }))).toEqual(["SN-225"]);
  });

  it("RULE-14 is asked for too where something is fitted at the line, and not where it is fitted outside of it", () => {
    tell("ann", "2026-01-20");
    const fitted = { item: "cells", fitted: "2026-02-01", quantity: 2, printed: "2028-01" };
    const fit = (body: object) => refusalsOf(fitItem(desk.as("ben"), desk.kit(), { ...fitted, ...body }));
    expect(fit({ turnaround: "t1", step: "stow" })).toEqual(["SN-225"]);
    expect(fit({ turnaround: "t1" })).toEqual([]);
    expect(fit({})).toEqual([]);
    desk.do(nameSecond(desk.as("ben"), desk.kit(), { ...HERE, second: "ann" }), "ben");
    expect(fit({ turnaround: "t1", step: "stow" })).toEqual([]);
  });

  it("RULE-15 is done with a note only where the station says so, or nobody is left who may see it", () => {
    const alone = (person: string) => goOnAlone(desk.as(person), desk.kit(), { ...HERE, note: "Nobody else here." });
    tell("ann", "2026-01-20");
    expect(refusalsOf(alone("ben"))).toEqual([]);
    desk.do(setQualification(desk.as("ann"), "restowing", { ...RESTOWING, alone: "never" }));
    expect(refusalsOf(alone("ben"))).toEqual(["SN-229"]);
    expect(refusalsOf(alone("ann"))).toEqual([]);
    desk.today = "2026-12-01";
    desk.do(alone("ben"), "ben");
    expect(refusalsOf(answerStep(desk.as("ben"), desk.kit(), STOW))).toEqual([]);
  });

  it("RULE-15 does not prove anything by a note", () => {
    tell("ann", "2026-01-20");
    desk.do(goOnAlone(desk.as("ben"), desk.kit(), { ...HERE, note: "Nobody else here." }), "ben");
    desk.do(answerStep(desk.as("ben"), desk.kit(), STOW), "ben");
    expect(refusalsOf(answerStep(desk.as("ben"), withoutSeconds(), STOW))).toEqual(["SN-225"]);
  });

  it("is asked for at the sealing too, where the stage of sealing needs one", () => {
    const sealing = { ...RESTOWING, name: "Sealing", ties: [{ to: "stage", stage: "seal" }] } as const;
    desk.do(setQualification({ ...desk.as("ann"), patterns: withSealStage() }, "sealing", sealing));
    const body = { turnaround: "t1", seal: "00999" };
    expect(refusalsOf(sealKit(desk.as("ben"), desk.kit(), body))).toContain("SN-225");
  });
});

function told(by: string, person: string, body: Partial<Bodies["practice-told"]>) {
  const whole = { qualification: "restowing", day: "2026-01-20", how: "Course.", ...body };
  return refusalsOf(tellPractice(desk.as(by), person, whole));
}

function withoutSeconds() {
  const { turnaround, ...kit } = desk.kit();
  const { seconds: _seconds, ...rest } = turnaround!;
  return { ...kit, turnaround: rest };
}

function withSealStage() {
  const stages = [...SMALL_PATTERN.stages, { id: "seal", name: "Seal", steps: [] } as const];
  return new Map([["small@1", { ...SMALL_PATTERN, stages }]]);
}

describe("naming who sees a thing done", () => {
  it("RULE-16 takes nobody who may not see it, and never the doer", () => {
    tell("ann", "2026-01-20");
    const name = (second: string) => nameSecond(desk.as("ben"), desk.kit(), { ...HERE, second });
    expect(refusalsOf(name("cat"))).toEqual(["SN-226"]);
    expect(refusalsOf(name("ben"))).toEqual(["SN-227"]);
    expect(refusalsOf(name("nobody"))).toEqual(["SN-226"]);
    expect(refusalsOf(name("ada"))).toEqual(["SN-226"]);
    desk.do(setQualification(desk.as("ann"), "restowing", { ...RESTOWING, seenBy: "keepers" }));
    expect(refusalsOf(name("ada"))).toEqual([]);
  });

  it("RULE-31 is confirmed by whoever was named, once, and by nobody else", () => {
    tell("ann", "2026-01-20");
    const { id: named } = desk.do(nameSecond(desk.as("ben"), desk.kit(), { ...HERE, second: "ann" }), "ben");
    const body = { turnaround: "t1", named };
    const confirm = (who: string) => confirmSecond(desk.as(who), desk.kit(), body);
    expect(refusalsOf(confirm("ben"))).toEqual(["SN-232"]);
    expect(toConfirm(desk.kit(), "ann")).toMatchObject([{ turnaround: "t1", said: { entry: named, by: "ben" } }]);
    desk.do(confirm("ann"), "ann");
    expect(toConfirm(desk.kit(), "ann")).toEqual([]);
    expect(refusalsOf(confirm("ann"))).toEqual(["SN-232"]);
    const [said] = desk.kit().turnaround!.seconds!;
    expect(confirmedBy(desk.kit().turnaround!, said!)).toMatchObject({ by: "ann", named });
    expect(confirmedBy({ confirmed: [{ ...said!, named, by: "ben" }] }, said!)).toBeUndefined();
  });

  it("RULE-31 is not confirmed while a clock of what it covers runs, and is once that is over", () => {
    const stages = SMALL_PATTERN.stages.map((stage) => ({
      ...stage,
      steps: stage.steps.map((step) =>
        step.id === "stow" ? { ...step, timer: { kind: "run", atLeast: 300 } as const } : step,
      ),
    }));
    const patterns = new Map([["small@1", { ...SMALL_PATTERN, stages }]]);
    tell("ann", "2026-01-20");
    const { id: named } = desk.do(nameSecond(desk.as("ben"), desk.kit(), { ...HERE, second: "ann" }), "ben");
    const { at } = desk.do(
      startTimer({ ...desk.as("ben"), patterns }, desk.kit(), { turnaround: "t1", step: "stow" }),
      "ben",
    );
    const confirmAt = (seconds: number) => {
      const now = new Date(Date.parse(at) + 1000 * seconds).toISOString();
      return confirmSecond({ ...desk.as("ann"), patterns, now }, desk.kit(), { turnaround: "t1", named });
    };
    const early = confirmAt(60);
    expect(refusalsOf(early)).toEqual(["SN-234"]);
    expect(early.kind === "refused" && early.because[0]!.got).toMatch(/line 2, 4\smin left/);
    expect(refusalsOf(confirmAt(301))).toEqual([]);
  });

  it("wants a qualification of the station and an open turnaround", () => {
    const wrong = { turnaround: "t9", qualification: "dancing", second: "ann" };
    expect(refusalsOf(nameSecond(desk.as("ben"), desk.kit(), wrong))).toEqual(["SN-122", "SN-228"]);
    expect(refusalsOf(goOnAlone(desk.as("ben"), desk.kit(), { ...wrong, note: "x" } as never))).toContain("SN-228");
  });
});

describe("the station's qualifications", () => {
  it("RULE-17 are told apart by name and are for something that a pattern has", () => {
    const set = (body: Partial<typeof RESTOWING>) =>
      refusalsOf(setQualification(desk.as("ann"), "other", { ...RESTOWING, name: "Other", ...body }));
    expect(set({})).toEqual([]);
    expect(set({ name: " restowing" })).toEqual(["SN-230"]);
    expect(set({ ties: [{ to: "step", step: "stwo", pattern: "small" }] })).toEqual(["SN-231"]);
    expect(set({ ties: [{ to: "stage", stage: "run" }] })).toEqual(["SN-231"]);
    expect(set({ ties: [{ to: "sheet" }] })).toEqual([]);
    expect(set({ ties: [] })).toEqual(["RD-102"]);
    expect(set({ every: "0 days" })).toEqual(["RD-102"]);
    expect(refusalsOf(setQualification(desk.as("ben"), "other", { ...RESTOWING, name: "Other" }))).toEqual(["SN-103"]);
  });

  it("ask for nothing once retired", () => {
    tell("ann", "2026-01-20");
    desk.do(retireQualification(desk.as("ann"), "restowing", "Everybody does it."));
    expect(refusalsOf(answerStep(desk.as("ben"), desk.kit(), STOW))).toEqual([]);
    expect(refusalsOf(retireQualification(desk.as("ann"), "restowing", "Again."))).toEqual(["SN-228"]);
  });

  it("are told of by a keeper, of a day that has come, of somebody here, seen by somebody else", () => {
    expect(told("ann", "ben", {})).toEqual([]);
    expect(told("ben", "ben", {})).toEqual(["SN-103"]);
    expect(told("ann", "zed", {})).toEqual(["SN-218"]);
    expect(told("ann", "ben", { day: "2026-02-02" })).toEqual(["SN-120"]);
    expect(told("ann", "ben", { second: "ben" })).toEqual(["SN-227"]);
    expect(told("ann", "ben", { qualification: "dancing" })).toEqual(["SN-228"]);
  });
});
