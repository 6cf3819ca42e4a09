import { fetchWords } from "#words";
import { describe, expect, it } from "vitest";
import { findingChoices, OTHER, preselect } from "./finding-choice.ts";
import { optionsOf, pickedKey, pickFrom } from "./mode-options.ts";
import { SAMPLE, sampleCheck } from "../kit-view/sample.ts";

const words = await fetchWords("en", "kitLine");

const step = SAMPLE.stages[0]!.steps[1]!;
const choices = findingChoices(SAMPLE, step, sampleCheck("torch-lights"));

describe("modes as lines to tap", () => {
  it("lists what the check finds, each with its effect, then something else", () => {
    expect(optionsOf(choices, words)).toEqual([
      { value: "torch/torch-dark", label: "Torch does not light", note: "May go, with a limit: daylight only" },
      { value: "torch/torch-cracked", label: "Lens cracked", note: "Noted; the kit may still go" },
      { value: OTHER, label: "Something else" },
    ]);
  });

  it("names the item too where modes of several are offered", () => {
    const [torch] = choices;
    const cells = { item: SAMPLE.items[1]!, modes: [SAMPLE.modes[2]!] };
    expect(optionsOf([torch!, cells], words).map((option) => option.label)).toContain(
      "Torch cells: Cells past their date",
    );
  });

  it("leads from a key back to the mode, and shows the preselected one chosen", () => {
    expect(pickFrom(choices, "torch/torch-cracked")).toEqual({ item: "torch", mode: "torch-cracked", effect: "notes" });
    expect(pickedKey(preselect(choices)!)).toBe("torch/torch-dark");
  });

  it("takes something else for grounding until it is said to be less", () => {
    expect(pickFrom(choices, OTHER)).toEqual({ item: "torch", mode: OTHER, effect: "grounds" });
  });
});
