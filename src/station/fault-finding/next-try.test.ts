import { readFileSync } from "node:fs";
import { join } from "node:path";
import { loadPattern, modeNamed, type Pattern, type Trouble } from "#kit";
import { describe, expect, it } from "vitest";
import { endedBy, nextTry, type FaultAdvice } from "./index.ts";

const root = join(import.meta.dirname, "..", "..", "..", "patterns");
const patternOf = (name: string) => loadPattern(readFileSync(join(root, `${name}.yaml`), "utf8"), `${name}.yaml`);
const PATTERNS: readonly Pattern[] = [patternOf("brinnet-450@2"), patternOf("ossel-200@2")];
const ALL = PATTERNS.flatMap((pattern) => (pattern.troubles ?? []).map((trouble) => ({ pattern, trouble })));
const NONE: ReadonlyMap<string, number> = new Map();

const start = PATTERNS[0]!.troubles!.find(({ sign }) => sign === "will-not-start")!;

/** What is tried, one after the other, where nothing helps. */
function run(
  trouble: Trouble,
  where: "boat" | "bench",
): { readonly tried: readonly string[]; readonly last: FaultAdvice } {
  const tried: string[] = [];
  for (;;) {
    const last = nextTry(trouble, tried, NONE, where);
    if (last.next.kind !== "try") return { tried, last };
    tried.push(last.next.try.id);
  }
}

describe("fault finding at sea", () => {
  it("begins with what is quick and likely, and stops for the next pump before what is slow", () => {
    const { tried, last } = run(start, "boat");
    expect(tried[0]).toBe("settings");
    expect(tried).not.toContain("fresh-fuel");
    expect(last.next).toEqual({ kind: "next-pump", minutes: start.nextPump });
  });

  it("takes the next pump at once where it stands ready beside", () => {
    expect(nextTry({ ...start, nextPump: 0.3 }, [], NONE, "boat").next.kind).toBe("next-pump");
  });

  it("never keeps anybody longer than the next pump would take, on average, whatever was tried", () => {
    for (const { trouble } of ALL) {
      const { tried } = run(trouble, "boat");
      for (let i = 0; i <= tried.length; i += 1)
        expect(nextTry(trouble, tried.slice(0, i), NONE, "boat").minutes).toBeLessThanOrEqual(trouble.nextPump + 1e-9);
    }
  });

  it("asks nothing twice, and goes on to the slow things on the bench", () => {
    for (const { trouble } of ALL) {
      const { tried, last } = run(trouble, "bench");
      expect(new Set(tried).size).toBe(tried.length);
      expect(last.next.kind).toBe("nothing-left");
      expect(tried.length).toBeGreaterThanOrEqual(run(trouble, "boat").tried.length);
    }
  });
});

const chanceOf = (advice: FaultAdvice) => advice.causes.find(({ cause }) => cause.id === "set-wrong")!.chance;

describe("what it may be", () => {
  it("falls for what was tried without help, and adds up to one", () => {
    const [before, after] = [nextTry(start, [], NONE, "boat"), nextTry(start, ["settings"], NONE, "boat")];
    expect(chanceOf(after)).toBeLessThan(chanceOf(before) / 5);
    for (const { causes } of [before, after])
      expect(causes.reduce((sum, { chance }) => sum + chance, 0)).toBeCloseTo(1, 12);
  });

  it("is moved by the fleet's findings, beside the judgement of the pattern", () => {
    const found = new Map([["fuel-water", 40]]);
    const advice = nextTry(start, [], found, "bench");
    expect(advice.causes[0]!.cause.id).toBe("water");
    expect(advice.findings).toBe(40);
    expect(nextTry(start, [], NONE, "bench").findings).toBe(0);
  });

  it("is, once something helped, only what that can help", () => {
    const was = endedBy(start, ["settings"], "loosen-cap", NONE);
    expect(was.map(({ cause }) => cause.id).toSorted()).toEqual(["lead", "vent"]);
    expect(was.reduce((sum, { chance }) => sum + chance, 0)).toBeCloseTo(1, 12);
  });
});

describe("the shipped patterns", () => {
  it("name in every trouble modes that a finding can carry, and tries that can help each cause they name", () => {
    expect(ALL.length).toBeGreaterThan(5);
    for (const { pattern, trouble } of ALL) {
      for (const { mode } of trouble.causes) if (mode !== undefined) expect(modeNamed(pattern, mode)).toBeDefined();
      for (const one of trouble.tries)
        expect(
          Object.values(one.ends).some((chance) => chance > 0),
          one.id,
        ).toBe(true);
    }
  });

  it("open no fuel, cylinder or live part without saying so first (common practice)", () => {
    const tries = ALL.flatMap(({ trouble }) => trouble.tries);
    const bare = (words: RegExp, hazard: string) =>
      tries.filter(({ does, hazards }) => words.test(does) && !hazards.some((one) => one === hazard));
    expect(bare(/tank cap|filter bowl|petrol/i, "opens-fuel")).toEqual([]);
    expect(bare(/fit the spare plug/i, "opens-cylinder")).toEqual([]);
    expect(bare(/flywheel cup/i, "unguarded-rotation")).toEqual([]);
    expect(bare(/strainer by hand|clear (the strainer|rags)/i, "hand-at-strainer")).toEqual([]);
  });
});
