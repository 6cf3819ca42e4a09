import { describe, expect, it } from "vitest";
import { formatQuantity, parseQuantity } from "./quantity.ts";

describe("resistance", () => {
  it.each([
    ["1 MΩ", 1e6],
    ["1 Mohm", 1e6],
    ["500 kohm", 5e5],
    ["0.5 Ω", 0.5],
    ["0.5 \u2126", 0.5],
    ["0.5 ohms", 0.5],
  ])("reads %s", (text, ohms) => {
    expect(parseQuantity(text, "resistance")).toBeCloseTo(ohms, 9);
  });

  it("tells a milliohm from a megohm", () => {
    expect(parseQuantity("20 mΩ", "resistance")).toBeCloseTo(0.02, 12);
    expect(parseQuantity("20 mohm", "resistance")).toBeCloseTo(0.02, 12);
    expect(parseQuantity("20 Mohm", "resistance")).toBe(2e7);
  });

  it("is written in the unit of its size", () => {
    expect(formatQuantity(2.5e6, "resistance")).toBe("2.50\u00a0MΩ");
    expect(formatQuantity(0.3, "resistance", { digits: 2, system: "us" })).toBe("0.30\u00a0Ω");
  });
});
