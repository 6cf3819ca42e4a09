import { fetchWords } from "#words";
import { describe, expect, it } from "vitest";
import type { KitState } from "#readiness";
import type { KitStartRecord } from "#station";
import {
  sayCommon,
  sayEnough,
  sayEnoughRests,
  sayHidden,
  sayNext,
  sayNoChance,
  sayOfTen,
  sayOneMore,
  sayRecord,
  sayRests,
  sayTonight,
  sayTonightShort,
  sayToldOf,
} from "./start-words.ts";

const words = await fetchWords("en", "starts");

const record = (more: Partial<KitStartRecord>): KitStartRecord => ({
  demands: [],
  failures: 0,
  asked: [],
  failing: { mean: 0.05, p05: 0.01, p50: 0.04, p95: 0.12 },
  openings: 0,
  others: 0,
  othersStarts: 0,
  ...more,
});
const asked = (count: number) =>
  Array.from({ length: count }, (_, i) => ({
    at: `2027-01-${10 + i}T00:00:00Z`,
    on: "turnaround" as const,
    worked: true,
  }));

describe("words about starting", () => {
  it("warn, on the page and in few words on the board, where one failure more of another would flatter the kit", () => {
    const tonight = { days: 3, working: { mean: 0.94, p05: 0.85, p50: 0.95, p95: 0.99 } };
    const flattered = record({ failing: { mean: 0.0603, p05: 0.01, p50: 0.04, p95: 0.12 }, oneMore: 0.0376 });
    expect(sayOneMore(flattered, words)).toContain("fail 6.0 times in 100");
    expect(sayOneMore(flattered, words)).toContain("could make that 3.8");
    expect(sayTonightShort(tonight, flattered, words)).toMatch(/; one failure more of another .* no better$/);
    expect(sayOneMore(record({}), words)).toBeUndefined();
    expect(sayTonightShort(tonight, record({}), words)).not.toContain("one failure more");
  });

  it("tell a range of ten, and never promise: its upper word is open, no percentage, never safe or sure", () => {
    const all = [
      record({}),
      record({ demands: asked(3), openings: 12, failing: { mean: 0.2, p05: 0.01, p50: 0.1, p95: 0.5 } }),
    ];
    for (const one of all)
      expect(
        [sayOfTen(one, words), sayRecord(one, words), sayNext(one, words), sayRests(one, words)].join(" "),
      ).not.toMatch(/%|\bsafe|\bsure\b|certain|always/);
    expect(sayOfTen(all[0]!, words)).toBe("between 8 and 10 of 10 times");
  });

  it("say how many openings it would take where there is too little", () => {
    expect(sayNext(record({ openings: 12 }), words)).toMatch(
      /That range is wide: about 12 more openings would narrow it\.$/,
    );
    expect(sayNext(record({ openings: 12 }), words)).not.toMatch(/Too little/);
  });

  it("tell the record as it is", () => {
    expect(sayRecord(record({}), words)).toMatch(/Nobody has asked/);
    expect(sayRecord(record({ demands: asked(1) }), words)).toBe(
      "Asked to start 1 time, on 10 Jan 2027, it started and gave water every time.",
    );
    expect(sayRecord(record({ demands: asked(5), failures: 1 }), words)).toBe(
      "Asked to start 5 times since 10 Jan 2027, it failed to start or to give water once.",
    );
  });
});

const toldOf = (...days: string[]) => ({ told: days.map((day) => ({ day })) }) as unknown as KitState;

describe("words about turnarounds that were only told of", () => {
  it("say how many are not counted, of which days, and why, over all kits at once", () => {
    expect(sayToldOf([toldOf("2024-05-02"), toldOf()], words)).toBe(
      "Not counted: 1 turnaround that was only told of, of 2 May 2024. A sheet or a book says that it was done, but no line of it was answered: nothing tells what was looked at, found or started.",
    );
    expect(sayToldOf([toldOf("2024-05-02", "2022-03"), toldOf("2025-01-01")], words)).toMatch(
      /^Not counted: 3 turnarounds that were only told of, from Mar 2022 to 1 Jan 2025\./,
    );
  });

  it("are none where none was told of", () => {
    expect(sayToldOf([toldOf(), {} as KitState], words)).toBeUndefined();
  });
});

const tonight = (p05: number, p50: number, p95: number) => ({ days: 100, working: { mean: p50, p05, p50, p95 } });

