import { describe, expect, it } from "vitest";
import { isInputError } from "#base";
import { ask, exampleOf } from "../ask.ts";

const QUESTIONS = [
  "standby",
  "interval",
  "lifetimes",
  "start-chance",
  "found-by-check",
  "failure-rate",
  "trend",
  "spares",
  "fault",
  "symptoms",
] as const;

function faultsOf(name: string, given: unknown): readonly string[] {
  try {
    ask(name, given);
  } catch (thrown) {
    if (!isInputError(thrown)) throw thrown;
    for (const fault of thrown.faults) expect(fault.remedy.length, fault.code).toBeGreaterThan(10);
    return thrown.faults.map((fault) => `${fault.code} ${fault.field}`);
  }
  return [];
}

interface Told {
  readonly kind: string;
  readonly because: string;
  readonly openings?: number;
}

describe("every question answers its example as its schema says", () => {
  it.each(QUESTIONS)("%s", (name) => {
    expect(faultsOf(name, exampleOf(name))).toEqual([]);
  });
});

const STANDBY = { failureRate: "0.3 per year", interval: "1 year" };
const CAUSES = [
  { name: "tap", chance: 0.4 },
  { name: "plug", chance: 0.6 },
];

describe("bad input is told with its code, its field and what to do", () => {
  it.each<[string, object, readonly string[]]>([
    ["standby", { ...STANDBY, interval: "-1 h" }, ["QU-104 interval"]],
    ["standby", { ...STANDBY, testTime: "2 years" }, ["QU-201 interval"]],
    ["standby", { interval: "1 year" }, ["QU-203 failureRate"]],
    ["standby", { ...STANDBY, life: { shape: 2, scale: "3 years" } }, ["QU-203 failureRate"]],
    ["standby", { ...STANDBY, coverage: 0.9 }, ["QU-203 overhaul"]],
    ["standby", { ...STANDBY, coverage: 0.9, overhaul: "1 h" }, ["QU-202 overhaul"]],
    ["standby", { ...STANDBY, shared: 0.1 }, ["QU-203 pair"]],
    ["standby", { ...STANDBY, pair: "together", repairTime: "1 h" }, ["QU-204 pair"]],
    ["standby", { ...STANDBY, demandFailure: 1.2 }, ["QU-104 demandFailure"]],
    ["standby", { ...STANDBY, drills: { found: 2, planted: 3 } }, ["QU-203 overhaul"]],
    ["standby", { ...STANDBY, drills: { found: 4, planted: 3 }, overhaul: "5 years" }, ["QU-270 drills.found"]],
    [
      "standby",
      { ...STANDBY, drills: { found: 2, planted: 3 }, coverage: 0.9, overhaul: "5 years" },
      ["QU-271 drills"],
    ],
    ["found-by-check", { found: 3, planted: 2 }, ["QU-270 found"]],
    ["found-by-check", { found: 0, planted: 2, others: [{ found: 1, planted: 0 }] }, ["QU-270 others[0].found"]],
    ["interval", { failureRate: 0, testTime: "1 h" }, ["QU-205 failureRate"]],
    ["interval", { failureRate: "1 per year" }, ["QU-206 testTime"]],
    ["lifetimes", { records: [{ after: 5, before: 3 }] }, ["QU-222 records[0].before"]],
    ["lifetimes", { records: [{ failedAt: -1 }] }, ["QU-104 records[0].failedAt"]],
    ["lifetimes", { records: [{ failedAt: 0 }] }, ["QU-221 records[0].failedAt"]],
    ["lifetimes", { records: [{ failedAt: 1, goodAt: 2 }] }, ["QU-220 records[0]"]],
    ["lifetimes", { records: [{}] }, ["QU-220 records[0]"]],
    ["lifetimes", {}, ["QU-223 records"]],
    ["lifetimes", { records: [{ failedAt: 2 }], lasts: { from: 3, to: 3 } }, ["QU-222 lasts.to"]],
    ["lifetimes", { repeated: [{ id: "a", renewedAt: [4], until: 3 }] }, ["QU-222 repeated[0].until"]],
    ["lifetimes", { records: [{ failedAt: 2 }], model: "weibull", prior: { a: 1, b: 1 } }, ["QU-224 prior"]],
    ["lifetimes", { records: [{ failedAt: 10 }, { failedAt: "20 months" }] }, ["QU-225 records[0].failedAt"]],
    ["lifetimes", { records: [{ after: 0, before: "20 months" }], lasts: { from: 0, to: 3 } }, ["QU-225 lasts.to"]],
    ["start-chance", { failures: 5, trials: 3 }, ["QU-210 failures"]],
    ["start-chance", { failures: { least: 2, most: 1 }, trials: 3 }, ["QU-211 failures"]],
    ["start-chance", { failures: -1, trials: 3 }, ["QU-104 failures"]],
    ["start-chance", { failures: 0, trials: 3, need: { least: 4, of: 3 } }, ["QU-214 need.least"]],
    [
      "start-chance",
      {
        failures: 0,
        trials: 3,
        fleet: [
          { failures: 3, trials: 2 },
          { failures: 0, trials: 2 },
        ],
      },
      ["QU-210 fleet[0].failures"],
    ],
    ["failure-rate", { failures: 1, time: 0 }, ["QU-215 time"]],
    ["failure-rate", { failures: 0, time: 5, prior: { a: 0, b: 1 } }, ["QU-216 prior"]],
    ["failure-rate", { failures: 0, time: "-3 h" }, ["QU-104 time"]],
    ["trend", { method: "cusum", target: 3 }, ["QU-230 series"]],
    ["trend", { method: "cusum", series: [] }, ["QU-230 target"]],
    ["trend", { method: "laplace", events: { times: [4], end: 3 } }, ["QU-232 events.times[0]"]],
    ["trend", { method: "laplace", events: { ends: [2, 1], counts: [1, 1] } }, ["QU-231 events.ends[1]"]],
    ["trend", { method: "laplace", events: { ends: [1, 2], counts: [1] } }, ["QU-233 events.counts"]],
    ["trend", { method: "mann-kendall", series: [2, 1].map((at) => ({ at, value: 1 })) }, ["QU-231 series[1].at"]],
    ["spares", { items: [{ name: "a", perYear: 2 }] }, ["QU-240 items[0]"]],
    ["spares", { items: [{ name: "a", pipeline: 1 }], budget: 3 }, ["QU-242 items[0].cost"]],
    ["spares", { items: [1, 2].map(() => ({ name: "a", pipeline: 1 })) }, ["QU-243 items[1].name"]],
    ["spares", { items: [{ name: "a", perYear: 1e6, leadTime: "1 year" }] }, ["QU-241 items[0]"]],
    ["fault", { causes: [{ name: "tap", chance: 0.4 }], fallback: { cost: 3 } }, ["QU-250 causes"]],
    ["fault", { causes: CAUSES }, ["QU-254 fallback"]],
    ["fault", { causes: CAUSES, checks: [{ name: "look", cost: 1, of: "hose" }] }, ["QU-252 checks[0].of"]],
    ["fault", { causes: CAUSES, actions: [{ name: "fit", cost: 1, cures: [1] }] }, ["QU-253 actions[0].cures"]],
    ["fault", { causes: CAUSES, tests: [{ name: "try", cost: 1, positive: [1] }] }, ["QU-253 tests[0].positive"]],
    [
      "symptoms",
      { causes: [{ name: "a", chance: 0.1, shows: [] }], signs: [{ name: "s", leak: 0, seen: true }] },
      ["QU-253 causes[0].shows"],
    ],
  ])("%s %j", (name, given, faults) => {
    expect(faultsOf(name, given)).toEqual(faults);
  });
});

