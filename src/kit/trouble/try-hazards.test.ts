import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { loadPattern } from "../file/load-pattern.ts";
import type { Pattern } from "../pattern.ts";
import { tryHazards } from "./try-hazards.ts";

const folder = join(import.meta.dirname, "..", "..", "..", "patterns");
const load = (file: string) => loadPattern(readFileSync(join(folder, file), "utf8"), file);
const [petrol, electric, diesel] = ["brinnet-450@2.yaml", "ossel-200@2.yaml", "tarvock-900@1.yaml"].map(load) as [
  Pattern,
  Pattern,
  Pattern,
];

function triesOf(pattern: Pattern, ...signs: readonly string[]) {
  const troubles = (pattern.troubles ?? []).filter(({ sign }) => signs.includes(sign));
  return troubles.flatMap(({ tries }) => tries.map((one) => ({ id: one.id, hazards: tryHazards(pattern, one) })));
}

describe("what a try does that can hurt", () => {
  it("holds for every try that ends in a start what the pattern's line of the start names", () => {
    const started = [
      ...triesOf(petrol, "will-not-pull", "no-spark", "will-not-start", "starts-and-dies"),
      ...triesOf(diesel, "will-not-crank", "will-not-start", "starts-and-dies", "overheats"),
    ];
    expect(started.length).toBeGreaterThan(30);
    for (const { id, hazards } of started)
      expect(hazards, id).toEqual(expect.arrayContaining(["runs-engine", "hot-exhaust"]));
  });

  it("holds for a try at a running pump what goes on while it runs, and not the pull or the key", () => {
    const [throttle] = triesOf(petrol, "weak-delivery").filter(({ id }) => id === "throttle-full");
    expect(throttle?.hazards).toEqual(["pumps-water", "runs-engine", "hot-exhaust"]);
    const [lever] = triesOf(diesel, "no-water").filter(({ id }) => id === "lever-on");
    expect(lever?.hazards).toEqual(["pumps-water", "oil-under-pressure", "runs-engine", "hot-exhaust"]);
  });

  it("holds the cord for every petrol try that stops the engine to start it again", () => {
    const tries = (petrol.troubles ?? []).flatMap((one) => one.tries);
    const again = tries.filter(({ does }) => /^Stop\b.*(again|start)\.?$/i.test(does));
    expect(again.length).toBeGreaterThan(8);
    for (const one of again) expect(tryHazards(petrol, one), one.id).toContain("pulls-cord");
  });

  it("adds nothing where the engine stays stopped, and no exhaust where there is no engine", () => {
    const [couple] = triesOf(petrol, "leaks-fuel");
    expect(couple?.hazards).toEqual(["opens-fuel", "hot-exhaust"]);
    for (const { hazards } of triesOf(electric, "will-not-start")) expect(hazards).not.toContain("runs-engine");
  });
});

describe("the shipped patterns", () => {
  it("warn of the mains at every try of an electric pump", () => {
    const tries = (electric.troubles ?? []).flatMap((one) => one.tries);
    for (const { id, hazards } of tries) expect(hazards, id).toContain("electric-in-water");
  });

  it("warn of hot oil and coolant at every try under the coolant lamp", () => {
    for (const { id, hazards } of triesOf(diesel, "overheats")) expect(hazards, id).toContain("hot-surfaces");
  });
});
