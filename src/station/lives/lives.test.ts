import type { Pattern } from "#kit";
import { normalChance, normalQuantile, repeatableStream } from "#numerics";
import type { KitState } from "#readiness";
import { lastingOf, type Lasting } from "#reliability";
import { describe, expect, it } from "vitest";
import { itemLife, kitLasts, patternLives, type LivesLog } from "./index.ts";
import { lifeTold } from "./life-told.ts";
import { livesSeen, type KitLines, type LifeSeen } from "./lives-seen.ts";

const GASKET = { id: "gasket", name: "Gasket", extendable: true, life: { kind: "fitted", span: { days: 730 } } };
const PATTERN = {
  id: "pump",
  version: 1,
  policy: { turnaround: { days: 365 } },
  items: [GASKET, { id: "bolt", name: "Bolt", life: { kind: "none" } }],
  modes: [
    { id: "hard", item: "gasket", name: "hard", effect: "grounds" },
    { id: "torn", item: "gasket", name: "torn", effect: "notes" },
    { id: "gone", item: "gasket", name: "missing", effect: "grounds", loss: true },
    { id: "rusty", item: "bolt", name: "rusty", effect: "notes" },
  ],
  checks: [
    { id: "press", item: "gasket", finds: ["hard"] },
    { id: "look", item: "gasket", finds: ["torn", "gone"] },
  ],
  stages: [],
} as unknown as Pattern;
const ITEM = PATTERN.items[0]!;
const ALL = new Set(["hard", "torn"]);
const DAY = 86_400_000;
const ZERO = Date.parse("2020-01-01T08:00:00Z");
const day = (n: number) => new Date(ZERO + n * DAY).toISOString();

interface Story {
  /** Days of openings; the checks that were answered. */
  readonly opened: readonly number[];
  readonly asked?: readonly string[];
  /** Found in the opening of that day; closed on that day where it was mended. */
  readonly found?: readonly {
    readonly mode: string;
    readonly on: number;
    readonly mended?: number;
    readonly drill?: string;
  }[];
  readonly fitted?: readonly number[];
  readonly met?: { readonly mode: string; readonly on: number };
  /** Counted as missing when it came back, with a finding of a mode that may also be wear. */
  readonly cameBackWithout?: { readonly mode: string; readonly on: number };
}

function kit(
  id: string,
  { opened, asked = ["press", "look"], found = [], fitted = [], met, cameBackWithout }: Story,
): KitLines {
  const answers = Object.fromEntries(asked.map((check) => [`s/${check}`, { check, answer: "seen" }]));
  const turnarounds = opened.map((n) => {
    return { id: `t${n}`, opened: { at: day(n) }, closed: { at: day(n + 1), how: "sealed" }, answers };
  });
  const findings = found.map(({ mode, on, mended, drill }) => ({
    id: `f${on}`,
    mode,
    turnaround: `t${on}`,
    raised: { at: day(on) },
    ...(mended !== undefined && { closed: { at: day(mended) } }),
    ...(drill && { drill }),
  }));
  const stray = met ? [{ id: "met", mode: met.mode, raised: { at: day(met.on) } }] : [];
  const back = cameBackWithout
    ? [{ id: "back", mode: cameBackWithout.mode, raised: { at: day(cameBackWithout.on) } }]
    : [];
  const returned = cameBackWithout
    ? [
        {
          kind: "returned",
          at: day(cameBackWithout.on),
          body: { counted: [{ item: "gasket", as: "missing" }], findings: [{ finding: "back", item: "gasket" }] },
        },
      ]
    : [];
  const lines = fitted.map((n) => ({
    kind: "item-fitted",
    at: day(n),
    body: { item: "gasket", fitted: day(n).slice(0, 10) },
  }));
  return {
    kit: {
      id,
      pattern: "pump@1",
      enrolled: { at: day(0) },
      turnarounds,
      findings: [...findings, ...stray, ...back],
    } as unknown as KitState,
    lines: [...lines, ...returned],
  };
}

const seen = (story: Story, modes = ALL) =>
  livesSeen(kit("a", story), PATTERN, ITEM, modes).map(({ after, before, looks }) => [after, before, looks]);
const lost = (story: Story, modes = ALL) =>
  livesSeen(kit("a", story), PATTERN, ITEM, modes).map(({ after, before, lost: isLost }) => [after, before, isLost]);
const undated = (story: Story) => livesSeen(kit("a", story), PATTERN, ITEM, ALL).map((life) => life.undated);
const logOf = (kits: readonly KitLines[]): LivesLog => ({
  kits,
  patterns: new Map([["pump@1", PATTERN]]),
  policy: {},
  now: day(2000),
});

