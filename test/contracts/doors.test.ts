import { isInputError } from "#base";
import type { Entry } from "#log";
import { ask, believableOf, exampleOf } from "#questions";
import { barsAt, judgeInstant, sealingRefusals, type CasualtyState, type Value, sayRefusal } from "#readiness";
import { answerStep, createStationFold, judgeEntry, takeSounding } from "#station";
import { fetchWords, ENGLISH } from "#words";
import { describe, expect, it } from "vitest";
import { barsAtBox, isTooEarlyOnCard } from "../../src/web/pages/turnaround/card-entry/card-entering.ts";
import { whyNotReadYet, whyNotYet } from "../../src/web/pages/turnaround/runner/step-gate.ts";
import { readClock } from "../../src/web/pages/casualty/soundings/taken.ts";
import {
  allowed,
  answered,
  CLOCK,
  COCK,
  doing,
  DOORS,
  NOW,
  openKit,
  PARTED,
  PATTERN,
  RECORDED,
  WAITING,
  type Row,
} from "./doors.ts";

const cm = (figure: number): Value => ({
  kind: "quantity",
  si: figure / 100,
  dimension: "length",
  text: `${figure} cm`,
});
const cord = (figure: number): Row => ({
  check: "cord",
  typed: { quantity: `${figure} cm` },
  card: `${figure} cm`,
  value: cm(figure),
});
const bands = (count: number): Row => ({
  check: "bands",
  typed: { count: String(count) },
  card: String(count),
  value: { kind: "count", count },
});
const number = (first: string, second: string): Row => ({
  check: "number",
  typed: { first, second },
  card: `${first} / ${second}`,
  value: { kind: "match", first, second },
});
const seal = (first: string): Row => ({
  check: "seal",
  typed: { first },
  card: first,
  value: { kind: "match", first, second: RECORDED },
});
const cells = (date: string): Row => ({
  check: "cells-date",
  typed: { date },
  card: date,
  value: { kind: "date", date },
});
const timed = (seconds: number): Row => ({
  check: "timed",
  typed: { seconds },
  card: `${seconds} s`,
  value: { kind: "quantity", si: seconds, dimension: "time", text: `${seconds} s` },
});

const READINGS: readonly [name: string, row: Row, verdict: "right" | "not right"][] = [
  ["a measure within its limits", cord(55), "right"],
  ["a measure at its lower limit", cord(50), "right"],
  ["a measure at its upper limit", cord(60), "right"],
  ["a measure too low", cord(49.9), "not right"],
  ["a measure too high", cord(60.1), "not right"],
  ["all counted", bands(4), "right"],
  ["one missing", bands(3), "not right"],
  ["one too many", bands(5), "not right"],
  ["none at all", bands(0), "not right"],
  ["two that agree", number("BR-E06", "BR-E06"), "right"],
  ["two that agree but for the case of a letter", number("BR-E06", "br-e06"), "right"],
  ["two that agree but for a run of blanks", number("BR E06", "BR  E06"), "right"],
  ["two that differ", number("BR-E06", "BR-E07"), "not right"],
  ["two that differ by a leading nought", number("07", "7"), "not right"],
  ["two that differ by a blank", number("BR E06", "BRE06"), "not right"],
  ["the seal on record", seal("DK0417"), "right"],
  ["the seal on record, written otherwise", seal("dk 0417"), "right"],
  ["another seal", seal("DK417"), "not right"],
  ["a date to come", cells("2027-03-14"), "right"],
  ["a month to come", cells("2026-03"), "right"],
  ["a date that has passed", cells("2026-03-12"), "not right"],
  ["a month that has passed", cells("2026-02"), "not right"],
  ["a time within its limits", timed(45), "right"],
  ["a time too short", timed(29), "not right"],
  ["a time too long", timed(61), "not right"],
];

describe.each(READINGS)("READY-1 %s", (_, row, verdict) => {
  it.each(Object.keys(DOORS))(`is ${verdict} at this door: %s`, (door) => {
    expect(DOORS[door]!(row)).toBe(verdict);
  });
});

const words = await fetchWords("en", "turnaroundLine");
const STARTED = "2026-03-14T11:50:00+00:00";
const WAITS: readonly [name: string, lines: readonly Entry[], now: string, over: boolean][] = [
  ["never started", [], NOW, false],
  ["still running", [CLOCK.started(STARTED)], "2026-03-14T11:51:59+00:00", false],
  ["run out on the clock", [CLOCK.started(STARTED)], "2026-03-14T11:52:00+00:00", true],
  ["stopped early", [CLOCK.started(STARTED), CLOCK.stopped(119, STARTED)], NOW, false],
  ["stopped when it was over", [CLOCK.started(STARTED), CLOCK.stopped(120, STARTED)], NOW, true],
];

