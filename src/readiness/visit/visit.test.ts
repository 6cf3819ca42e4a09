import { createFold, type Entry } from "#log";
import { describe, expect, it } from "vitest";
import { Hand, kitOf, SAMPLE_PATTERN } from "../kit/sample-kit.ts";
import type { VisitBodies } from "../kinds/kinds.ts";
import {
  applyVisitEntry,
  begunVisit,
  compareVisit,
  drawKits,
  drawLines,
  drawnIn,
  frameOf,
  lookedAtFirst,
  type Visit,
  type VisitSoFar,
} from "./index.ts";

const PATTERNS = new Map([["sample@1", SAMPLE_PATTERN]]);
const LOOKS = ["turns", "paint", "light", "cell-date", "volts"];
const STEP_OF: Readonly<Record<string, string>> = {
  turns: "look-pump",
  paint: "look-pump",
  light: "look-torch",
  "cell-date": "look-torch",
  volts: "look-torch",
};

const turnedRound = () => new Hand().enrol().open("t0").doAll("t0").seal("00500", "t0");
const linesOf = (checks: readonly string[]) => checks.map((check) => ({ step: STEP_OF[check]!, check }));

const BEGUN: VisitBodies["visit-begun"] = {
  places: ["north"],
  chance: 0.9,
  share: 0.1,
  kits: 1,
  seed: "0123456789abcdef",
  of: [{ kit: "k1", turnaround: "t0", pattern: "sample@1", lines: linesOf(LOOKS) }],
};

/** One device that writes of a visit, from ten in the morning. */
class Pen {
  readonly entries: Entry[] = [];
  #minute = 0;
  #seen: readonly string[] = [];

  constructor(
    readonly device = "phone",
    seen: readonly string[] = [],
    minute = 0,
  ) {
    this.#seen = seen;
    this.#minute = minute;
  }