describe("lives, as looks at them tell", () => {
  it("are still good at the last look, or ended between two of them", () => {
    expect(seen({ opened: [300, 600] })).toEqual([[600, Infinity, 2]]);
    expect(seen({ opened: [300, 600], found: [{ mode: "hard", on: 600 }] })).toEqual([[300, 600, 2]]);
    expect(seen({ opened: [300], found: [{ mode: "hard", on: 300 }] })).toEqual([[0, 300, 1]]);
  });

  it("begin anew with a new one, and with what was proved mended; a fault that stays open ends nothing twice", () => {
    for (const fitted of [[600.5], [0, 600.5]])
      expect(seen({ opened: [300, 600, 900], fitted })).toEqual([
        [600, Infinity, 2],
        [299.5, Infinity, 1],
      ]);
    expect(seen({ opened: [300, 600, 900], found: [{ mode: "torn", on: 600, mended: 601 }] })).toEqual([
      [300, 600, 2],
      [299, Infinity, 1],
    ]);
    expect(seen({ opened: [300, 600, 900], found: [{ mode: "torn", on: 600 }] })).toEqual([[300, 600, 2]]);
  });

  it("are those of one mode where one is asked for, and no look is one that asks no check of it", () => {
    const story = { opened: [300, 600], found: [{ mode: "torn", on: 600 }] };
    expect(seen(story, new Set(["hard"]))).toEqual([[600, Infinity, 2]]);
    expect(seen({ opened: [300], asked: ["press"] }, new Set(["torn"]))).toEqual([]);
    expect(seen({ opened: [300], met: { mode: "torn", on: 450 } })).toEqual([[300, 450, 2]]);
  });

  it("end by no wear where it is lost: they are still good at the last look before that", () => {
    const gone = { opened: [300, 600], found: [{ mode: "gone", on: 600 }] };
    expect(lost(gone)).toEqual([[300, Infinity, true]]);
    expect(lost(gone, new Set(["torn"]))).toEqual([[300, Infinity, true]]);
    expect(lost({ opened: [300], cameBackWithout: { mode: "torn", on: 450 } })).toEqual([[300, Infinity, true]]);
    expect(lost({ ...gone, found: [...gone.found, { mode: "torn", on: 600 }] })).toEqual([[300, 600, undefined]]);
    const anew = { opened: [300, 600, 900], found: [{ mode: "gone", on: 600, mended: 601 }] };
    expect(lost(anew, new Set(["torn"]))).toEqual([
      [300, Infinity, true],
      [299, Infinity, undefined],
    ]);
  });

  it("say from which look on a life is watched that began when nobody wrote it down", () => {
    expect(undated({ opened: [300, 600] })).toEqual([{ firstLook: 300 }]);
    expect(undated({ opened: [300, 600], fitted: [0] })).toEqual([undefined]);
    expect(undated({ opened: [300, 600], found: [{ mode: "torn", on: 300, mended: 301 }] })).toEqual([
      { firstLook: 300 },
      undefined,
    ]);
  });

  it("leave out what was planted for a drill", () => {
    expect(seen({ opened: [300], found: [{ mode: "hard", on: 300, drill: "d" }] })).toEqual([[300, Infinity, 1]]);
  });
});

/** Age at the end of a life [d] by a chance strictly between 0 and 1. */
type EndOf = (chance: number) => number;

/** Lives looked at once a year until they are found bad, or for so many years. */
function livesOf(count: number, endOf: EndOf, seed: number, years = 8): readonly LifeSeen[] {
  const random = repeatableStream(seed);
  return Array.from({ length: count }, (_, i) => {
    const end = endOf(random());
    const looks = Math.min(years, Math.ceil(end / 365));
    const isBad = end <= looks * 365;
    return {
      kit: `k${i}`,
      from: day(0),
      after: 365 * (isBad ? looks - 1 : looks),
      before: isBad ? 365 * looks : Infinity,
      looks,
    };
  });
}

const weibull = (count: number, shape: number, scale: number, seed: number, years = 8) =>
  livesOf(count, (chance) => scale * (-Math.log(chance)) ** (1 / shape), seed, years);

const clean = (count: number) => weibull(count, 1, 1e9, 1, 1);