describe.each(WAITS)("READY-2 a wait %s", (_, lines, now, over) => {
  const { fold, kit } = openKit(...lines);
  const timer = kit.turnaround!.timers[WAITING.id];
  const body = { turnaround: "t1", step: WAITING.id } as const;

  it(`is ${over ? "taken" : "refused"} by the station's rule as on the phone`, () => {
    const act = answerStep(doing(fold, now), kit, { ...body, answer: "seen" });
    expect(allowed(act)).toBe(over ? "right" : "not right");
    expect(act.kind === "refused" ? act.because.map(({ code }) => code) : []).toEqual(over ? [] : ["SN-128"]);
    expect(whyNotYet(WAITING, timer, { now: Date.parse(now), words }) === undefined).toBe(over);
  });

  it("never holds back an answer of wrong or not possible", () => {
    expect(allowed(answerStep(doing(fold, now), kit, { ...body, answer: "wrong" }))).toBe("right");
    const why = { ...body, answer: "not-possible" as const, why: "No time." };
    expect(allowed(answerStep(doing(fold, now), kit, why))).toBe("right");
  });
});

describe("READY-2 a wait that is written down", () => {
  it("is judged the same on a card and before a seal is put on", () => {
    expect(takenAfter(119)).toEqual({ card: false, sealing: false });
    expect(takenAfter(120)).toEqual({ card: true, sealing: true });
  });
});

describe("READY-2 a reading at a step with a wait", () => {
  const value = { kind: "quantity", si: 5, dimension: "length", text: "5 cm" } as const;
  const body = { turnaround: "t1", step: WAITING.id, answer: "wrong", value } as const;

  it("is not taken before the wait is over, by the station's rule or on the phone, whatever is answered", () => {
    const { fold, kit } = openKit(CLOCK.started(STARTED));
    const early = "2026-03-14T11:51:00+00:00";
    expect(refusedFor(answerStep(doing(fold, early), kit, body))).toEqual(["SN-128"]);
    expect(refusedFor(answerStep(doing(fold), kit, body))).toEqual([]);
    const timer = kit.turnaround!.timers[WAITING.id];
    expect(whyNotReadYet(WAITING, timer, { now: Date.parse(early), words })).toBe(
      "The wait is not over: 1\u00a0min left.",
    );
    expect(whyNotReadYet(WAITING, timer, { now: Date.parse(NOW), words })).toBeUndefined();
  });

  it("is taken from a card, which tells of what was read", () => {
    const { fold, kit } = openKit();
    expect(refusedFor(answerStep(doing(fold), kit, { ...body, fromCard: true }))).toEqual([]);
  });
});

describe("READY-26 a line half done", () => {
  const [first, second] = PARTED.checks.map((check) => ({ turnaround: "t1", step: PARTED.id, check })) as [At, At];
  const cock = { turnaround: "t1", step: COCK.id, answer: "seen" } as const;
  const row = { step: COCK, kind: "answer" } as never;

  it("holds back the next by the station's rule, on the phone and on a card, and says what to do", () => {
    const { fold, kit } = openKit(answered(first));
    const open = { view: fold as never, kit, pattern: PATTERN, turnaround: kit.turnaround! };
    const act = answerStep(doing(fold), kit, cock);
    expect(refusedFor(act)).toEqual(["SN-129"]);
    expect(JSON.stringify(act)).toContain('Answer the rest of it first, or \\"not possible\\" and why.');
    expect(barsAt(open, COCK.id)).toHaveLength(1);
    expect(barsAtBox({ open }, row)).toHaveLength(1);
  });

  it("holds back nothing once it is whole, from the card too, nor an answer of wrong or not possible", () => {
    const whole = openKit(answered(first), answered(second));
    expect(refusedFor(answerStep(doing(whole.fold), whole.kit, { ...cock, fromCard: true }))).toEqual([]);
    const half = openKit(answered(first));
    expect(refusedFor(answerStep(doing(half.fold), half.kit, { ...cock, answer: "wrong" }))).toEqual([]);
  });
});

type At = { readonly turnaround: string; readonly step: string; readonly check: string };

function refusedFor(act: ReturnType<typeof answerStep>): readonly string[] {
  return act.kind === "refused" ? act.because.map(({ code }) => code) : [];
}

