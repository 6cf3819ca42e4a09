import { readFileSync } from "node:fs";
import { join } from "node:path";
import { loadPattern } from "#kit";
import type { KitState } from "#readiness";
import { describe, expect, it } from "vitest";
import { enoughTonight, StartBook, tonightOf, workingCurve, type KitStartRecord, type StartLog } from "./index.ts";

const root = join(import.meta.dirname, "..", "..", "..", "patterns");
const brinnet = loadPattern(readFileSync(join(root, "brinnet-450@2.yaml"), "utf8"), "brinnet-450@2.yaml");
const log = (...kits: KitState[]): StartLog => ({ kits, casualties: [], patterns: new Map([["pump@1", brinnet]]) });
const startRecord = (one: KitState, kits: readonly KitState[], casualties: StartLog["casualties"]) =>
  new StartBook().read(one, { ...log(...kits), casualties });

/** A kit that was asked so many times and failed so many, first. */
function kit(id: string, asked: number, failed: number, pattern = "pump@1"): KitState {
  const runs = Array.from({ length: asked }, (_, i) => {
    return { turnaround: `${id}-${i}`, at: new Date(Date.UTC(2020, i, 1)).toISOString(), started: i >= failed };
  });
  return { id, pattern, runs, turnarounds: [], findings: [], contents: {} } as unknown as KitState;
}

/** Of ten kits that were each asked nine times, the first of which failed so often. */
function failingOf(failed: number, of: number): KitStartRecord["failing"] {
  const kits = Array.from({ length: 10 }, (_, i) => kit(`k${i}`, 9, i === 0 ? failed : 0));
  return startRecord(kits[of]!, kits, []).failing;
}

describe("the chance that a kit starts", () => {
  it("is nothing to tell where it was never asked, and says about how many openings it would take", () => {
    const record = startRecord(kit("a", 0, 0), [kit("a", 0, 0)], []);
    expect(record.demands).toEqual([]);
    expect(record.openings).toBeGreaterThan(5);
    expect(record.failing.p95).toBeGreaterThan(0.9);
  });

  it("needs no more openings after many, and is still no promise", () => {
    const own = kit("a", 30, 0);
    const record = startRecord(own, [own], []);
    expect(record.openings).toBe(0);
    expect(record.failing.p95).toBeGreaterThan(0.03);
  });

  it("is never more likely for a start that failed, its own or another's of its pattern", () => {
    for (const ends of ["p05", "mean", "p95"] as const) {
      expect(failingOf(1, 5)[ends], `another's, ${ends}`).toBeGreaterThan(failingOf(0, 5)[ends]);
      expect(failingOf(1, 0)[ends], `its own, ${ends}`).toBeGreaterThan(failingOf(1, 5)[ends]);
    }
  });

  it("says where one failure more of another would make it look better, and what it would come to", () => {
    const own = kit("a", 5, 0);
    const mean = (b: number, c: number) => startRecord(own, [own, kit("b", 12, b), kit("c", 2, c)], []);
    const record = mean(0, 1);
    expect(record.oneMore).toBeLessThan(0.99 * record.failing.mean);
    expect(record.oneMore).toBeCloseTo(Math.min(mean(1, 1).failing.mean, mean(0, 2).failing.mean), 3);
    expect(mean(0, 0)).not.toHaveProperty("oneMore");
    expect(startRecord(own, [own], [])).not.toHaveProperty("oneMore");
  });

  it("rests on one other of its pattern already", () => {
    const own = kit("a", 2, 0);
    const withBad = startRecord(own, [own, kit("b", 3, 3)], []);
    expect(withBad.others).toBe(1);
    expect(withBad.failing.mean).toBeGreaterThan(startRecord(own, [own, kit("b", 3, 0)], []).failing.mean);
  });

  it("leans on others of its pattern, and not on another pattern's", () => {
    const own = kit("a", 2, 0);
    const bad = [kit("b", 12, 6), kit("c", 12, 5), kit("d", 12, 7)];
    const withBad = startRecord(own, [own, ...bad], []);
    expect(withBad).toMatchObject({ others: 3, othersStarts: 36 });
    expect(withBad.failing.mean).toBeGreaterThan(startRecord(own, [own], []).failing.mean + 0.1);
    const elsewhere = bad.map((one) => ({ ...one, pattern: "other@1" }));
    expect(startRecord(own, [own, ...elsewhere], []).others).toBe(0);
  });

  it("lets a bad kit stand out from a good fleet by its own record", () => {
    const own = kit("a", 20, 8);
    const fleet = Array.from({ length: 8 }, (_, i) => kit(`g${i}`, 20, i % 2));
    expect(startRecord(own, [own, ...fleet], []).failing.p05).toBeGreaterThan(0.1);
  });
});

