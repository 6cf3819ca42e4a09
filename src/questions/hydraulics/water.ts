import { DENSITY_KNOWN_TO, WATER_LIMITS, waterAt } from "#water";
import { z } from "zod";
import { assumptionsOut, type Assumption } from "../assumptions.ts";
import { answered, quantity } from "../quantity-field.ts";
import { defineQuestion } from "../question.ts";

export const waterQuestion = defineQuestion({
  name: "water",
  summary: "Density, vapour pressure and viscosity of fresh or sea water.",
  input: z.strictObject({
    temperature: quantity("temperature", "Temperature of the water", WATER_LIMITS.temperature),
    salinity: quantity("salinity", "Salt in the water; 0 is fresh, 35 is the open sea", WATER_LIMITS.salinity),
  }),
  output: z.strictObject({
    density: answered("density", "Density at one atmosphere"),
    vapourPressure: answered("pressure", "Vapour pressure"),
    viscosity: z.number().describe("Dynamic viscosity [Pa·s]"),
    assumptions: assumptionsOut,
  }),
  example: { temperature: "15 °C", salinity: "35 g/kg" },
  answer: ({ temperature, salinity }) => ({
    ...waterAt(temperature, salinity),
    assumptions: temperature > DENSITY_KNOWN_TO ? [EXTRAPOLATED] : [],
  }),
});

const EXTRAPOLATED: Assumption = {
  what: "The density equation is used above the 40 °C it was made for.",
  effect: "Density may be about 0.02 % high.",
};
