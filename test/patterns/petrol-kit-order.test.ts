import { describe, expect, it } from "vitest";
import { checkNamed, fittedAtDate, stepNamed } from "#kit";
import { shippedPattern } from "./shipped-patterns.ts";

const pattern = shippedPattern("brinnet-450@2");
const text = (step: string) => stepNamed(pattern, step)!.text;

describe("the lines of the petrol kit, as they can be done", () => {
  it("part the fuel coupling before the spigot goes into its tank half, and couple it again after the sample", () => {
    expect(text("fuel-sample-step")).toMatch(/^Part the fuel coupling\..*spigot/);
    expect(text("fuel-sample-step")).toMatch(/cupful\. Couple it/);
  });

  it("lower the lid only after the thumb was on its gasket", () => {
    expect(text("wipe-rim")).not.toMatch(/[Ll]ower the lid/);
    expect(stepNamed(pattern, "wipe-rim")!.afterwards).toMatch(/^Lower the lid straight/);
  });

  it("look at the spot of each desiccant pack where that pack goes in", () => {
    const fresh = checkNamed(pattern, "desiccant-fresh")!;
    expect(`${fresh.ask} ${fresh.expect}`).not.toMatch(/all three|each pack/);
    expect(text("wrap-hoses")).toMatch(/new dry desiccant pack/);
  });

  it("name no time that nobody times", () => {
    const timed = pattern.stages.flatMap(({ steps }) => steps).filter(({ timer }) => timer !== undefined);
    const untimed = pattern.checks.filter(
      ({ id, kind, expect: right }) =>
        kind === "look" &&
        /\bin (one|two|five) minutes?\b/.test(right) &&
        !timed.some(({ checks }) => checks.includes(id)),
    );
    expect(untimed.map(({ id }) => id)).toEqual([]);
  });
});

describe("what is fitted new where its printed date is read", () => {
  it("is the cells, at the line that reads them: new ones come off the shelf there", () => {
    expect(fittedAtDate(pattern, stepNamed(pattern, "torch-open")!).map(({ id }) => id)).toEqual(["cells"]);
  });

  it("is nothing at a line that reads no date, nor what every turnaround fits new", () => {
    expect(fittedAtDate(pattern, stepNamed(pattern, "take-card")!)).toEqual([]);
    const renewed = {
      ...pattern,
      stages: pattern.stages.map((stage) => ({
        ...stage,
        steps: stage.steps.map((step) => (step.id === "stow-lid" ? { ...step, renews: ["cells"] } : step)),
      })),
    };
    expect(fittedAtDate(renewed, stepNamed(renewed, "torch-open")!)).toEqual([]);
  });
});