const mark = (at: string, by = "mara") => ({ entry: at, at: `${at}T10:00:00Z`, by, device: "d" });

/** A kit closed on the first day, opened and closed again on the second, and proved then. */
function closedKit(id: string, found: readonly string[], fuel = "2026-01-05", by = "mara"): KitState {
  const turnarounds = [
    { id: `${id}-1`, opened: mark("2026-01-10"), answers: {}, closed: { ...mark("2026-01-10", by), how: "sealed" } },
    { id: `${id}-2`, opened: mark("2027-01-10"), answers: {}, closed: { ...mark("2027-01-10", by), how: "sealed" } },
  ];
  const findings = found.map((mode) => ({ id: `${id}-${mode}`, mode, turnaround: `${id}-2`, step: "fuel-look" }));
  const contents = { fuel: { item: "fuel", fitted: fuel, quantity: 1 } };
  return { ...kit(id, 0, 0), turnarounds, findings, contents, runs: runsOf(id) } as unknown as KitState;
}

function runsOf(id: string) {
  return ["2026-01-10", "2027-01-10"].map((day, i) => {
    return { turnaround: `${id}-${i + 1}`, at: `${day}T10:00:00Z`, started: true };
  });
}

const NOW = "2028-01-10T10:00:00Z";

const readOf = (one: KitState) => new StartBook().read(one, log(one, closedKit("b", [])));

describe("a kit that lay closed since it was proved", () => {
  const [one, two] = [closedKit("a", ["fuel-water"]), closedKit("b", [])];

  it("is believed less, the longer ago that is, and more where nothing was found", () => {
    const book = new StartBook();
    const [first, second] = [book.read(one, log(one, two)), book.read(two, log(one, two))];
    expect(first.unseen).toMatchObject({ found: 1, looks: 1 });
    expect(first.unseen!.lay).toBe(365 * 86_400);
    const means = workingCurve(first, 730, 4).map(({ working }) => working.mean);
    expect(means).toHaveLength(5);
    expect(means).toEqual(means.toSorted((a, b) => b - a));
    expect(tonightOf(second, NOW)!.working.mean).toBeGreaterThan(tonightOf(first, NOW)!.working.mean);
    expect(tonightOf(first, NOW)!.days).toBe(365);
  });

  /** The first of them, opened once more: the start failed, was answered so in the end, and the opening ended so. */
  const mended = (answer: string, how: string) => {
    const at = { ...mark("2027-12-10"), at: "2027-12-10T12:00:00Z" };
    const answers = { "start/starts-in-six": { step: "start", check: "starts-in-six", answer, mark: at } };
    const closed = { ...at, at: "2027-12-10T15:00:00Z", how };
    const last = { id: "a-3", opened: mark("2027-12-10"), answers, closed };
    const raised = { ...mark("2027-12-10"), at: "2027-12-10T11:00:00Z" };
    const found = { id: "f3", mode: "hard-start", turnaround: "a-3", step: "start", check: "starts-in-six", raised };
    const turnarounds = [...one.turnarounds, last];
    return { ...one, turnarounds, findings: [...one.findings, found] } as unknown as KitState;
  };

  it("was proved again where a start that failed was mended in the same opening and then came, and not where it did not", () => {
    const proved = readOf(mended("seen", "sealed"));
    expect([proved.failures, proved.proved]).toEqual([1, "2027-12-10T12:00:00Z"]);
    expect(tonightOf(proved, NOW)!.days).toBeCloseTo(31, 0);
    expect(readOf(mended("wrong", "sealed")).proved).toBe("2027-01-10T10:00:00Z");
    expect(readOf(mended("seen", "grounded")).proved).toBe("2027-01-10T10:00:00Z");
  });

  it("is not told where it was never proved, or lay closed between no two openings", () => {
    const never = kit("n", 0, 0);
    expect(tonightOf(startRecord(never, [never, one], []), NOW)).toBeUndefined();
    const open = kit("o", 3, 0);
    expect(tonightOf(startRecord(open, [open], []), NOW)).toBeUndefined();
  });

  it("takes what is found when it is asked to start as a failed start, not as a fault that a look found", () => {
    const asked = { ...one, findings: one.findings.map((found) => ({ ...found, step: "start" })) };
    const stage = brinnet.stages.find(({ id }) => id === "run")!.steps[0]!.id;
    const atRun = { ...asked, findings: asked.findings.map((found) => ({ ...found, step: stage })) };
    expect(startRecord(atRun, [atRun], []).unseen!.found).toBe(0);
  });
});