  write<Kind extends keyof VisitBodies>(kind: Kind, body: VisitBodies[Kind], minute = this.#minute): this {
    const id = `${this.device}-${this.entries.length}`;
    const at = new Date(Date.UTC(2026, 1, 1, 10, minute)).toISOString();
    const line = { id, place: "station", subject: "visit:v1", kind, at, by: "cat", device: this.device };
    this.entries.push({ ...line, after: this.#seen, body });
    this.#seen = [id];
    this.#minute = minute + 1;
    return this;
  }

  saw(check: string, answer: "seen" | "wrong" | "not-possible", more: object = {}): this {
    return this.write("line-reexamined", { kit: "k1", ...linesOf([check])[0]!, answer, ...more });
  }

  fork(device: string): Pen {
    return new Pen(device, this.#seen, this.#minute);
  }
}

function visitOf(...entries: readonly Entry[]): Visit {
  const fold = createFold<VisitSoFar | undefined>({ init: () => undefined, apply: applyVisitEntry });
  fold.add(entries);
  const visit = begunVisit(fold.state("visit:v1"));
  if (!visit) throw new Error("These entries begin no visit.");
  return visit;
}

const outcomes = (visit: Visit, hand: Hand) =>
  Object.fromEntries(
    compareVisit(visit, { kits: [kitOf(hand)], patterns: PATTERNS }).map((line) => [line.check, line.outcome]),
  );

const ids = (of: readonly { readonly kit: { readonly id: string } }[]) => of.map(({ kit }) => kit.id).toSorted();
const raise = (hand: Hand, finding: string, turnaround?: string) =>
  hand.write("finding-raised", {
    finding,
    item: "pump",
    mode: "pump-seized",
    effect: "grounds",
    step: "look-pump",
    check: "turns",
    photos: [],
    ...(turnaround !== undefined && { turnaround }),
  });
const date = (day: string) => ({ value: { kind: "date", date: day } });

describe("what a visit can draw from", () => {
  it("READY-28 is the looks and readings that the keeper answered: no run, no wait, no line that was not possible", () => {
    const hand = turnedRound();
    const frame = frameOf([kitOf(hand)], PATTERNS, ["north"]);
    expect(frame.kits[0]!.lines.map(({ check }) => check)).toEqual(LOOKS);
    const other = new Hand().enrol().open("t0").doAll("t0");
    other.write("step-answered", {
      turnaround: "t0",
      step: "look-torch",
      check: "light",
      answer: "not-possible",
      why: "No cells.",
    });
    other.seal("00500", "t0");
    expect(frameOf([kitOf(other)], PATTERNS, ["north"]).kits[0]!.lines.map(({ check }) => check)).not.toContain(
      "light",
    );
  });

  it("READY-28 leaves out a kit that is open, away, in a drill, or of which nobody wrote anything", () => {
    const why = (hand: Hand) => frameOf([kitOf(hand)], PATTERNS, ["north"]).left.map(({ because }) => because);
    expect(why(new Hand().enrol())).toEqual(["nothing-written"]);
    expect(why(turnedRound().open("t1", "00500"))).toEqual(["open"]);
    const away = turnedRound();
    away.write("handed-over", { to: "Tern", method: "passed", sealBroken: false });
    expect(why(away)).toEqual(["away"]);
    const drilled = turnedRound();
    drilled.write("drill-begun", { drill: "d1", sealSeen: "00500", trainees: ["ben"] });
    expect(why(drilled)).toEqual(["drill"]);
    expect(frameOf([kitOf(turnedRound())], PATTERNS, ["south"])).toEqual({ kits: [], left: [] });
    expect(frameOf([kitOf(turnedRound())], new Map(), ["north"]).left[0]!.because).toBe("no-pattern");
  });
});

const begunBy = (pen: Pen) => pen.write("visit-begun", BEGUN);

describe("a visit that is on", () => {
  it("READY-41 names its kits, and the lines of a kit that its assessor has still to look at", () => {
    const pen = begunBy(new Pen()).saw("paint", "seen");
    const visit = visitOf(...pen.entries);
    expect(lookedAtFirst([visit], "k1").map(({ check }) => check)).toEqual(["turns", "light", "cell-date", "volts"]);
    expect(lookedAtFirst([visit], "k2")).toEqual([]);
  });

  it("READY-41 holds no keeper back once it is over", () => {
    const visit = visitOf(
      ...begunBy(new Pen()).write("visit-ended", { reason: "The assessor was called away." }).entries,
    );
    expect(lookedAtFirst([visit], "k1")).toEqual([]);
  });

  it("READY-41 draws no kit of which it only might have drawn", () => {
    const of = [...BEGUN.of, { kit: "k2", turnaround: "t0", pattern: "sample@1" }];
    const visit = visitOf(...new Pen().write("visit-begun", { ...BEGUN, of }).entries);
    expect(["k1", "k2"].filter((kit) => lookedAtFirst([visit], kit).length > 0)).toEqual(["k1"]);
  });
});

describe("the draw", () => {
  const kits = Array.from({ length: 12 }, (_, i) => {
    const id = `k${i}`;
    return { kit: { id }, lines: LOOKS.map((check) => ({ kit: id, step: "s", check })) };
  });

  it("READY-29 gives the same for the same seed, whatever the order of the kits, and another for another", () => {
    const drawn = drawKits(kits, "0123456789abcdef", 5);
    expect(drawn).toHaveLength(5);
    expect(ids(drawKits(kits.toReversed(), "0123456789abcdef", 5))).toEqual(ids(drawn));
    expect(ids(drawKits(kits, "0123456789abcdee", 5))).not.toEqual(ids(drawn));
    expect(drawLines(drawn, "0123456789abcdef", 7)).toHaveLength(7);
    expect(drawLines(drawn, "0123456789abcdef", 99)).toHaveLength(25);
    expect(drawKits(kits, "0123456789abcdef", 0)).toEqual([]);
  });

  it("READY-29 draws each line as often as any other, over seeds (chi-square of 60 lines, one in a thousand)", () => {
    const counts = new Map<string, number>();
    const seeds = 2_000;
    for (let i = 0; i < seeds; i += 1) {
      for (const { kit, check } of drawLines(kits, i.toString(16).padStart(16, "0"), 15)) {
        counts.set(`${kit}/${check}`, (counts.get(`${kit}/${check}`) ?? 0) + 1);
      }
    }
    const expected = (seeds * 15) / 60;
    const spread = expected * (1 - 15 / 60);
    const sum = [...counts.values()].reduce((total, count) => total + (count - expected) ** 2 / spread, 0);
    expect(counts.size).toBe(60);
    expect(sum).toBeLessThan(98.3);
  });
});

describe("the comparison", () => {
  it("READY-30 tells both right, missed, and what was not looked at or not possible", () => {
    const pen = new Pen().write("visit-begun", BEGUN);
    pen.saw("turns", "wrong", { finding: "f9" }).saw("paint", "seen").saw("light", "not-possible", { why: "Dark." });
    expect(outcomes(visitOf(...pen.entries), turnedRound())).toEqual({
      turns: "missed",
      paint: "both-right",
      light: "not-possible",
      "cell-date": "left",
      volts: "left",
    });
  });

  it("READY-30 takes a line as wrong where its finding was open when the visit began, and as right once it was proved", () => {
    const found = new Hand().enrol().open("t0").doAll("t0");
    raise(found, "f1", "t0");
    found.write("closed-grounded", { turnaround: "t0", reason: "Seized." });
    const wrong = new Pen().write("visit-begun", BEGUN).saw("turns", "wrong", { finding: "f1" });
    const right = new Pen().write("visit-begun", BEGUN).saw("turns", "seen");
    expect(outcomes(visitOf(...wrong.entries), found)["turns"]).toBe("both-wrong");
    expect(outcomes(visitOf(...right.entries), found)["turns"]).toBe("false-alarm");
    found.write("remedy-made", { finding: "f1", how: "mended", note: "Freed." });
    found.write("finding-proved", { finding: "f1", checks: [{ check: "turns", answer: "seen" }] });
    expect(outcomes(visitOf(...right.entries), found)["turns"]).toBe("both-right");
  });

  it("READY-30 does not take what the assessor raised for what the keeper wrote", () => {
    const hand = turnedRound();
    const pen = new Pen().write("visit-begun", BEGUN).saw("turns", "wrong", { finding: "f9" });
    hand.write(
      "finding-raised",
      { finding: "f9", item: "pump", mode: "pump-seized", effect: "grounds", check: "turns", photos: [] },
      "2026-02-01",
    );
    const later = hand.entries.at(-1)!;
    expect(Date.parse(later.at)).toBeLessThan(Date.parse(pen.entries[0]!.at));
    expect(outcomes(visitOf(...pen.entries), hand)["turns"]).toBe("both-wrong");
    const after = turnedRound();
    after.write(
      "finding-raised",
      { finding: "f9", item: "pump", mode: "pump-seized", effect: "grounds", check: "turns", photos: [] },
      "2026-02-02",
    );
    const [line] = compareVisit(visitOf(...pen.entries), { kits: [kitOf(after)], patterns: PATTERNS });
    expect(line).toMatchObject({ outcome: "missed", finding: { id: "f9", effect: "grounds" } });
  });

  it("READY-30 takes the same reading for the same, in whatever order its parts were written", () => {
    const value = { date: "2027-03", kind: "date" };
    const pen = new Pen().write("visit-begun", BEGUN).saw("cell-date", "seen", { value });
    const lines = compareVisit(visitOf(...pen.entries), { kits: [kitOf(turnedRound())], patterns: PATTERNS });
    expect(lines.filter(({ isReadOtherwise }) => isReadOtherwise)).toEqual([]);
  });

  it("READY-30 tells where both found it right and read another date", () => {
    const same = new Pen().write("visit-begun", BEGUN).saw("cell-date", "seen", date("2027-03"));
    const other = new Pen().write("visit-begun", BEGUN).saw("cell-date", "seen", date("2027-05"));
    const read = (pen: Pen) =>
      compareVisit(visitOf(...pen.entries), { kits: [kitOf(turnedRound())], patterns: PATTERNS }).find(
        ({ check }) => check === "cell-date",
      )!.isReadOtherwise;
    expect([read(same), read(other)]).toEqual([false, true]);
  });

  it("says that the keeper's line is not at hand where the kit or its turnaround is not", () => {
    const pen = new Pen().write("visit-begun", BEGUN).saw("turns", "seen");
    const [line] = compareVisit(visitOf(...pen.entries), { kits: [], patterns: PATTERNS });
    expect(line!.outcome).toBe("not-at-hand");
  });
});

describe("a visit in the log", () => {
  it("READY-31 does not count what was read by somebody who knew that it was over, and does what was read without sight of that", () => {
    const pen = new Pen().write("visit-begun", BEGUN).saw("paint", "seen");
    const away = pen.fork("tablet");
    pen.write("visit-ended", { reason: "Dark." });
    away.saw("light", "seen").saw("turns", "seen");
    pen.saw("volts", "seen");
    const visit = visitOf(...pen.entries, ...away.entries);
    expect(Object.keys(visit.seen).toSorted()).toEqual([
      "k1/look-pump/paint",
      "k1/look-pump/turns",
      "k1/look-torch/light",
    ]);
    expect(visit.ended?.reason).toBe("Dark.");
  });

  it("READY-31 holds that too where the clock of who knew ran behind", () => {
    const pen = new Pen().write("visit-begun", BEGUN, 5).write("visit-ended", { reason: "Dark." }, 30);
    pen.write("line-reexamined", { kit: "k1", ...linesOf(["turns"])[0]!, answer: "seen" }, 10);
    expect(visitOf(...pen.entries).seen).toEqual({});
  });

  it("keeps only lines that were drawn, also where one stands before the beginning by its clock", () => {
    const pen = new Pen().write("visit-begun", BEGUN, 5);
    pen.write("line-reexamined", { kit: "k1", ...linesOf(["turns"])[0]!, answer: "seen" }, 2);
    pen.write("line-reexamined", { kit: "k2", step: "x", check: "y", answer: "seen" }, 3);
    pen.write("line-reexamined", { kit: "k2", step: "x", check: "y", answer: "seen" }, 9);
    expect(Object.keys(visitOf(...pen.entries).seen)).toEqual(["k1/look-pump/turns"]);
  });

  it("begins once, and takes the last word on a line", () => {
    const pen = new Pen().write("visit-begun", BEGUN).write("visit-begun", { ...BEGUN, kits: 9 });
    pen.saw("turns", "wrong", { finding: "f1" }).saw("turns", "seen");
    const visit = visitOf(...pen.entries);
    expect(visit.begun.kits).toBe(1);
    expect(visit.seen["k1/look-pump/turns"]!.answer).toBe("seen");
    expect(drawnIn(visit)).toHaveLength(5);
  });
});