/** Every life ended in the first look: any law crowded before it fits. */
const FIRST_LOOK = { after: 0, before: 12, count: 5 };
const ONE_LOOK = { after: 6, before: 12, count: 5 };

describe("too little evidence is an answer, with what it would take", () => {
  it.each<[string, object, RegExp]>([
    ["start-chance", { failures: 0, trials: 0 }, /about \d+ more openings/],
    ["start-chance", { failures: 0, trials: 2 }, /about \d+ more openings/],
    ["failure-rate", { failures: 0, time: "2 years" }, /likely below .* a year/],
    ["lifetimes", { records: [{ goodAt: "2 years", count: 6 }] }, /about \d+ more looks/],
    ["lifetimes", { records: [{ failedAt: 3 }, { goodAt: 5 }] }, /about \d+ more looks/],
    ["lifetimes", { records: [{ failedAt: 3 }, { failedAt: 3 }] }, /do not settle a weibull/],
    ["lifetimes", { records: [FIRST_LOOK], lasts: { from: 0, to: 6 } }, /an earlier look/],
    ["lifetimes", { records: [FIRST_LOOK], model: "lognormal" }, /do not settle a lognormal/],
    ["lifetimes", { records: [FIRST_LOOK], model: "exponential" }, /do not settle an exponential/],
    ["lifetimes", { records: [FIRST_LOOK, { after: 0, before: 10 }] }, /do not settle a weibull/],
    ["lifetimes", { records: [ONE_LOOK, { goodAt: 12, count: 3 }], model: "lognormal" }, /looks in between/],
    ["trend", { method: "mann-kendall", series: [{ at: 1, value: 3 }] }, /so 4 more/],
    ["trend", { method: "cusum", target: 3, series: [{ at: 1, value: 3 }] }, /so 1 more/],
    ["trend", { method: "power-law", events: { times: [], end: 5 } }, /so 2 more/],
  ])("%s %j", (name, given, words) => {
    const told = ask(name, given) as Told;
    expect(told.kind).toBe("cannot-tell");
    expect(told.because).toMatch(words);
  });

  it("openings told are about enough: with as many more at the share seen, the range is narrow", () => {
    const { openings } = ask("start-chance", { failures: 1, trials: 5 }) as Told;
    const after = { failures: Math.round(1 + openings! / 4), trials: 5 + openings! };
    expect((ask("start-chance", after) as Told).kind).toBe("told");
  });

  it("a year of yes changes nothing in what an empty record says: no range, no claim", () => {
    const { failing } = ask("start-chance", { failures: 0, trials: 0 }) as { failing: { p05: number; p95: number } };
    expect(failing.p05).toBeLessThan(0.01);
    expect(failing.p95).toBeGreaterThan(0.99);
  });
});

