import { describe, expect, it } from "vitest";
import { alwaysGaining, alwaysLeave, oracle } from "../../../bench/second-truth/controls.ts";
import { drawCasualty, FAMILIES } from "../../../bench/second-truth/families.ts";
import { brierScore, logScore, rankedScore } from "../../../bench/second-truth/forecasts.ts";
import { shareOf, wilson } from "../../../bench/second-truth/intervals.ts";
import { measure, notKept } from "../../../bench/second-truth/report.ts";
import { isKept, type Row } from "../../../bench/second-truth/rows.ts";
import { below, carryLine } from "../../../bench/second-truth/rules.ts";
import type { Five, SheetAnswer, Written } from "../../../bench/second-truth/sheet.ts";
import { watch, type Asker, type Moment, type Truth, type Watched } from "../../../bench/second-truth/watching.ts";

/** Two casualties of each family, watched once; whoever answers is put in afterwards. */
const watched = FAMILIES.flatMap((family) => [0, 1].map((number) => drawCasualty(family, number))).map((casualty) => ({
  casualty,
  seen: watch(casualty, alwaysGaining),
}));

function runWith(asker: Asker): readonly Row[] {
  const all = watched.map(({ casualty, seen }) => ({
    ...seen,
    moments: seen.moments.map((moment) => ({ ...moment, sheet: asker(casualty, writtenAt(moment), moment.truth) })),
  }));
  return measure(all);
}

function writtenAt({ written }: Moment): Written {
  return { now: written.at, readings: [written], pumping: [], patches: [] };
}

describe("controls: a scorer that cannot fail proves nothing", () => {
  it("fails one that always says GAINING and never leave, in each bound on GAINING, HOLDING and the warning", () => {
    const missed = notKept(runWith(alwaysGaining)).map(({ name }) => name);
    expect(missed).toEqual(
      expect.arrayContaining([
        "of words GAINING, truly falling",
        "of truly losing, called GAINING",
        "the same, nothing untold",
        "of steady, 4 soundings since the change: HOLDING",
        "lost within 15 min, each 3 min: warned 5 min before",
      ]),
    );
  });

  it("fails one that always tells people to leave, and never says a word", () => {
    const missed = notKept(runWith(alwaysLeave)).map(({ name }) => name);
    expect(missed).toContain("of `leave now`, more than 30 min truly left");
    expect(missed).toContain("of words GAINING, truly falling");
  });

  it("passes one that knows the truth in every word, every call to leave and every score", () => {
    const missed = notKept(runWith(oracle)).filter(({ group }) => group !== "intervals");
    expect(missed).toEqual([]);
  });

  it("takes nothing to judge by for a bound that is not kept", () => {
    const row: Row = { group: "word", name: "none", value: Number.NaN, counts: "0 of 0", wanted: { atLeast: 0.5 } };
    expect(isKept(row)).toBe(false);
  });
});

const TRUTH: Truth = {
  level: 0.5,
  rise: 5e-5,
  swing: 0.2,
  since: 900,
  soundingsSince: 5,
  changes: 0,
  untold: false,
  levels: [0.53, 0.56, 0.68],
  left: 900,
  pumpedDown: null,
};
const SHEET: SheetAnswer = { word: "losing", misfit: false, leave: "now", leaveSeen: false, levels: [] };

function momentOf(sounding: number, truth: Partial<Truth>, sheet: Partial<SheetAnswer>): Moment {
  return {
    sounding,
    at: 180 * sounding,
    written: { at: 180 * sounding, level: 0.5 },
    truth: { ...TRUTH, ...truth },
    sheet: { ...SHEET, ...sheet },
  };
}

function watchedOf(moments: readonly Moment[], lostAt: number | null = null): Watched {
  return { family: "one pump", number: 0, interval: 180, lostAt, changes: [], pumps: [], moments };
}

function valueOf(rows: readonly Row[], name: string): number {
  return rows.find((row) => row.name === name)!.value;
}

