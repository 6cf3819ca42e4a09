import { fetchWords } from "#words";
import { describe, expect, it } from "vitest";
import { findingChoices, preselect, sayEffect } from "./finding-choice.ts";
import { SAMPLE, sampleCheck } from "../kit-view/sample.ts";

const words = await fetchWords("en", "kitLine");

const step = (id: string) => SAMPLE.stages.flatMap((stage) => stage.steps).find((one) => one.id === id)!;

describe("what a found-wrong answer may be", () => {
  it("offers the modes the check finds, the first chosen", () => {
    const choices = findingChoices(SAMPLE, step("torch"), sampleCheck("torch-lights"));
    expect(choices.map((choice) => choice.item.id)).toEqual(["torch"]);
    expect(preselect(choices)).toEqual({ item: "torch", mode: "torch-dark", effect: "limits", limit: "daylight only" });
  });

  it("offers the first mode of the effect that is likely, where one is", () => {
    const choices = findingChoices(SAMPLE, step("torch"), sampleCheck("torch-lights"));
    expect(preselect(choices, "notes")?.mode).toBe("torch-cracked");
    expect(preselect(choices, "grounds")?.mode).toBe("torch-dark");
  });

  it("offers what a step stows or renews where it has no check", () => {
    const choices = findingChoices(SAMPLE, step("desiccant"));
    expect(choices.map((choice) => choice.item.id)).toEqual(["desiccant", "torch"]);
    expect(choices[0]!.modes).toEqual([]);
  });

  it("chooses nothing where the pattern knows no mode", () => {
    expect(preselect(findingChoices(SAMPLE, step("vent")))).toBeUndefined();
  });

  it("says what an effect means, with its limit", () => {
    expect(sayEffect("limits", words, "daylight only")).toBe("May go, with a limit: daylight only");
    expect(sayEffect("grounds", words)).toBe("Grounds the kit");
  });
});