function takenAfter(seconds: number) {
  const { fold, kit } = openKit(CLOCK.started(STARTED), CLOCK.stopped(seconds, STARTED));
  const open = { view: fold as never, kit, pattern: PATTERN, turnaround: kit.turnaround! };
  const row = { step: WAITING, kind: "answer" } as never;
  const waits = sealingRefusals({ kit, turnaround: kit.turnaround!, pattern: PATTERN, allKits: [kit], seal: "9" });
  return {
    card: !isTooEarlyOnCard({ open }, row),
    sealing: !waits.some((one) => sayRefusal(one, ENGLISH.held).startsWith("Its time has not run")),
  };
}

const BOAT = { kind: "motor boat", length: 10, depth: 1.4 } as const;
function casualty(): CasualtyState {
  const entry = { id: "0190a000-0000-7000-8000-000000000001", place: "station", subject: "casualty:c1" };
  const opened = { ...entry, kind: "casualty-opened", at: "2026-03-14T11:00:00Z", by: "ann", device: "tablet" };
  const fold = createStationFold([]);
  const space = { id: "s1", name: "engine room", sort: "engine-room", part: "aft" } as const;
  fold.add([{ ...opened, body: { name: "Teal", boat: BOAT, space } }]);
  return fold.read().casualties[0]!;
}

const LEVELS: readonly [level: number, possible: boolean][] = [
  [0, true],
  [1.9, true],
  [2, true],
  [2.1, false],
  [9, false],
];

describe.each(LEVELS)("READY-4 a sounding of %s m in a boat with her deck edge at 1.4 m", (level, possible) => {
  const body = { space: "s1", level, text: `${level} m` };

  it(`is ${possible ? "taken" : "refused"} by the station's rule, which the phone asks`, () => {
    const { fold } = openKit();
    const act = takeSounding(doing(fold), casualty(), body);
    const codes = act.kind === "refused" ? act.because.map(({ code }) => code) : [];
    expect(codes.includes("SN-159")).toBe(!possible);
  });

  it(`is ${possible ? "reckoned with" : "refused"} by the question at every door: shell, server and browser`, () => {
    const example = exampleOf("on-scene") as { readonly boat: object };
    const given = { ...example, boat: BOAT, readings: [{ at: 0, level }], pumping: [], now: 60 };
    const codes = faultCodes(() => ask("on-scene", given, { patterns: () => undefined }));
    expect(codes.includes("QU-142")).toBe(!possible);
  });

  it(`${possible ? "stays in" : "is left out of"} the sheet, where another version wrote it`, () => {
    const told = casualty();
    const mark = { entry: "e", at: NOW, by: "ann", device: "tablet" };
    const sounded = { ...told, soundings: [{ ...body, ...mark, mark } as never] };
    expect(believableOf(sounded).soundings).toHaveLength(possible ? 0 : 1);
  });
});

const TAKEN: readonly [name: string, taken: string, codes: readonly string[]][] = [
  ["as it is written", NOW, []],
  ["an hour before", "2026-03-14T11:00:00Z", []],
  ["a second ahead", "2026-03-14T12:00:01Z", ["SN-156"]],
  ["two days before", "2026-03-12T12:00:00Z", ["SN-157"]],
];

describe.each(TAKEN)("READY-3 a sounding read %s", (_, taken, expected) => {
  it("is judged the same by the server", () => {
    const body = { space: "s1", level: 0.4, text: "40 cm", taken };
    const entry = { id: "0190a000-0000-7000-8000-000000000003", kind: "sounding-taken", at: NOW, body };
    const where = { place: "station", subject: "casualty:c1", by: "ann", device: "tablet" };
    const facts = { person: "ann", role: "keeper", device: "tablet", find: () => undefined } as const;
    const faults = judgeEntry({ ...entry, ...where }, { ...facts, hasPlace: () => true, hasPattern: () => true });
    expect(faults.map(({ code }) => code)).toEqual(expected);
  });
});

describe.each([
  ["as it is written", 0, false],
  ["an hour before", -60, false],
  ["a minute ahead", 1, true],
])("READY-3 a sounding read %s", (_, minutes, isAhead) => {
  it("is judged the same by the phone's box for a time of day and by the station's rule", () => {
    const instant = new Date(Date.parse(NOW) + minutes * 60_000);
    const text = `${instant.getHours()}:${String(instant.getMinutes()).padStart(2, "0")}`;
    expect(readClock(text, Date.parse(NOW), Date.parse(NOW)).kind === "ahead").toBe(isAhead);
    expect(judgeInstant(instant.toISOString(), NOW) === "ahead").toBe(isAhead);
  });
});

function faultCodes(work: () => unknown): readonly string[] {
  try {
    work();
    return [];
  } catch (cause) {
    if (isInputError(cause)) return cause.faults.map(({ code }) => code);
    throw cause;
  }
}
