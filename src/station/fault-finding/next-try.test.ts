import { readFileSync } from "node:fs";
import { join } from "node:path";
import { loadPattern, modeNamed, type Pattern, type Trouble } from "#kit";
import { describe, expect, it } from "vitest";
import { endedBy, nextTry, type FaultAdvice } from "./index.ts";

const root = join(import.meta.dirname, "..", "..", "..", "patterns");
const patternOf = (name: string) => loadPattern(readFileSync(join(root, `${name}.yaml`), "utf8"), `${name}.yaml`);
const PATTERNS: readonly Pattern[] = [patternOf("brinnet-450@2"), patternOf("ossel-200@2"), patternOf("tarvock-900@1")];
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
    expect(tried.slice(0, 2)).toEqual(["fuel-open", "switch-on"]);
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

const chanceOf = (advice: FaultAdvice) => advice.causes.find(({ cause }) => cause.id === "fuel-shut")!.chance;

describe("what it may be", () => {
  it("falls for what was tried without help, and adds up to one", () => {
    const [before, after] = [nextTry(start, [], NONE, "boat"), nextTry(start, ["fuel-open"], NONE, "boat")];
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
    const was = endedBy(start, ["switch-on"], "spare-plug", NONE);
    expect(was.map(({ cause }) => cause.id).toSorted()).toEqual(["flooded", "lead", "plug-wet"]);
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

  it("try one thing at a time: no try nearly always ends two causes, but the spare cord that stands for the whole starter", () => {
    const tries = ALL.flatMap(({ trouble }) => trouble.tries);
    const several = tries.filter(({ ends }) => Object.values(ends).filter((chance) => chance > 0.9).length > 1);
    expect(several.map(({ id }) => id)).toEqual(["spare-cord"]);
  });

  it("begin every leak of fuel with stopping it and letting the wind carry the smell away, petrol with its cock shut too", () => {
    const leaks = ALL.filter(({ trouble }) => trouble.sign === "leaks-fuel");
    expect(leaks.length).toBe(2);
    for (const { pattern, trouble } of leaks)
      for (const { does } of trouble.tries) {
        const first =
          pattern.id === "tarvock-900" ? /^Lever to 0, STOP\. Let wind/ : /^Stop, cock shut, lead off\. Let wind/;
        expect(does).toMatch(first);
      }
  });

  it("warn of petrol only where petrol is", () => {
    const petrol = new Set(["opens-fuel", "fills-fuel"]);
    for (const { pattern, trouble } of ALL)
      for (const { id, hazards } of [...trouble.tries, ...(trouble.look ? [{ id: "look", ...trouble.look }] : [])])
        if (pattern.engine?.fuelKind === "diesel" || pattern.engine === undefined)
          expect(
            hazards.filter((one) => petrol.has(one)),
            `${pattern.id} ${id}`,
          ).toEqual([]);
  });

  it("say how to see a spark with the plug hole closed and no petrol about", () => {
    const spark = ALL.find(({ trouble }) => trouble.sign === "no-spark")!.trouble;
    expect(spark.look?.does).toMatch(/own plug left in/);
    expect(spark.look?.hazards).toContain("opens-fuel");
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
