import { describe, expect, it } from "vitest";
import { allCautions, SIGNAL_WORDS } from "./cautions.ts";

describe("ANSI Z535.4-2007, 4.14.1 to 4.14.4, signal words (as quoted by a sign maker)", () => {
  it.each([
    ["DANGER", "will result in death or serious injury"],
    ["WARNING", "could result in death or serious injury"],
    ["CAUTION", "could result in minor or moderate injury"],
    ["NOTICE", "not related to personal injury"],
  ] as const)("%s: %s", (word, meaning) => {
    expect(SIGNAL_WORDS[word]).toContain(meaning);
  });
});

describe("NIOSH 96-118a, Preventing Carbon Monoxide Poisoning from Small Gasoline-Powered Engines and Tools", () => {
  const gas = allCautions().find((one) => one.id === "carbon-monoxide");

  it("colourless and odourless, within minutes, also with doors open or a fan", () => {
    expect(gas?.what).toMatch(/no colour and no smell/);
    expect(gas?.consequence).toMatch(/within minutes/);
    expect(gas?.consequence).toMatch(/doors open or a fan/);
  });

  it("stop the engine and get into open air at the first symptoms", () => {
    expect(gas?.avoid).toMatch(/Headache or nausea in anyone: stop the engine/);
  });
});
