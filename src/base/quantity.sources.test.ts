import { describe, expect, it } from "vitest";
import { formatQuantity, inUnit, isQuantity, parseQuantity } from "./quantity.ts";
import { dimensions, unitsOf, type Dimension } from "./units.ts";

/** Relative agreement: exact factors to double precision, the rest to the digits printed. */
const EXACT = 1e-15;

describe("NIST Special Publication 811 (2008 edition), appendix B.8: factors exact by definition", () => {
  it.each<[string, Dimension, number]>([
    ["1 in", "length", 0.0254],
    ["1 ft", "length", 0.3048],
    ["1 nautical mile", "length", 1852],
    ["1 ft²", "area", 0.09290304],
    ["1 in²", "area", 6.4516e-4],
    ["1 lb", "mass", 0.45359237],
    ["1 atm", "pressure", 101_325],
    ["1 bar", "pressure", 100_000],
    ["1 knot", "speed", 1852 / 3600],
    ["1 ft/s", "speed", 0.3048],
    ["1 imp gal", "volume", 4.54609e-3],
    ["1 h", "time", 3600],
  ])("%s", (text, dimension, si) => {
    expect(Math.abs(parseQuantity(text, dimension) / si - 1)).toBeLessThanOrEqual(EXACT);
  });
});

describe("SI Brochure, 8th edition (2006), table 8 (FROM MEMORY): nmi and NM are both in use for 1852 m", () => {
  it.each(["5 nmi", "5 NM", "5 nm", "5NM"])("%s", (text) => {
    expect(parseQuantity(text, "length")).toBe(5 * 1852);
  });
});

describe("NIST Special Publication 811 (2008 edition), appendix B.8: factors as printed, to seven digits", () => {
  it.each<[string, Dimension, number]>([
    ["1 US gal", "volume", 3.785412e-3],
    ["1 US qt", "volume", 9.463529e-4],
    ["1 US fl oz", "volume", 2.957353e-5],
    ["1 in³", "volume", 1.638706e-5],
    ["1 ft³", "volume", 2.831685e-2],
    ["1 US gpm", "flow", 6.30902e-5],
    ["1 psi", "pressure", 6.894757e3],
    ["1 inHg", "pressure", 3.386389e3],
    ["1 mmHg", "pressure", 1.333224e2],
    ["1 ft water", "pressure", 2.989067e3],
    ["1 m water", "pressure", 9.80665e3],
    ["1 oz", "mass", 2.834952e-2],
    ["1 hp", "power", 7.456999e2],
    ["1 lb/ft³", "density", 1.601846e1],
    ["1 deg", "angle", 1.745329e-2],
  ])("%s", (text, dimension, si) => {
    expect(Math.abs(parseQuantity(text, dimension) / si - 1)).toBeLessThanOrEqual(5.1e-7);
  });
});

describe("NIST Special Publication 811 (2008 edition), section B.7: degrees Fahrenheit and Celsius", () => {
  it.each<[string, number]>([
    ["32 °F", 273.15],
    ["212 °F", 373.15],
    ["0 °C", 273.15],
    ["-40 °F", 233.15],
  ])("%s", (text, kelvin) => {
    expect(parseQuantity(text, "temperature")).toBeCloseTo(kelvin, 10);
  });
});

describe("every unit", () => {
  const all = dimensions().flatMap((dimension) => unitsOf(dimension).map((unit) => ({ dimension, unit })));

  it.each(all)("reads back what it writes: $dimension in $unit.symbol", ({ dimension, unit }) => {
    const si = 12.5 * unit.factor + (unit.offset ?? 0);
    const text = formatQuantity(si, dimension, { unit: unit.symbol, digits: 9 });
    expect(isQuantity(text, dimension)).toBe(true);
    expect(parseQuantity(text, dimension)).toBeCloseTo(si, 9);
    expect(inUnit(si, unit.symbol, dimension)).toBeCloseTo(12.5, 9);
  });

  it("is spelt differently from every other of its dimension", () => {
    for (const dimension of dimensions()) {
      const names = unitsOf(dimension).flatMap((unit) => unit.names);
      expect(new Set(names).size, dimension).toBe(names.length);
    }
  });
});
