import { InputError, type Fault } from "#base";
import { HYDRAULIC_LIMITS, hoseLoss } from "#hydraulics";
import { z } from "zod";
import { assumptionsOut, type Assumption } from "../assumptions.ts";
import { hoseFields, resolveHose } from "./hose-fields.ts";
import { answered, quantity } from "../quantity-field.ts";
import { defineQuestion } from "../question.ts";
import { resolveWater, waterIn } from "./surroundings.ts";

export const hoseLossQuestion = defineQuestion({
  name: "hose-loss",
  summary: "Head a flow loses in a hose and its fittings.",
  input: z.strictObject({
    flow: quantity("flow", "Flow in the hose", HYDRAULIC_LIMITS.flow),
    ...hoseFields,
    bore: quantity("length", "Inner diameter of the hose", HYDRAULIC_LIMITS.bore),
    length: quantity("length", "Length of the hose", HYDRAULIC_LIMITS.length),
    water: waterIn.optional(),
  }),
  output: z.strictObject({
    headLoss: answered("length", "Head lost, as height of this water"),
    pressureLoss: answered("pressure", "The same as pressure"),
    velocity: answered("speed", "Mean velocity in the hose"),
    reynolds: answered("ratio", "Reynolds number"),
    frictionFactor: answered("ratio", "Darcy friction factor, where roughness was given and water moves").optional(),
    assumptions: assumptionsOut,
  }),
  example: { flow: "600 L/min", bore: "65 mm", length: "20 m", roughness: "0.1 mm", fittings: 1.5 },
  answer: ({ flow, water, ...given }) => {
    const faults: Fault[] = [];
    const hose = resolveHose(given, undefined, "", faults);
    if (faults.length > 0) throw new InputError(faults);
    const assumptions: Assumption[] = [];
    return { ...hoseLoss(hose, flow, resolveWater(water, assumptions)), assumptions };
  },
});