describe("counts, by hand", () => {
  it("counts answers: one GAINING of four while she is losing", () => {
    const words = ["losing", "gaining", "losing", "too-soon"];
    const rows = measure([watchedOf(words.map((word, n) => momentOf(n, {}, { word })))]);
    expect(valueOf(rows, "of truly losing, called GAINING")).toBe(0.25);
    expect(valueOf(rows, "of words LOSING, truly rising")).toBe(1);
  });

  it("counts a call to leave as false with more than 30 minutes left, and not where people saw what decides", () => {
    const moments = [
      momentOf(0, { left: 1801 }, {}),
      momentOf(1, { left: 1799 }, {}),
      momentOf(2, { left: null }, { leaveSeen: true }),
      momentOf(3, { left: null }, { leave: "be-ready" }),
    ];
    expect(valueOf(measure([watchedOf(moments)]), "of `leave now`, more than 30 min truly left")).toBe(0.5);
  });

  it("counts each false call under the first cause that fits, and no call that was right", () => {
    const told = [[0.6, 0.7, 0.8, 0.9, 1] as const];
    const moments = [
      momentOf(0, { left: 1801, levels: [0.7], untold: true, soundingsSince: 2 }, { levels: told }),
      momentOf(1, { left: null, levels: [0.5] }, { levels: told }),
      momentOf(2, { left: null, levels: [0.7] }, { levels: told }),
      momentOf(3, { left: 2000, levels: [0.7] }, { levels: told }),
      momentOf(4, { left: 300, levels: [null] }, { levels: told }),
    ];
    const rows = measure([watchedOf(moments)]).filter(({ group }) => group === "false calls");
    expect(rows.map(({ name, value }) => [name, value])).toEqual([
      ["of false calls, something untold had just happened", 1 / 4],
      ["of false calls, a rise faster than came", 1 / 4],
      ["of false calls, a list told, the deck edge by geometry", 0],
      ["of false calls, she comes to rest: the hull guessed is lost, she is not", 1 / 4],
      ["of false calls, lost at a higher level than guessed", 1 / 4],
    ]);
  });

  it("tells a call to be ready by what people saw from one by figures, and by whether she is losing", () => {
    const ready = { leave: "be-ready" };
    const moments = [
      momentOf(0, { left: null }, { ...ready, leaveSeen: true }),
      momentOf(1, { left: null }, ready),
      momentOf(2, { left: null }, { leave: "no-sign" }),
      momentOf(3, { left: null, rise: 0 }, { leave: "no-sign" }),
      momentOf(4, { left: null, rise: 0 }, ready),
      momentOf(5, { left: 7200 }, ready),
    ];
    const rows = measure([watchedOf(moments)]);
    expect(valueOf(rows, "of answers with more than 4 h left, `be ready`")).toBe(3 / 5);
    expect(valueOf(rows, "the same, by what people saw")).toBe(1 / 5);
    expect(valueOf(rows, "the same, by figures, while she is losing")).toBe(1 / 3);
    expect(valueOf(rows, "the same, by figures, while she is not")).toBe(1 / 2);
  });

  it("goes by the answer that stands five minutes before she is lost", () => {
    const name = "lost within 15 min, each 3 min: warned 5 min before";
    const calls = ["be-ready", "no-sign", "now"];
    const moments = calls.map((leave, n) => momentOf(n, { left: 800 - 180 * n }, { leave }));
    expect(valueOf(measure([watchedOf(moments, 650)]), name)).toBe(0);
    expect(valueOf(measure([watchedOf(moments, 665)]), name)).toBe(1);
    expect(valueOf(measure([watchedOf(moments, 901)]), name)).toBeNaN();
  });

  it("counts a word that turns and turns back, and none that turns once", () => {
    const name = "word turns and turns back without a change, in 100 answers";
    const of = (words: readonly string[]): number =>
      valueOf(measure([watchedOf(words.map((word, n) => momentOf(n, {}, { word })))]), name);
    expect(of(["losing", "gaining", "too-soon", "losing"])).toBe(25);
    expect(of(["losing", "losing", "gaining", "gaining"])).toBe(0);
  });

  it("counts soundings to the first right word from the first sounding", () => {
    const words = ["one-sounding", "gaining", "losing", "losing"];
    const moments = words.map((word, n) => momentOf(n, { soundingsSince: n + 1 }, { word }));
    expect(
      valueOf(measure([watchedOf(moments)]), "soundings to the first right word, from the first sounding, median"),
    ).toBe(3);
  });
});

describe("figures, against published ones", () => {
  it.each([
    [81, 263, 0.2553, 0.3662],
    [15, 148, 0.0624, 0.1605],
    [0, 20, 0, 0.1611],
    [1, 29, 0.0061, 0.1718],
  ])(
    "has the score interval of %d in %d: Newcombe, Statistics in Medicine 17 (1998) 857, table I",
    (k, n, low, high) => {
      expect(wilson(k, n).low).toBeCloseTo(low, 4);
      expect(wilson(k, n).high).toBeCloseTo(high, 4);
    },
  );

  it("draws casualties, not answers: answers that hang together count as one", () => {
    const apart = shareOf(Array.from({ length: 200 }, (_, n) => ({ hits: n % 2, of: 1 })));
    const together = shareOf(Array.from({ length: 20 }, (_, n) => ({ hits: 10 * (n % 2), of: 10 })));
    expect(together.share).toBe(apart.share);
    expect(together.high - together.low).toBeGreaterThan(2.5 * (apart.high - apart.low));
  });

  it("has the normal distribution of Abramowitz and Stegun, table 26.1", () => {
    expect(below(1)).toBeCloseTo(0.84134475, 6);
    expect(below(-1.96)).toBeCloseTo(0.0249979, 6);
  });

  it("comes near the CRPS of a normal, Gneiting and Raftery, JASA 102 (2007) 359, eq. 21", () => {
    const told: Five = [-1.644854, -0.67449, 0, 0.67449, 1.644854];
    for (const z of [0, 0.5, 1, 2]) {
      const density = Math.exp(-(z ** 2) / 2) / Math.sqrt(2 * Math.PI);
      const exact = z * (2 * below(z) - 1) + 2 * density - 1 / Math.sqrt(Math.PI);
      expect(Math.abs(rankedScore(told, z) - exact)).toBeLessThan(0.02);
    }
  });

  it("scores a third each as ln 3 (Good 1952) and 2/3 (Brier 1950)", () => {
    const even = { gaining: 1 / 3, holding: 1 / 3, losing: 1 / 3 };
    expect(logScore(even, "losing")).toBeCloseTo(Math.log(3), 12);
    expect(brierScore(even, "losing")).toBeCloseTo(2 / 3, 12);
  });

  it("carries the least-squares line on (Gauss): 0, 1, 2, 3 cm a minute apart are 13 cm ten minutes later", () => {
    const readings = [0, 1, 2, 3].map((n) => ({ at: 60 * n, level: 0.01 * n }));
    const line = carryLine(readings, 4)!;
    expect(line.levels[0]![2]).toBeCloseTo(0.13, 12);
    expect(line.chances.losing).toBeGreaterThan(0.8);
    expect(carryLine(readings.slice(0, 1), 2)).toBeUndefined();
  });
});