describe("no answer says that something is safe, nor that it is sure", () => {
  it.each(QUESTIONS)("%s", (name) => {
    expect(JSON.stringify(ask(name, exampleOf(name)))).not.toMatch(/\bsafe|\bcertain|\bguarantee/i);
  });
});

describe("imperfect checks, by what drills measured", () => {
  const CASE = { failureRate: "0.3 per year", testTime: "3 h", overhaul: "5 years" };
  const best = (more: object) => ask("interval", { ...CASE, ...more }) as Interval;

  it("stand for the coverage at their mean, and the answer says how many faults that rests on", () => {
    const measured = best({ drills: { found: 7, planted: 10 } });
    expect(measured.drilled).toMatchObject({ share: expect.closeTo(7.5 / 11, 12), found: 7, planted: 10 });
    expect(measured.because).toContain("7 of 10 planted faults");
    expect(measured.best.interval / best({ coverage: 7.5 / 11 }).best.interval).toBeCloseTo(1, 7);
    expect(measured.best.unavailability).toBeGreaterThan(best({ coverage: 1 }).best.unavailability);
  });

  it("are not spoken of where no drill was given", () => {
    expect(best({ coverage: 0.9 })).not.toHaveProperty("drilled");
    expect(best({ coverage: 0.9 }).because).not.toContain("planted");
  });
});

interface Interval {
  readonly because: string;
  readonly best: { readonly interval: number; readonly unavailability: number };
  readonly drilled?: object;
}

describe("what an interval costs, asked", () => {
  const given = { failureRate: "0.05 per year", testTime: "11 h", demandFailure: 0.02 };
  const costs = { test: 5, failureOnTheNight: 720, callsPerYear: 0.5 };
  const asked = (more: object) => ask("interval", { ...given, costs: { ...costs, ...more } }) as IntervalAnswer;
  interface IntervalAnswer {
    readonly best: { readonly interval: number; readonly costPerYear: number; readonly costs: Record<string, number> };
  }

  it("counts parts and the wear of starts, and says what a year is made of", () => {
    const { best } = asked({ parts: 2, wearPerStart: 0.5, startsPerTest: 4 });
    expect(best.interval).toBeGreaterThan(asked({}).best.interval);
    expect(best.costs["wear"]).toBeCloseTo(best.costs["parts"]!, 12);
    const sum = Object.values(best.costs).reduce((total, one) => total + one, 0);
    expect(sum).toBeCloseTo(best.costPerYear, 12);
  });

  it("refuses wear without a number of starts, costs below nothing, and harm done to a pair", () => {
    expect(faultsOf("interval", { ...given, costs: { ...costs, wearPerStart: 0.5 } })).toEqual([
      "QU-273 costs.startsPerTest",
    ]);
    expect(faultsOf("interval", { ...given, costs: { ...costs, parts: -1 } })).toHaveLength(1);
    const pair = { failureRate: "0.05 per year", interval: "1 year", pair: "together", harm: 0.01 };
    expect(faultsOf("standby", pair)).toEqual(["QU-204 pair"]);
  });
});

