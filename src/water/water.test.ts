import { describe, expect, it } from "vitest";
import { InputError } from "#base";
import { airDensity, geopotentialAltitude, standardAirTemperature, standardPressure, stationPressure } from "./air.ts";
import { saturationPressure, saturationTemperature } from "./vapour-pressure.ts";
import { pureWaterViscosity, seaWaterViscosity, waterViscosity } from "./viscosity.ts";
import { waterAt } from "./water.ts";

describe("waterAt", () => {
  it("makes sea water heavier, thicker and slower to boil than fresh", () => {
    const fresh = waterAt(288.15, 0);
    const sea = waterAt(288.15, 35);
    expect(sea.density).toBeGreaterThan(fresh.density);
    expect(sea.viscosity).toBeGreaterThan(fresh.viscosity);
    expect(sea.vapourPressure).toBeLessThan(fresh.vapourPressure);
  });

  it("refuses what no equation covers, naming both faults", () => {
    const faults = faultsOf(() => waterAt(200, 99));
    expect(faults).toEqual(["WA-101 temperature", "WA-102 salinity"]);
    expect(faultsOf(() => waterAt(Number.NaN, 0))).toEqual(["WA-101 temperature"]);
  });

  it("joins fresh and sea water viscosity without a jump", () => {
    for (const temperature of [273.15, 288.15, 313.15]) {
      expect(waterViscosity(temperature, 0)).toBe(pureWaterViscosity(temperature));
      expect(waterViscosity(temperature, 5)).toBe(seaWaterViscosity(temperature, 5));
      expect(waterViscosity(temperature, 1e-9)).toBeCloseTo(waterViscosity(temperature, 0), 12);
      expect(waterViscosity(temperature, 5 - 1e-9)).toBeCloseTo(waterViscosity(temperature, 5), 12);
    }
  });
});

describe("boiling", () => {
  it("turns pressure into temperature and back", () => {
    for (const temperature of [274, 300, 350, 450, 600]) {
      expect(saturationTemperature(saturationPressure(temperature))).toBeCloseTo(temperature, 6);
    }
  });
});

describe("air", () => {
  it("thins with height and starts at 1013.25 hPa and 15 °C", () => {
    expect(standardPressure(0)).toBe(101_325);
    expect(standardAirTemperature(0)).toBe(288.15);
    expect(standardPressure(1000)).toBeLessThan(standardPressure(0));
    expect(airDensity(101_325, 288.15)).toBeCloseTo(1.225, 4);
  });

  it("brings a sea-level barometer reading to the station", () => {
    expect(stationPressure(101_325, 500)).toBeCloseTo(standardPressure(500), 9);
    expect(stationPressure(98_000, 0)).toBe(98_000);
  });

  it("puts geopotential below geometric altitude", () => {
    expect(geopotentialAltitude(3000)).toBeCloseTo(2998.585, 2);
  });
});

function faultsOf(act: () => unknown): string[] {
  try {
    act();
  } catch (thrown) {
    if (thrown instanceof InputError) return thrown.faults.map((fault) => `${fault.code} ${fault.field}`);
  }
  return [];
}
