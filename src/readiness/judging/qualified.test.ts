import { describe, expect, it } from "vitest";
import { Hand, kitOf, SAMPLE_PATTERN } from "../kit/sample-kit.ts";
import type { Qualification } from "../people/qualification.ts";
import { practiceOf } from "../people/practice.ts";
import type { CasualtyState } from "../casualty/casualty-state.ts";
import type { Person } from "../state.ts";
import { secondsSaid, secondsWanted } from "./qualified.ts";

const MARK = { entry: "e", at: "2026-01-01T08:00:00Z", by: "ann", device: "tablet" };
const ANN: Person = { id: "ann", name: "Ann", role: "crew", left: false };
const BEN: Person = { ...ANN, id: "ben", name: "Ben" };
const GONE: Person = { ...ANN, id: "gone", name: "Gone", left: true };

const rule = (more: Partial<Qualification>): Qualification => ({
  id: "q",
  name: "Proof run",
  ties: [{ to: "stage", stage: "run" }],
  every: { months: 12 },
  seenBy: "holders",
  alone: "never",
  since: MARK,
  ...more,
});
const told = (day: string) => ({ ...MARK, qualification: "q", day, how: "Course." });

/** What is asked of Ann at a step on a day, where Ben and somebody who left did it on 10 January 2026. */
function askedOf(more: Partial<Qualification>, at: { step?: string; stage: "run" | "seal" }, day = "2026-03-01") {
  const turnaround = kitOf(new Hand().enrol().open()).turnaround!;
  const people = [ANN, { ...BEN, told: [told("2026-01-10")] }, { ...GONE, told: [told("2026-01-10")] }];
  const patterns = new Map([["sample@1", SAMPLE_PATTERN]]);
  const station = { kits: [], people, casualties: [], patterns, qualifications: [rule(more)] };
  const wanted = secondsWanted(station, { person: "ann", day }, { turnaround, pattern: SAMPLE_PATTERN }, at);
  return wanted.map(({ seconds, mayGoAlone }) => [seconds.map(({ id }) => id), mayGoAlone]);
}

describe("what a line asks for", () => {
  it("READY-18 is a second person at the lines of the stage, and at no other", () => {
    expect(askedOf({}, { stage: "run", step: "start" })).toEqual([[["ben"], false]]);
    expect(askedOf({}, { stage: "seal", step: "close" })).toEqual([]);
    expect(askedOf({ ties: [{ to: "step", step: "close", pattern: "sample" }] }, { stage: "seal" })).toEqual([]);
    expect(askedOf({ ties: [{ to: "stage", stage: "seal" }] }, { stage: "seal" })).toEqual([[["ben"], false]]);
    expect(askedOf({ ties: [{ to: "stage", stage: "run", pattern: "other" }] }, { stage: "run" })).toEqual([]);
  });

  it("READY-18 is nothing for the sheet of a casualty, whatever it is tied to", () => {
    expect(askedOf({ ties: [{ to: "sheet" }] }, { stage: "run", step: "start" })).toEqual([]);
  });

  it("is a note once nobody is left who may see it done: who left does not, nor whose own has lapsed", () => {
    expect(askedOf({}, { stage: "run" }, "2027-01-10")).toEqual([[["ben"], false]]);
    expect(askedOf({}, { stage: "run" }, "2027-01-11")).toEqual([[[], true]]);
  });

  it("is nothing of a qualification that was retired", () => {
    expect(askedOf({ retired: { ...MARK, reason: "No more." } }, { stage: "run", step: "start" })).toEqual([]);
  });
});

/** What a person said already at a step, and what is still asked of them. */
function saidBy(person: string, said: object) {
  const { turnaround } = kitOf(new Hand().enrol().open());
  const people = [ANN, { ...BEN, told: [told("2026-01-10")] }];
  const station = { kits: [], people, casualties: [], patterns: new Map(), qualifications: [rule({})] };
  const seconds = [{ ...MARK, entry: "named", qualification: "q", ...said }];
  const where = { turnaround: { ...turnaround!, seconds }, pattern: SAMPLE_PATTERN };
  const at = { stage: "run", step: "start" } as const;
  const doing = { person, day: "2026-03-01" };
  return [secondsSaid(station, doing, where, at), secondsWanted(station, doing, where, at)];
}

describe("who was named at a line", () => {
  it("is said with the name, and with the line that takes it back", () => {
    const [said, wanted] = saidBy("ann", { second: "ben" });
    expect(said).toMatchObject([{ entry: "named", second: { name: "Ben" }, qualification: { name: "Proof run" } }]);
    expect(wanted).toEqual([]);
  });

  it("is not said of what does not answer the line, of another person's, nor of what is held", () => {
    expect(saidBy("ann", { second: "gone" })[0]).toEqual([]);
    expect(saidBy("ann", { note: "Alone." })[0]).toEqual([]);
    expect(saidBy("ann", { by: "ben", second: "ben" })[0]).toEqual([]);
    expect(saidBy("ben", { by: "ben", second: "ann" })[0]).toEqual([]);
  });
});

describe("what counts", () => {
  const patterns = new Map([["sample@1", SAMPLE_PATTERN]]);
  const bookOf = (hand: Hand, one: Qualification, casualties: readonly CasualtyState[] = []) =>
    practiceOf({ kits: [kitOf(hand)], people: [ANN, BEN], casualties, patterns, qualifications: [one] });

  it("READY-17 is a stage of which one person answered every line that had to be answered", () => {
    const whole = new Hand().enrol().open().doAll();
    const before = rule({ since: { ...MARK, at: "2027-01-01T08:00:00Z" } });
    expect(bookOf(whole, before).doings).toMatchObject([{ person: "ann", counts: "before", day: "2026-01-10" }]);
    expect(bookOf(whole, before).holding("q", "ann")!.until).toBe("2027-01-10");
    const cannot = { turnaround: "t1", step: "warm", answer: "not-possible", why: "No fuel." } as const;
    whole.write("step-answered", cannot);
    expect(bookOf(whole, before).doings).toEqual([]);
  });

  it("READY-17 is the sealing only of who answered its lines and wrote it", () => {
    const sealing = rule({ ties: [{ to: "stage", stage: "seal" }], since: { ...MARK, at: "2027-01-01T08:00:00Z" } });
    const hand = new Hand().enrol().open().doAll();
    expect(bookOf(hand, sealing).doings).toEqual([]);
    expect(bookOf(hand.seal(), sealing).doings).toMatchObject([{ person: "ann" }]);
  });

  it("does not count where nobody saw it who may, nor where one is named who does it", () => {
    const hand = new Hand().enrol().open();
    hand.write("second-named", { turnaround: "t1", qualification: "q", second: "ben" });
    const [doing] = bookOf(hand.doAll(), rule({})).doings;
    expect(doing).toMatchObject({ person: "ann", second: "ben" });
    expect(doing).not.toHaveProperty("counts");
  });
});