describe("enough kits of a place", () => {
  const kits = [closedKit("a", ["fuel-water"]), closedKit("b", []), closedKit("c", [], "2026-12-01", "tom")];

  it("are told with what two of them share: one day's fuel, one pair of hands", () => {
    const told = enoughTonight(new StartBook(), kits, 2, log(...kits), NOW)!;
    expect(told).toMatchObject({ least: 2, of: 3, untold: [] });
    expect(told.starts).toEqual({ count: 6, since: "2026-01-10T10:00:00Z" });
    expect(told.common.map(({ kind, kits: at }) => `${kind} ${at.join("")}`)).toEqual(["fuel ab", "hands ab"]);
    expect(told.chance.p05).toBeLessThan(told.chance.p50);
    expect(told.chance.p50).toBeLessThan(told.chance.p95);
  });

  it("are fewer for certain to start where all share one delivery than where none do", () => {
    const apart = kits.map((one, i) => ({
      ...closedKit(one.id, i === 0 ? ["fuel-water"] : [], `2026-0${i + 1}-05`, `p${i}`),
    }));
    const alike = kits.map((one, i) => closedKit(one.id, i === 0 ? ["fuel-water"] : []));
    expect(leastOf(alike)).toBeLessThan(leastOf(apart));
  });

  it("are not told where fewer are known than must start", () => {
    expect(enoughTonight(new StartBook(), kits, 4, log(...kits), NOW)).toBeUndefined();
    expect(enoughTonight(new StartBook(), [], 0, log(), NOW)).toBeUndefined();
  });
});

/** The low end of the chance that one of them starts. */
function leastOf(some: readonly KitState[]): number {
  return enoughTonight(new StartBook(), some, 1, log(...some), NOW)!.chance.p05;
}

describe("one new entry", () => {
  it("counts one kit again, and gives what a reading of everything gives", () => {
    const kits = Array.from({ length: 40 }, (_, i) => closedKit(`k${i}`, i % 7 === 0 ? ["fuel-water"] : []));
    const book = new StartBook();
    for (const one of kits) book.read(one, log(...kits));
    expect(book.counts).toBe(40);
    const changed = { ...kits[3]!, findings: closedKit("k3", ["fuel-water"]).findings };
    const after = log(...kits.map((one, i) => (i === 3 ? changed : one)));
    for (const one of after.kits) expect(book.read(one, after)).toEqual(new StartBook().read(one, after));
    expect(book.counts).toBe(41);
  });

  it("reads no line of the other 499 kits", () => {
    const reads = new Map<string, number>();
    const watched = (one: KitState) =>
      new Proxy(one, {
        get(kit, name) {
          const isLines = name === "runs" || name === "turnarounds" || name === "findings";
          if (isLines) reads.set(kit.id, (reads.get(kit.id) ?? 0) + 1);
          return Reflect.get(kit, name) as unknown;
        },
      });
    const kits = Array.from({ length: 500 }, (_, i) => watched(closedKit(`k${i}`, i % 7 === 0 ? ["fuel-water"] : [])));
    const book = new StartBook();
    const before = log(...kits);
    for (const one of kits) book.read(one, before);
    expect(reads.size).toBe(500);
    reads.clear();
    const after = log(...kits.map((one, i) => (i === 3 ? watched(closedKit("k3", ["fuel-water"])) : one)));
    for (const one of after.kits) book.read(one, after);
    expect([...reads.keys()]).toEqual(["k3"]);
  });
});
