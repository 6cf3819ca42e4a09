import { describe, expect, it } from "vitest";
import { SAMPLE_PATTERN } from "./kit/sample-kit.ts";
import { lookUp, nameOfItem, nameOfMode } from "./lookup.ts";

const lookup = lookUp(SAMPLE_PATTERN);

describe("a mode in words", () => {
  it("names its item once, where the mode's own name begins with it too", () => {
    const [mode] = SAMPLE_PATTERN.modes;
    const item = nameOfItem(lookup, mode!.item);
    const named = (name: string) =>
      nameOfMode(lookUp({ ...SAMPLE_PATTERN, modes: [{ ...mode!, name }] }), mode!.item, mode!.id);
    expect(named(`${item} does not light`)).toBe(`${item} does not light`);
    expect(named("Does not light")).toBe(`${item}: Does not light`);
    expect(nameOfMode(lookup, mode!.item, "no-such-mode")).toBe(item);
  });
});