describe("how long a thing lasts", () => {
  it("is too little to tell from one clean look, and says about how many more it takes", () => {
    const { verdict, lasts } = lifeTold(
      [{ kit: "a", from: day(0), after: 365, before: Infinity, looks: 1 }],
      365,
      false,
    );
    expect(verdict.kind).toBe("cannot-tell");
    expect(verdict.kind === "cannot-tell" && verdict.looks).toBeGreaterThan(5);
    expect(lasts.low).toBeLessThan(0.3);
  });

  it("DERIVED: clean looks tell at a steady rate once 1.92 spans over their time leave nine in ten", () => {
    expect(lifeTold(clean(18), 365, false).verdict.kind).toBe("cannot-tell");
    expect(lifeTold(clean(19), 365, false).verdict.kind).toBe("lasts");
    const { verdict } = lifeTold(clean(10), 365, false);
    expect(verdict.kind === "cannot-tell" && verdict.looks).toBe(9);
  });

  it("leaves out what was lost before anybody looked, and says how many were lost", () => {
    const one = { kit: "a", from: day(0), before: Infinity, lost: true as const };
    const told = lifeTold(
      [
        { ...one, after: 300, looks: 1 },
        { ...one, after: 0, looks: 0 },
      ],
      365,
      false,
    );
    expect(told).toMatchObject({ lives: 1, ended: 0, looks: 1, watched: 300, lost: 2 });
  });

  it("DERIVED: is not condemned by looks that found nothing: without a failure nothing bounds the rate from below", () => {
    for (const after of [0.004, 5, 100]) {
      const clean2 = Array.from({ length: 2 }, (_, i) => {
        return { kit: `k${i}`, from: day(0), after, before: Infinity, looks: 1 };
      });
      const { lasts, verdict } = lifeTold(clean2, 7300, false);
      expect(lasts.high).toBe(1);
      expect(verdict.kind).toBe("cannot-tell");
      expect(verdict.kind === "cannot-tell" && verdict.looks).toBeGreaterThan(10);
    }
  });

  it("counts nothing of a life of no known age that was bad at its first look, and says how many those were", () => {
    const one = { kit: "a", from: day(0), looks: 1, undated: { firstLook: 0.004 } };
    const told = lifeTold([{ ...one, after: 0, before: 0.004 }], 365, false);
    expect(told).toMatchObject({ lives: 0, ended: 0, looks: 0, watched: 0, undated: 1, oldest: 0 });
    expect(told.verdict.kind).toBe("cannot-tell");
  });

  it("watches a life of no known age from its first look on, whether it was good or bad at it", () => {
    const one = { kit: "a", from: day(0), before: Infinity, looks: 2, undated: { firstLook: 300 } };
    expect(lifeTold([{ ...one, after: 300, looks: 1 }], 365, false)).toMatchObject({ lives: 1, watched: 0 });
    expect(lifeTold([{ ...one, after: 600 }], 365, false)).toMatchObject({ watched: 300, undated: 0 });
    expect(lifeTold([{ ...one, after: 600, before: 800 }], 365, false)).toMatchObject({ ended: 1, watched: 400 });
  });

  it("earns a shorter or a longer life only where its range clears the mark, and a longer one only by older ones", () => {
    expect(lifeTold(weibull(100, 2, 900, 2), 730, true).verdict.kind).toBe("shorter");
    expect(lifeTold(weibull(100, 4, 4000, 3), 730, true).verdict.kind).toBe("longer");
    expect(lifeTold(weibull(100, 4, 4000, 3), 730, false).verdict.kind).toBe("lasts");
    expect(lifeTold(weibull(100, 4, 4000, 3, 1), 730, true).verdict.kind).not.toBe("longer");
  });
});

const share = (ranges: readonly Lasting[], truth: number) =>
  ranges.filter(({ low, high }) => low <= truth && truth <= high).length / ranges.length;

/** Chance of lasting a year, told from 120 lives looked at once a year, over synthetic fleets of one law. */
describe("the range of the chance of lasting a year", { timeout: 400_000 }, () => {
  const TIMES = 800;
  const told = (endOf: EndOf) =>
    Array.from({ length: TIMES }, (_, i) => lifeTold(livesOf(120, endOf, 500_000 + i), 365, false));
  const weibulls = told((chance) => 1500 * (-Math.log(chance)) ** (1 / 1.8));
  const truth = Math.exp(-((365 / 1500) ** 1.8));

  it("holds the truth 0.90 ± 0.03 of the times where lives are Weibull", () => {
    const held = share(
      weibulls.map(({ lasts }) => lasts),
      truth,
    );
    expect(Math.abs(held - 0.9), `${held}`).toBeLessThanOrEqual(0.03);
  });

  it("holds the truth 0.90 ± 0.03 of the times where lives are lognormal", () => {
    const lognormals = told((chance) => 1800 * Math.exp(normalQuantile(chance)));
    const held = share(
      lognormals.map(({ lasts }) => lasts),
      normalChance(-Math.log(365 / 1800)),
    );
    expect(Math.abs(held - 0.9), `${held}`).toBeLessThanOrEqual(0.03);
  });

  it("does not where the likeliest law is taken as if it were known, nor where the truth is another", () => {
    const likeliest = weibulls.map(({ fits }) => lastingOf(fits[0]!, 0, 365, 0.9));
    expect(share(likeliest, truth)).toBeLessThan(0.87);
    expect(
      share(
        weibulls.map(({ lasts }) => lasts),
        0.7,
      ),
    ).toBeLessThan(0.2);
  });
});