describe("words about tonight", () => {
  it("are a word and a range of ten", () => {
    expect(sayTonight(tonight(0.92, 0.97, 0.995), words)).toBe(
      "Very likely to start and give water tonight: 9 to 10 times in 10",
    );
    expect(sayTonight(tonight(0.71, 0.85, 0.93), words)).toBe(
      "Likely to start and give water tonight: 7 to 9 times in 10",
    );
    expect(sayTonight(tonight(0.3, 0.4, 0.55), words)).toBe(
      "Doubtful to start and give water tonight: 3 to 5 times in 10",
    );
    expect(sayTonight(tonight(0.2, 0.7, 0.95), words)).toBe(
      "May or may not start and give water tonight: 2 to 9 times in 10",
    );
  });

  it("say on one line of the board what they rest on", () => {
    const likely = tonight(0.71, 0.85, 0.93);
    const own = { demands: asked(5), others: 2, othersStarts: 11 };
    expect(sayTonightShort(likely, record(own), words)).toBe(
      "Likely to start and give water tonight: 7 to 9 times in 10, by its 5 starts since 10 Jan 2027 and 11 of 2 others",
    );
    expect(sayTonightShort(likely, record({ demands: asked(1) }), words)).toMatch(/, by its 1 start, on 10 Jan 2027$/);
    expect(sayTonightShort(likely, record({ others: 2, othersStarts: 11 }), words)).toMatch(
      /, by no start of its own and 11 of 2 others$/,
    );
  });

  it("say of a place how many, and what they share", () => {
    const common = [{ kind: "fuel" as const, key: "fuel x", of: "fuel", kits: ["a", "b"] }];
    const starts = { count: 14, since: "2026-03-04T10:00:00Z" };
    const enough = { least: 2, of: 3, chance: { p05: 0.82, p50: 0.9, p95: 0.97 }, common, untold: ["c"], starts };
    expect(sayEnough(enough, words)).toBe("at least 2 of 3 start and give water tonight 8 to 10 times in 10");
    expect(sayCommon(enough, { kit: (kit) => kit.toUpperCase(), other: String }, words)).toEqual([
      "A, B share fuel of one delivery.",
    ]);
    expect(sayEnoughRests(enough, (kit) => kit.toUpperCase(), words)).toBe(
      "The range holds nine times in ten. It rests on 14 starts of these kits since 4 Mar 2026. Not counted: C, never proved, or of a pattern of which no kit has lain closed between two openings.",
    );
    expect(sayEnoughRests({ ...enough, untold: [], starts: { count: 0 } }, String, words)).toBe(
      "The range holds nine times in ten. It rests on no start of these kits, so it is wide.",
    );
  });

  it("are not told of a kit that is grounded, stands open or is away: why stands there instead", () => {
    const because = [{ rule: "finding" as const, text: "Wrong seal." }];
    const standing = { standing: "grounded" as const, because, limits: [], restore: { what: [], minutes: 0 } };
    expect(sayNoChance(standing, words)).toBe("No chance is told for tonight: Wrong seal.");
    for (const kind of ["open", "away"] as const)
      expect(sayNoChance({ ...standing, standing: kind }, words)).toMatch(/^No chance is told/);
    for (const kind of ["ready", "ready-with-limits"] as const)
      expect(sayNoChance({ ...standing, standing: kind }, words)).toBeUndefined();
  });

  it("say what they rest on, and of no other that it tells nothing where it was never asked", () => {
    expect(sayRests(record({ demands: asked(3) }), words)).toMatch(/no other of its pattern was ever asked\.$/);
    expect(sayRests(record({}), words)).toMatch(/fewer than two of its pattern were ever asked\.$/);
    expect(sayRests(record({ demands: asked(1), others: 2, othersStarts: 11 }), words)).toMatch(
      /this kit's 1 start, and on 11 starts of 2 other kits of its pattern\.$/,
    );
  });

  it("say what the fall since the proof rests on", () => {
    expect(sayHidden(record({}), words)).toMatch(/cannot be told/);
    const unseen = { found: 1, lay: 3e7, looks: 2 };
    const hidden = { mean: 1 / (10 * 365.25 * 86_400), spread: [], from: "fleet" as const };
    expect(sayHidden(record({ unseen, hidden }), words)).toMatch(
      /Opened 2 times.*had 1 fault .*about 1 fault comes unseen/,
    );
    expect(sayHidden(record({ unseen, hidden }), words)).not.toMatch(/counts once/);
    expect(sayHidden(record({ unseen, hidden, failures: 1 }), words)).toMatch(
      /A start that failed counts once, whatever was found after it in the same opening\.$/,
    );
    const many = { ...hidden, mean: 0.46 / (10 * 365.25 * 86_400) };
    expect(sayHidden(record({ unseen, hidden: many }), words)).toContain("about 0.46 faults come unseen");
  });
});
