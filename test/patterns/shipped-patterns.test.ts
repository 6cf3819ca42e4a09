import { describe, expect, it } from "vitest";
import {
  allSteps,
  lintPatternText,
  linesOf,
  loadPattern,
  patternJsonSchema,
  patternKey,
  pictureAt,
  STAGE_ORDER,
} from "#kit";
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

/** Lines about no part of the kit. */
const NOTHING_TO_LIGHT: readonly string[] = ["ground-empty"];

describe.each(SHIPPED_FILES)("the drawings of %s", (fileName) => {
  const pattern = shippedPattern(fileName.replace(".yaml", ""));
  const asked = allSteps(pattern).flatMap(({ id, checks }) => [
    { step: id },
    ...checks.map((check) => ({ step: id, check })),
  ]);

  it("light a part at every line and every check", () => {
    const bare = asked.filter(({ step, ...one }) => {
      const picture = pictureAt(pattern, step, "check" in one ? one.check : undefined);
      return picture === undefined || picture.lit.length === 0;
    });
    expect(bare.map(({ step }) => step)).toEqual(
      NOTHING_TO_LIGHT.filter((id) => asked.some(({ step }) => step === id)),
    );
  });

  it("show the layer at every restow line that stows something", () => {
    const stowing = pattern.stages.flatMap(({ id, steps }) => (id === "restow" ? steps : []));
    const shown = stowing.filter(({ stows }) => stows.length > 0).map(({ id }) => pictureAt(pattern, id));
    expect(shown.length).toBeGreaterThan(3);
    expect(shown.every((picture) => picture?.layer)).toBe(true);
  });

  it("are each another, and none is a picture of the card", () => {
    const drawn = (pattern.pictures?.drawings ?? []).map(({ drawing }) => JSON.stringify(drawing?.shapes));
    const onCard = (pattern.stranger?.steps ?? []).map(({ drawing }) => JSON.stringify(drawing?.shapes));
    expect(drawn.length).toBeGreaterThan(15);
    expect(new Set([...drawn, ...onCard]).size).toBe(drawn.length + onCard.length);
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
    expect(pattern.stages.map((stage) => stage.id)).toEqual(STAGE_ORDER.filter((id) => id !== "hang"));
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

describe("the diesel kit", () => {
  const pattern = shippedPattern("tarvock-900@1");
  const steps = allSteps(pattern);

  it("is as large as the job: 30 items, 60 modes, 65 steps, and no priming", () => {
    expect(pattern.items.length).toBeGreaterThanOrEqual(30);
    expect(pattern.modes.length).toBeGreaterThanOrEqual(60);
    expect(steps.length).toBeGreaterThanOrEqual(65);
    expect(pattern.hydraulics?.suction).toBeUndefined();
    expect(pattern.stages.map(({ id }) => id)).toEqual([
      "open",
      "examine",
      "rig",
      "run",
      "dry",
      "hang",
      "restow",
      "seal",
    ]);
  });

  it("is lifted by a davit that may bear it, four at the lift, and by nobody's hands", () => {
    const lifts = steps.filter(({ lift }) => lift);
    expect(lifts.map(({ id }) => id)).toEqual(["lift-out", "swing-out", "lift-back"]);
    for (const { needs, cautions } of lifts) {
      expect(needs.people).toBe(4);
      expect(cautions).toEqual(expect.arrayContaining(["load-overhead", "crushing-load"]));
    }
  });

  it("has none of petrol's words but where it met somebody else's petrol", () => {
    const petrol = steps.filter(({ cautions }) => cautions.some((id) => /petrol|refuel-stopped/.test(id)));
    expect(petrol.map(({ id, after }) => [id, after])).toEqual([["air-fuel", ["fuel"]]]);
    expect(pattern.engine?.fuelKind).toBe("diesel");
  });

  it("hangs its hose twelve hours, which is common practice, and holds two tags against last time", () => {
    expect(steps.find(({ id }) => id === "hang-hoses")?.timer).toEqual({
      kind: "wait",
      atLeast: 12 * 3600,
      unattended: true,
    });
    const tags = pattern.checks.filter((check) => check.kind === "match" && check.against === "recorded-tag");
    expect(tags.map(({ item }) => item)).toEqual(["hydraulic-hoses", "discharge-hose"]);
  });

  it("burns at full throttle what 270 g/kWh (FROM MEMORY) makes of some six kilowatts of EN 590 diesel", () => {
    const full = pattern.engine!.burn.at(-1)!.burn;
    expect(full).toBeGreaterThan((6000 * 0.27) / 3.6e6 / 845);
    expect(full).toBeLessThan((9000 * 0.27) / 3.6e6 / 820);
  });
});

function inCorner({ d }: { readonly d: string }): boolean {
  return [...d.matchAll(/[ML](-?\d+\.?\d*) (-?\d+\.?\d*)/g)].some(([, x, y]) => Number(x) < 24 && Number(y) < 16);
}