/** Ages on day 1108 of what is in a kit of this story, among others. */
function ageOf(story: Story, others: readonly KitLines[]): readonly number[] {
  const own = kit("own", story);
  const log = { ...logOf([...others, own]), now: day(1108) };
  return kitLasts(own, PATTERN, patternLives(PATTERN, log), log, "2023-06-01").map(({ age }) => age);
}

describe("a pattern's lives", () => {
  const kits = Array.from({ length: 20 }, (_, i) =>
    kit(`k${i}`, {
      opened: [365, 730, 1095],
      ...(i % 4 === 0 && { found: [{ mode: "hard", on: 730, mended: 731 }], fitted: [0, 730.9] }),
    }),
  );

  const at = (now: number, next = "2023-12-31") => {
    const log = { ...logOf(kits), now: day(now) };
    return kitLasts(kits[1]!, PATTERN, patternLives(PATTERN, log), log, next);
  };

  it("are told by item, the one that ended most often first; an item that no check looks at is left out", () => {
    const lives = patternLives(PATTERN, logOf(kits));
    expect(lives.map(({ item }) => item.id)).toEqual(["gasket"]);
    expect(lives[0]).toMatchObject({ span: 730, isStated: true, told: { ended: 5, looks: 60 } });
  });

  it("and one by one: its modes, the share still good without a law, and how often it was renewed", () => {
    const close = itemLife(PATTERN, "gasket", logOf(kits))!;
    expect(close.modes.map(({ mode, told }) => [mode.id, told.ended])).toEqual([
      ["hard", 5],
      ["torn", 0],
    ]);
    expect(close.curve.map(({ survival }) => survival)).toEqual(
      close.curve.map(({ survival }) => survival).toSorted((one, other) => other - one),
    );
    expect(close.curve.find(({ at }) => at === 730)!.survival).toBeCloseTo(0.75, 6);
    expect(close.renewed.at(-1)).toMatchObject({ at: 731, count: 0.25 });
    expect(itemLife(PATTERN, "bolt", logOf(kits))).toBeUndefined();
    const only = itemLife(PATTERN, "gasket", logOf([kit("n", { opened: [1], found: [{ mode: "hard", on: 1 }] })]));
    expect(only).toMatchObject({ curve: [], told: { lives: 0, undated: 1 } });
    // How often a thing is lost is no way in which it wears.
    expect(close.modes.map(({ mode }) => mode.id)).not.toContain("gone");
  });

  it("earn no longer life where the pattern says that its class is never extended", () => {
    const kept = Array.from({ length: 60 }, (_, i) => kit(`c${i}`, { opened: [365, 730, 1095, 1460] }));
    const verdict = (extendable: boolean) => {
      const pattern = { ...PATTERN, items: [{ ...ITEM, extendable }, ...PATTERN.items.slice(1)] };
      return patternLives(pattern, logOf(kept))[0]!.told.verdict.kind;
    };
    expect([verdict(true), verdict(false)]).toEqual(["longer", "lasts"]);
  });

  it("say of a kit which of its items lasts to the next opening, and nothing of one that is overdue", () => {
    expect(at(1200)[0]).toMatchObject({ item: { id: "gasket" }, age: 1200 });
    expect(at(1200)[0]!.lasts.high).toBeLessThan(1);
    expect(at(1600)).toEqual([]);
    // A day of its own that comes sooner leaves less time to fail in.
    expect(at(1200, "2023-05-01")[0]!.lasts.chance).toBeGreaterThan(at(1200)[0]!.lasts.chance);
  });

  it("count what was just renewed from that day, though nobody looked at it since, also where it was found bad", () => {
    const opened = [365, 730, 1095];
    expect(ageOf({ opened, fitted: [1096] }, kits)).toEqual([12]);
    expect(ageOf({ opened, found: [{ mode: "hard", on: 1095, mended: 1096 }] }, kits)).toEqual([12]);
    expect(ageOf({ opened, found: [{ mode: "hard", on: 1095 }] }, kits)).toEqual([]);
  });
});
