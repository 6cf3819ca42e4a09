import { readFileSync } from "node:fs";
import { join } from "node:path";
import { isInputError } from "#base";
import { describe, expect, it } from "vitest";
import { loadPattern } from "../file/load-pattern.ts";

const file = join(import.meta.dirname, "..", "..", "..", "patterns", "brinnet-450@2.yaml");
const text = readFileSync(file, "utf8");

function faultsOf(changed: string): readonly string[] {
  expect(changed).not.toBe(text);
  try {
    loadPattern(changed, "brinnet-450@2.yaml");
  } catch (thrown) {
    if (!isInputError(thrown)) throw thrown;
    return thrown.faults.map(({ code, field }) => `${code} ${field}`);
  }
  return [];
}

describe("troubles of a pattern", () => {
  it("name modes of this pattern, and causes of their own sign", () => {
    expect(faultsOf(text.replace("mode: plug-lead-loose, weight", "mode: plug-lead-lose, weight"))).toEqual([
      expect.stringMatching(/^KI-107 .*mode/),
    ]);
    expect(faultsOf(text.replace("fuel-shut: 0.97", "fuel-shud: 0.97"))).toEqual([expect.stringMatching(/^KI-107 /)]);
  });

  it("have chances that are chances and weights that are counts", () => {
    expect(faultsOf(text.replace("fuel-shut: 0.97", "fuel-shut: 1.2"))).toEqual([expect.stringMatching(/^KI-109 /)]);
    expect(faultsOf(text.replace("weight: 10 }", "weight: 0 }"))).toEqual([expect.stringMatching(/^KI-109 /)]);
  });

  it("may be left out: patterns made before there were any load as they did", () => {
    const begin = text.indexOf("\ntroubles:");
    const without = text.slice(0, begin) + text.slice(text.indexOf("\nhydraulics:"));
    expect(loadPattern(without, "brinnet-450@2.yaml").troubles).toBeUndefined();
  });
});
