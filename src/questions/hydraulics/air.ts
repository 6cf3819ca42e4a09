import { HYDRAULIC_LIMITS, powerCorrection } from "#hydraulics";
import { ALTITUDE_LIMITS, airDensity, standardAirTemperature, standardPressure } from "#water";
import { z } from "zod";
import { assumptionsOut, type Assumption } from "../assumptions.ts";
import { answered, quantity } from "../quantity-field.ts";
import { defineQuestion } from "../question.ts";

export const airQuestion = defineQuestion({
  name: "air",
  summary: "Air pressure at an altitude, and what it leaves of an engine's power.",
  input: z.strictObject({
    altitude: quantity("length", "Altitude (geopotential)", ALTITUDE_LIMITS),
    temperature: quantity("temperature", "Temperature of the air", HYDRAULIC_LIMITS.airTemperature).optional(),
  }),
  output: z.strictObject({
    pressure: answered("pressure", "Pressure of the standard atmosphere"),
    temperature: answered("temperature", "Temperature of the air"),
    density: answered("density", "Density of dry air"),
    enginePower: answered("ratio", "Power an engine without a turbocharger has here, of its rated power"),
    assumptions: assumptionsOut,
  }),
  example: { altitude: "500 m", temperature: "25 °C" },
  answer: ({ altitude, temperature: given }) => {
    const pressure = standardPressure(altitude);
    const temperature = given ?? standardAirTemperature(altitude);
    return {
      pressure,
      temperature,
      density: airDensity(pressure, temperature),
      enginePower: 1 / powerCorrection(pressure, temperature),
      assumptions: given === undefined ? [STANDARD_AIR, WEATHER] : [WEATHER],
    };
  },
});

const STANDARD_AIR: Assumption = {
  what: "Air as warm as the standard atmosphere has it at this altitude.",
  effect: "Pressure does not depend on it; 20 K warmer takes about 4 % off the engine's power.",
};
const WEATHER: Assumption = {
  what: "Average weather.",
  effect: "Highs and lows move the pressure by up to about 5 %; a barometer reading is better.",
};
