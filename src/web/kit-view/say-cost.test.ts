import { describe, expect, it } from "vitest";
import { sayCost } from "./say-cost.ts";

describe("a cost", () => {
  it("is told with the currency of the station, by the three letters of ISO 4217", () => {
    expect(sayCost(12.5, "EUR")).toBe("12.50 EUR");
    expect(sayCost(12.5, undefined)).toBe("12.50");
  });
});
