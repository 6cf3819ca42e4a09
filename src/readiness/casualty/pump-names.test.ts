import { describe, expect, it } from "vitest";
import { namesApart } from "./pump-names.ts";

const namesOf = (...pumps: readonly (readonly [string, string?])[]) =>
  namesApart(pumps.map(([name, kit]) => ({ name, ...(kit !== undefined && { kit }) }))).map(({ name }) => name);

describe("pumps of one name", () => {
  it("are told apart by what they are, whatever case and blanks", () => {
    expect(namesOf(["Pump 1", "k1"], ["pump  1"], ["Pump 2", "k2"])).toEqual([
      "Pump 1 (kit)",
      "pump  1 (other pump)",
      "Pump 2",
    ]);
  });

  it("are numbered where they are of one sort", () => {
    expect(namesOf(["Her own pump"], ["Her own pump"], ["Her own pump", "k1"])).toEqual([
      "Her own pump (other pump 1)",
      "Her own pump (other pump 2)",
      "Her own pump (kit)",
    ]);
  });

  it("stay as they were told apart when one is written again as it was shown", () => {
    const once = [["Pump 1", "k1"], ["Pump 1 (other pump)"]] as const;
    expect(namesOf(...once)).toEqual(["Pump 1 (kit)", "Pump 1 (other pump)"]);
  });

  it("are no longer than a name may be", () => {
    const names = namesOf(["x".repeat(80), "k1"], ["x".repeat(80)]);
    expect(names.map(({ length }) => length)).toEqual([80, 80]);
    expect(new Set(names).size).toBe(2);
  });
});
