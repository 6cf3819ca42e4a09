import { describe, expect, it } from "vitest";
import { isInputError } from "./errors.ts";
import type { Dimension } from "./units.ts";
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
    ["eight furlongs", "BA-102"],
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

describe("quantities as people say them", () => {
  it.each<[string, Dimension, number]>([
    ["2 ft 6 in", "length", 0.762],
    ["2ft6in", "length", 0.762],
    [`2' 6"`, "length", 0.762],
    ["2′ 6½″", "length", 30.5 * 0.0254],
    ["-2 ft 6 in", "length", -0.762],
    ["2 ft 6 1/2 in", "length", 30.5 * 0.0254],
    ["1 m 20 cm", "length", 1.2],
    ["3 1/2 in", "length", 3.5 * 0.0254],
    ["3-1/2 in", "length", 3.5 * 0.0254],
    ["3½ in", "length", 3.5 * 0.0254],
    ["3 ½ in", "length", 3.5 * 0.0254],
    ["½ in", "length", 0.5 * 0.0254],
    ["1/2 in", "length", 0.5 * 0.0254],
    ["−5 °", "angle", (-5 * Math.PI) / 180],
    ["1 h 30 min", "time", 5400],
    ["1h30min", "time", 5400],
    ["2 min 5 s", "time", 125],
    ["1 d 2 h", "time", 93_600],
    ["1h30m", "time", 5400],
    ["1 h 30 m 5 s", "time", 5405],
    ["3 lb 8 oz", "mass", 3.5 * 0.45359237],
    ["2.5 cm/min", "speed", 0.025 / 60],
    ["2.5 cm per minute", "speed", 0.025 / 60],
    ["1 in/h", "speed", 0.0254 / 3600],
    ["5 cm in 2 min", "speed", 0.05 / 120],
    ["3 in in 2 min", "speed", 0.0762 / 120],
    ["1½ in in 1 min 30 s", "speed", (1.5 * 0.0254) / 90],
    ["20 L in 8 s", "flow", 0.02 / 8],
    ["5 cm per 2 min", "speed", 0.05 / 120],
    ["5 cm/2 min", "speed", 0.05 / 120],
    ["1 inch a minute", "speed", 0.0254 / 60],
    ["250 l a minute", "flow", 0.25 / 60],
    ["2 in. in 5 min.", "speed", (2 * 0.0254) / 300],
    ["falling 5 cm in 2 min", "speed", -0.05 / 120],
    ["Rising 5 cm in 2 min", "speed", 0.05 / 120],
    ["3 ft. 6 in.", "length", 42 * 0.0254],
    ["12 m/s", "speed", 12],
    ["250 L/min", "flow", 0.25 / 60],
    ["20 kn", "speed", (20 * 1852) / 3600],
    ["20 kts", "speed", (20 * 1852) / 3600],
  ])("%j as %s", (text, dimension, si) => {
    expect(parseQuantity(text, dimension)).toBeCloseTo(si, 12);
    expect(isQuantity(text, dimension)).toBe(true);
  });

  it.each<[string, Dimension, number]>([
    ["two feet six inches", "length", 0.762],
    ["Two foot six inches", "length", 0.762],
    ["eight feet", "length", 8 * 0.3048],
    ["half a metre", "length", 0.5],
    ["three and a half inches", "length", 3.5 * 0.0254],
    ["2 and a half feet", "length", 2.5 * 0.3048],
    ["a foot and a half", "length", 1.5 * 0.3048],
    ["three quarters of an inch", "length", 0.75 * 0.0254],
    ["a quarter of an inch", "length", 0.25 * 0.0254],
    ["fifty-five centimetres", "length", 0.55],
    ["one point two metres", "length", 1.2],
    ["point five metres", "length", 0.5],
    ["2 m and 30 cm", "length", 2.3],
    ["one metre and twenty centimetres", "length", 1.2],
    ["two-inch", "length", 2 * 0.0254],
    ["minus three cm", "length", -0.03],
    ["an hour and a half", "time", 5400],
    ["one and a half hours", "time", 5400],
    ["half an hour", "time", 1800],
    ["an hour and twenty minutes", "time", 4800],
    ["1 hr 30 mins", "time", 5400],
    ["twenty minutes", "time", 1200],
    ["two hundred and fifty litres a minute", "flow", 0.25 / 60],
    ["12 cubic metres an hour", "flow", 12 / 3600],
    ["one thousand two hundred litres per minute", "flow", 1.2 / 60],
    ["an inch a minute", "speed", 0.0254 / 60],
    ["two inches in a minute", "speed", (2 * 0.0254) / 60],
    ["rising two inches in five minutes", "speed", (2 * 0.0254) / 300],
    ["falling an inch a minute", "speed", -0.0254 / 60],
    ["twenty knots", "speed", (20 * 1852) / 3600],
    ["half", "ratio", 0.5],
    ["a third", "ratio", 1 / 3],
    ["three quarters", "ratio", 0.75],
    ["ten degrees", "angle", Math.PI / 18],
    ["12 square metres", "area", 12],
  ])("%j as spoken, as %s", (text, dimension, si) => {
    expect(parseQuantity(text, dimension)).toBeCloseTo(si, 12);
  });

  it.each<[string, Dimension, string, RegExp]>([
    ["14:05", "time", "BA-106", /time of day/],
    ["1:30 h", "time", "BA-106", /1 h 30 min/],
    ["90 m", "time", "BA-102", /write 90 min/],
    ["8 miles", "length", "BA-102", /nmi for sea miles/],
    ["5 cm in 2:00", "speed", "BA-106", /2 min 0 s/],
    ["falling 8 m", "length", "BA-101", /Begin with the number/],
    ["1,200 L/min", "flow", "BA-105", /1200 or 1\.200/],
    ["2 ft 14 in", "length", "BA-104", /14 in is not less than 1 ft/],
    ["6 in 2 ft", "length", "BA-104", /larger unit comes first/],
    ["2.5 ft 6 in", "length", "BA-104", /2\.5 ft is not whole/],
    ["5 cm in 0 min", "speed", "BA-104", /more than no time/],
    ["2 ft 6", "length", "BA-102", /6 of what\? Every part/],
    ["5 in 2 min", "speed", "BA-102", /5 of what/],
    ["8", "length", "BA-102", /8 of what\? Add the unit/],
    ["8 kPa", "length", "BA-102", /"kPa" is a unit of pressure, and here a length/],
    ["about 5 cm", "length", "BA-101", /Begin with the number/],
    ["eight", "length", "BA-102", /8 of what\? Add the unit/],
    ["two feet six", "length", "BA-102", /6 of what\? Every part/],
    ["knee deep", "length", "BA-101", /Write a number and a unit/],
    ["1/0 in", "length", "BA-103", /finite/],
    ["", "length", "BA-101", /Write a number/],
  ])("says what is wrong with %j as %s", (text, dimension, code, remedy) => {
    try {
      parseQuantity(text, dimension);
      expect.unreachable();
    } catch (thrown) {
      expect(isInputError(thrown) && thrown.faults[0]).toMatchObject({ code });
      expect(isInputError(thrown) && thrown.faults[0]!.remedy).toMatch(remedy);
    }
  });

  it.each(["length", "speed"] as const)(
    "are never read at length as a %s: a very long text is refused unread",
    (what) => {
      for (const text of ["1 ".repeat(50_000), "1".repeat(100_000), "1 m ".repeat(50_000), "1 in".repeat(20_000)]) {
        expect(() => parseQuantity(text, what)).toThrow("Write one quantity, in a few words.");
      }
    },
  );
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
