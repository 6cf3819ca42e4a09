import { READING_UNCERTAINTY, vacuumTest } from "#hydraulics";
import { z } from "zod";
import { assumptionsOut, type Assumption } from "../assumptions.ts";
import { cautionsOut } from "../cautions-out.ts";
import { quantity } from "../quantity-field.ts";
import { defineQuestion } from "../question.ts";
import { airIn, resolveAir } from "./surroundings.ts";
import { vacuumOut, vacuumVerdict } from "./vacuum-out.ts";

export const vacuumTestOut = vacuumOut.extend({ assumptions: assumptionsOut, cautions: cautionsOut });

export const vacuumTestQuestion = defineQuestion({
  name: "vacuum-test",
  summary: "From the vacuum a pump holds on a closed suction port: does the fault lie in the pump or in the hose?",
  input: z.strictObject({
    vacuum: quantity("pressure", "Vacuum held on the closed suction port", { atLeast: 0, atMost: 101_325 }),
    uncertainty: quantity("pressure", "One standard uncertainty of the gauge; 5 kPa if left out", {
      atLeast: 0,
      atMost: 50_000,
    }).optional(),
    air: airIn.optional(),
  }),
  output: vacuumTestOut,
  example: { vacuum: "20 inHg", air: { altitude: "0 m" } },
  answer: ({ vacuum, uncertainty, air }) => {
    const assumptions: Assumption[] = [];
    const { pressure } = resolveAir(air, assumptions);
    if (uncertainty === undefined) assumptions.push(GAUGE);
    const verdict = vacuumTest(vacuum, pressure, uncertainty ?? READING_UNCERTAINTY.pressure);
    return { ...vacuumVerdict(verdict), assumptions, cautions: ["never-run-dry", "rotating-parts"] };
  },
});

const GAUGE: Assumption = {
  what: "The gauge is right to 5 kPa (one standard uncertainty).",
  effect: "Within 10 kPa of the figure wanted the answer is unclear.",
};