describe("spares beside today's shelf", () => {
  interface Bought {
    readonly items: readonly { readonly name: string; readonly toBuy: number; readonly emptyPerYear: Empty }[];
  }
  interface Empty {
    readonly now: number;
    readonly after: number;
  }
  const items = [
    { name: "gasket", perYear: 4, leadTime: "3 months", cost: 3, stock: 1 },
    { name: "spring", perYear: 0.5, leadTime: "3 months", cost: 35 },
  ];

  it("DERIVED by hand: with a pipeline of 1 and one on the shelf a share 1 - e^-1 of the demands finds none", () => {
    const { items: told } = ask("spares", { items, budget: 6 }) as Bought;
    expect(told[0]!.toBuy).toBe(2);
    expect(told[0]!.emptyPerYear.now).toBeCloseTo(4 * (1 - Math.exp(-1)), 9);
    expect(told[0]!.emptyPerYear.after).toBeCloseTo(4 * (1 - 2.5 * Math.exp(-1)), 9);
    expect(told[1]).toMatchObject({ toBuy: 0, emptyPerYear: { now: 0.5, after: 0.5 } });
  });

  it("buys no more of a part once so few demands a year find its shelf empty, whatever may be spent", () => {
    const { items: told } = ask("spares", { items, budget: 1e9, enough: 0.05 }) as Bought;
    for (const { toBuy, emptyPerYear } of told) {
      expect(toBuy).toBeGreaterThan(0);
      expect(emptyPerYear.after).toBeLessThanOrEqual(0.05);
    }
    // DERIVED by hand: of the spring, m = 0.125, P(at least 1) is 0.1175 and P(at least 2) 0.0072, each half a year's demands.
    expect(told[1]!.toBuy).toBe(2);
    expect(ask("spares", { items, budget: 1e9, enough: 10 })).toMatchObject({ purchases: [] });
  });

  it("says nothing of it where only a pipeline is given", () => {
    const { items: told } = ask("spares", { items: [{ name: "gasket", pipeline: 1 }] }) as Bought;
    expect(told[0]).not.toHaveProperty("emptyPerYear");
  });
});

interface AgeOut {
  readonly share: number;
  readonly age: number;
  readonly low: number;
  readonly high: number;
}

const records = (text: (age: number) => string | number) => [
  { after: text(12), before: text(24), count: 3 },
  { after: text(24), before: text(36), count: 5 },
  { goodAt: text(36), count: 14 },
];
const asked = (input: object) => ask("lifetimes", input) as { unit: string; failedBy: AgeOut[]; tenPercent: number };

describe("ages in an answer about lives", () => {
  it("carry their unit: seconds where ages were text, what was told of bare numbers, else units", () => {
    expect(asked({ records: records((age) => `${age} months`) }).unit).toBe("s");
    expect(asked({ records: records((age) => age), unit: "runs" }).unit).toBe("runs");
    expect(asked({ records: records((age) => age) }).unit).toBe("units");
    expect(asked({ repeated: [{ id: "a", renewedAt: ["4 months"], until: "2 years" }] }).unit).toBe("s");
  });

  it("say by when one in ten and half have failed, with a range that holds the age itself", () => {
    const { failedBy, tenPercent } = asked({ records: records((age) => age), unit: "months" });
    expect(failedBy.map(({ share }) => share)).toEqual([0.1, 0.5]);
    expect(failedBy[0]!.age).toBeCloseTo(tenPercent, 9);
    for (const { age, low, high } of failedBy) {
      expect(low).toBeLessThan(age);
      expect(high).toBeGreaterThan(age);
    }
    expect(failedBy[1]!.age).toBeGreaterThan(failedBy[0]!.age);
  });
});
