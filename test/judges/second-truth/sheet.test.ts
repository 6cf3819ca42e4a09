import { describe, expect, it } from "vitest";
import { drawCasualty } from "../../../bench/second-truth/families.ts";
import { askSheet, readAnswer, type Answer } from "../../../bench/second-truth/sheet.ts";
import { writeLog, writtenBy } from "../../../bench/second-truth/stick.ts";
import { trueRun, watch } from "../../../bench/second-truth/watching.ts";

const READING = { soundings: 3, stale: false, expected: false, misfit: false };

function spread(p50: number) {
  return { p05: p50, p25: p50, p50, p75: p50, p95: p50 };
}

function wordOf(answer: Partial<Answer>): string {
  return readAnswer({ leave: { kind: "no-sign" }, ...answer }, 0).word;
}

describe("what is read of an answer", () => {
  it("takes the answer's own word before any other", () => {
    const reading = { ...READING, verdict: { kind: "gaining" } };
    expect(wordOf({ word: { kind: "too-soon" }, reading })).toBe("too-soon");
  });

  it("takes the word that the line begins with where the answer has none of its own", () => {
    const verdict = { kind: "gaining" };
    expect(wordOf({ reading: { ...READING, verdict } })).toBe("gaining");
    expect(wordOf({ reading: { ...READING, verdict, expected: true } })).toBe("should-be-gaining");
    expect(wordOf({ reading: { ...READING, verdict, misfit: true } })).toBe("does-not-fit");
    expect(wordOf({ reading: { ...READING, verdict, soundings: 1 } })).toBe("one-sounding");
    expect(wordOf({ reading: { ...READING, verdict, stale: true } })).toBe("not-known");
    expect(wordOf({})).toBe("not-known");
  });

  it("reads a level between two points of the fan, and none past its end", () => {
    const fan = [
      { at: 100, ...spread(0.2) },
      { at: 1300, ...spread(0.8) },
    ];
    const { levels } = readAnswer({ reading: { ...READING, fan }, leave: { kind: "no-sign" } }, 100);
    expect(levels[0]![2]).toBeCloseTo(0.5, 12);
    expect(levels[1]![2]).toBeCloseTo(0.8, 12);
    expect(levels[2]).toBeUndefined();
  });

  it("reads what decides the call to leave, and what is thought of each pump", () => {
    const answer = { leave: { kind: "now", seen: true }, pumps: [{ doubt: "none" }, { doubt: "dead" }] };
    expect(readAnswer(answer, 0)).toMatchObject({ leave: "now", leaveSeen: true, doubts: ["none", "dead"] });
  });
});

describe("what the sheet is asked", () => {
  it("is asked what it takes: a list, two pumps, a patch, nothing pumped, at the third sounding", () => {
    const words = (["heel", "second pump", "patch told", "no pump"] as const).map((family) => {
      const casualty = drawCasualty(family, 1);
      const { moments } = watch(casualty, () => readAnswer({ leave: { kind: "no-sign" } }, 0));
      const again = drawCasualty(family, 1);
      const log = writeLog(
        again,
        moments.map(({ truth }) => truth.level),
      );
      return askSheet(again, writtenBy(log, again, Math.min(2, moments.length - 1))).word;
    });
    expect(words).not.toContain("refused");
    expect(words).not.toContain("one-sounding");
  });

  it("is told of nothing that nobody knows: no untold patch, and no pump before it is started", () => {
    const casualty = drawCasualty("patch untold", 2);
    const log = writeLog(
      casualty,
      casualty.soundings.map(() => 0.3),
    );
    expect(log.patches).toEqual([]);
    const second = drawCasualty("second pump", 2);
    const written = writeLog(
      second,
      second.soundings.map(() => 0.3),
    );
    expect(writtenBy(written, second, 4).pumping).toHaveLength(1);
    expect(writtenBy(written, second, 6).pumping).toHaveLength(2);
    expect(trueRun(second).at[0]).toBe(0);
  });
});
