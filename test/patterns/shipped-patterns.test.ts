import { describe, expect, it } from "vitest";
import { allSteps, lintPatternText, linesOf, loadPattern, patternJsonSchema, patternKey, STAGE_ORDER } from "#kit";
import { SHIPPED_FILES, shippedBeside, shippedPattern, shippedText } from "./shipped-patterns.ts";

describe.each(SHIPPED_FILES)("%s", (fileName) => {
  const text = shippedText(fileName);

  it("loads and gives the lint nothing to find", () => {
    expect(lintPatternText(text, fileName, shippedBeside)).toEqual([]);
  });

  it("is named by its id and version", () => {
    expect(`${patternKey(loadPattern(text, fileName))}.yaml`).toBe(fileName);
  });

  it("tells editors where its schema is", () => {
    expect(text.split("\n", 1)).toEqual(["# yaml-language-server: $schema=./pattern.schema.json"]);
  });

  it("has a card with every line once, in order", () => {
    const labels = linesOf(loadPattern(text, fileName)).map((line) => line.label);
    expect(new Set(labels).size).toBe(labels.length);
    expect(labels[0]).toBe("1");
  });
});

describe.each(SHIPPED_FILES)("the card for a stranger of %s", (fileName) => {
  const pattern = shippedPattern(fileName.replace(".yaml", ""));
  const steps = pattern.stranger?.steps ?? [];

  it("has every step drawn, no two alike, and in the eleven languages asked for", () => {
    const drawn = steps.map(({ drawing }) => JSON.stringify(drawing?.shapes));
    expect(new Set(drawn).size).toBe(steps.length);
    for (const { words } of steps)
      expect(Object.keys(words).toSorted()).toEqual([
        "de",
        "en",
        "es",
        "fil",
        "fr",
        "is",
        "nb",
        "pl",
        "pt",
        "ru",
        "vi",
      ]);
  });

  it("claims no native reader yet", () => {
    expect(pattern.stranger?.readByNative).toEqual([]);
  });

  it("names parts of its own kit in its drawings, seal and hose among them", () => {
    const parts = new Set(steps.flatMap(({ drawing }) => drawing?.shapes.flatMap(({ part }) => part ?? []) ?? []));
    for (const part of parts) expect(pattern.items.map(({ id }) => id)).toContain(part);
    expect(parts.size).toBeGreaterThan(4);
  });

  it("leaves the top left corner of a drawing to its number", () => {
    expect(steps.filter(({ drawing }) => drawing?.shapes.some(inCorner)).map(({ id }) => id)).toEqual([]);
  });
});

describe("the published schema", () => {
  it("is the loader's own: if not, run `npx tsx scripts/pattern-schema.ts`", () => {
    expect(JSON.parse(shippedText("pattern.schema.json"))).toEqual(JSON.parse(JSON.stringify(patternJsonSchema())));
  });
});

describe("the petrol kit", () => {
  const pattern = shippedPattern("brinnet-450@2");

  it("is as large as the job: 25 items, 40 modes, 60 steps and every stage", () => {
    expect(pattern.items.length).toBeGreaterThanOrEqual(25);
    expect(pattern.modes.length).toBeGreaterThanOrEqual(40);
    expect(allSteps(pattern).length).toBeGreaterThanOrEqual(60);
    expect(pattern.stages.map((stage) => stage.id)).toEqual(STAGE_ORDER);
  });

  it("uses every kind of check and every kind of timer", () => {
    expect(new Set(pattern.checks.map((check) => check.kind))).toEqual(
      new Set(["look", "measure", "timed", "prove", "count", "match", "date"]),
    );
    const timers = allSteps(pattern).flatMap((step) => step.timer?.kind ?? []);
    expect(new Set(timers)).toEqual(new Set(["wait", "run", "pulls", "prime"]));
  });

  it("says where its fuel's age is kept", () => {
    const fuel = pattern.items.find((item) => item.id === pattern.engine?.fuelItem);
    expect(fuel).toMatchObject({ life: { kind: "fitted" }, lapse: "grounds" });
  });
});

describe("the electric kit", () => {
  const pattern = shippedPattern("ossel-200@2");

  it("has no engine, no suction hose and no priming", () => {
    expect(pattern.engine).toBeUndefined();
    expect(pattern.hydraulics?.suction).toBeUndefined();
    expect(pattern.stages.map((stage) => stage.id)).toEqual(["open", "examine", "rig", "run", "dry", "restow", "seal"]);
  });

  it("measures insulation and earth in ohms", () => {
    const ohms = pattern.checks.filter((check) => check.kind === "measure" && check.dimension === "resistance");
    expect(ohms.map((check) => check.id)).toEqual(["insulation", "earth-continuity"]);
    expect(ohms[0]).toMatchObject({ atLeast: 1e6 });
  });

  it("warns of shock at every step that has mains and water together", () => {
    const wet = allSteps(pattern).filter((step) => step.hazards.includes("electric-in-water"));
    expect(wet.length).toBeGreaterThan(5);
    for (const step of wet) expect(step.cautions).toContain("electric-shock");
  });
});

function inCorner({ d }: { readonly d: string }): boolean {
  return [...d.matchAll(/[ML](-?\d+\.?\d*) (-?\d+\.?\d*)/g)].some(([, x, y]) => Number(x) < 24 && Number(y) < 16);
}
