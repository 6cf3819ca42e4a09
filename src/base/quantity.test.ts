import { describe, expect, it } from "vitest";
import { isInputError } from "./errors.ts";
import { formatEstimate, formatNumber, formatQuantity, formatSpread, isQuantity, parseQuantity } from "./quantity.ts";

function codeOf(work: () => unknown): string | undefined {
  try {
    work();
  } catch (thrown) {
    return isInputError(thrown) ? thrown.faults[0]?.code : String(thrown);
  }
  return undefined;
}

const plain = (text: string) => text.replaceAll("\u00a0", " ");

describe("quantities as text", () => {
  it("takes a bare number for SI, and text for the unit it names", () => {
    expect(parseQuantity(2.5, "length")).toBe(2.5);
    expect(parseQuantity("8 ft", "length")).toBeCloseTo(2.4384, 12);
    expect(parseQuantity("4,5 m", "length")).toBe(4.5);
    expect(parseQuantity(" 250L/MIN ", "flow")).toBeCloseTo(0.25 / 60, 15);
    expect(parseQuantity("35", "salinity")).toBe(35);
    expect(parseQuantity("1e3 mm", "length")).toBe(1);
  });

  it.each([
    ["eight feet", "BA-101"],
    ["", "BA-101"],
    ["8", "BA-102"],
    ["8 furlongs", "BA-102"],
    ["8 kPa", "BA-102"],
    ["1e999 m", "BA-103"],
  ])("refuses %j as a length", (text, code) => {
    expect(codeOf(() => parseQuantity(text, "length"))).toBe(code);
  });

  it.each([Number.NaN, Infinity, -Infinity])("refuses the number %s", (given) => {
    expect(codeOf(() => parseQuantity(given, "length"))).toBe("BA-103");
  });

  it("knows what is a quantity without reading it", () => {
    expect([isQuantity("8 ft", "length"), isQuantity("8 ft", "flow")]).toEqual([true, false]);
  });

  it("writes in the unit a person reads such a size in", () => {
    const metric = formatQuantity(0.25 / 60, "flow");
    expect(metric).toBe("250\u00a0L/min");
    expect(formatQuantity(2.4384, "length", { system: "us" })).toBe("8.00\u00a0ft");
    expect(formatQuantity(0.05, "length", { system: "us" })).toBe("1.97\u00a0in");
    expect(formatQuantity(288.15, "temperature", { digits: 2 })).toBe("15\u00a0°C");
  });

  it("writes numbers without exponents or a negative nothing", () => {
    expect([formatNumber(0), formatNumber(-0), formatNumber(123_456), formatNumber(0.000_012_3)]).toEqual([
      "0",
      "0",
      "123456",
      "0.0000123",
    ]);
    expect(formatNumber(-1e-20)).toBe("0");
  });
});

describe("an estimate as text", () => {
  it.each([
    [473 / 60_000, "flow", "470 L/min"],
    [0.473 / 60_000, "flow", "0.47 L/min"],
    [0.998 / 60_000, "flow", "1.0 L/min"],
    [0, "length", "0 mm"],
    [1.049, "length", "1.0 m"],
  ] as const)("%s as %s is %s: two figures, before the point too", (si, dimension, text) => {
    expect(plain(formatEstimate(si, dimension))).toBe(text);
  });

  it("has its doubt in the unit of its middle, and the unit once", () => {
    const spread = { p05: 13 / 60_000, p50: 162 / 60_000, p95: 1881 / 60_000 };
    expect(plain(formatSpread(spread, "flow"))).toBe("160 L/min (13 to 1900)");
    expect(plain(formatSpread(spread, "flow", { system: "us" }))).toBe("43 US gpm (3.4 to 500)");
  });
});
