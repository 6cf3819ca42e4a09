import { HYDRAULIC_LIMITS } from "#hydraulics";
import {
  ALTITUDE_LIMITS,
  STANDARD_PRESSURE,
  WATER_LIMITS,
  standardAirTemperature,
  standardPressure,
  waterAt,
  waterVapourPressure,
  type Water,
} from "#water";
import { z } from "zod";
import type { Assumption } from "../assumptions.ts";
import { quantity } from "../quantity-field.ts";

/** The water a pump takes, in a question. */
export const waterIn = z
  .strictObject({
    temperature: quantity(
      "temperature",
      "Temperature of the water; 15 °C if left out",
      WATER_LIMITS.temperature,
    ).optional(),
    salinity: quantity(
      "salinity",
      "Salt in the water: 0 fresh, 35 open sea; fresh if left out",
      WATER_LIMITS.salinity,
    ).optional(),
  })
  .describe("The water: {temperature, salinity}");

/** The air about a pump, in a question. */
export const airIn = z
  .strictObject({
    altitude: quantity("length", "Altitude (geopotential); sea level if left out", ALTITUDE_LIMITS).optional(),
    pressure: quantity(
      "pressure",
      "Barometer reading here, in place of altitude",
      HYDRAULIC_LIMITS.airPressure,
    ).optional(),
    temperature: quantity("temperature", "Temperature of the air", HYDRAULIC_LIMITS.airTemperature).optional(),
    humidity: quantity("ratio", "Relative humidity, as a share or in %; dry air if left out", {
      atLeast: 0,
      atMost: 1,
    }).optional(),
  })
  .describe("The air: {altitude or pressure, temperature}");

const USUAL_WATER = { temperature: 288.15, salinity: 0 };

/** The water as hydraulics needs it; what was left out is added to the assumptions. */
export function resolveWater(given: z.output<typeof waterIn> | undefined, assumptions: Assumption[]): Water {
  const temperature = given?.temperature ?? USUAL_WATER.temperature;
  const salinity = given?.salinity ?? USUAL_WATER.salinity;
  if (given?.temperature === undefined) assumptions.push(WATER_TEMPERATURE);
  if (given?.salinity === undefined) assumptions.push(WATER_SALINITY);
  return waterAt(temperature, salinity);
}

const WATER_TEMPERATURE: Assumption = {
  what: "Water of 15 °C.",
  effect: "At 30 °C the greatest lift is about 0.3 m less; flow hardly changes.",
};
const WATER_SALINITY: Assumption = {
  what: "Fresh water.",
  effect: "In sea water the greatest lift is about 2.5 % less; flow hardly changes.",
};

/** Air as hydraulics and engine need it: [Pa], [K]. */
export interface Air {
  readonly pressure: number;
  /** Pressure less that of the water vapour in it [Pa]. */
  readonly dryPressure: number;
  readonly temperature: number;
}

/** The air; what was left out is added to the assumptions. */
export function resolveAir(given: z.output<typeof airIn> | undefined, assumptions: Assumption[]): Air {
  if (given?.pressure === undefined && given?.altitude === undefined) assumptions.push(SEA_LEVEL);
  const pressure = given?.pressure ?? standardPressure(given?.altitude ?? 0);
  const temperature = given?.temperature ?? standardAirTemperature(given?.altitude ?? 0);
  const vapour = (given?.humidity ?? 0) * waterVapourPressure(temperature, 0);
  return { pressure, dryPressure: pressure - vapour, temperature };
}

const SEA_LEVEL: Assumption = {
  what: `Sea level, ${STANDARD_PRESSURE / 100} hPa.`,
  effect: "Each 100 m higher takes about 0.12 m off the greatest lift, and deep weather lows up to 0.5 m.",
};
