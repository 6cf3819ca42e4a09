import { makeHull, measureHydrostatics, SEA_WATER } from "#flooding";
import type { Fault } from "#base";
import { z } from "zod";
import { assumptionsOut, type Assumption } from "../assumptions.ts";
import { hullIn } from "./casualty-fields.ts";
import { checkDraught, omitMissing, resolveHull, throwAny } from "./casualty-input.ts";
import { wrongLie } from "../guards/lies.ts";
import { answered, quantity } from "../quantity-field.ts";
import { defineQuestion } from "../question.ts";

/** A hull and how it lies. */
export const hydrostaticsFields = {
  hull: hullIn,
  draught: quantity("length", "Draught amidships; the hull's own if left out", { above: 0, atMost: 60 }).optional(),
  heel: quantity("angle", "Heel to starboard", { atLeast: -1.309, atMost: 1.309 }).optional(),
  trim: quantity("length", "Draught aft less draught forward", { atLeast: -60, atMost: 60 }).optional(),
  kg: quantity("length", "Centre of gravity above the keel", { atLeast: 0, atMost: 60 }).optional(),
  density: quantity("density", "Density of the water; 1025 kg/m³ if left out", {
    atLeast: 900,
    atMost: 1300,
  }).optional(),
};

export const hydrostaticsQuestion = defineQuestion({
  name: "hydrostatics",
  summary: "Volume, centres and metacentric heights of a hull at a draught, heel and trim.",
  input: z.strictObject(hydrostaticsFields),
  output: z.strictObject({
    volume: answered("volume", "Displaced volume"),
    displacement: answered("mass", "Displaced mass"),
    lcb: answered("length", "Centre of buoyancy forward of the after end"),
    tcb: answered("length", "Centre of buoyancy to starboard"),
    kb: answered("length", "Centre of buoyancy above the keel"),
    bm: answered("length", "Transverse metacentric radius"),
    bmLong: answered("length", "Longitudinal metacentric radius"),
    waterplaneArea: answered("area", "Waterplane area"),
    lcf: answered("length", "Centre of flotation forward of the after end"),
    gm: answered("length", "Metacentre above the centre of gravity, where kg is given").optional(),
    assumptions: assumptionsOut,
  }),
  example: { hull: { form: "box", length: "9 m", beam: "2.6 m", depth: "1.4 m", draught: "0.7 m" }, kg: "0.6 m" },
  answer: ({ hull, draught, heel, trim, kg, density }) => {
    const assumptions: Assumption[] = density === undefined ? [SEA] : [];
    const faults: Fault[] = [];
    const form = resolveHull(hull, faults, assumptions);
    checkDraught(form, draught, faults);
    throwAny(faults);
    throwAny(wrongLie(form, { draught, heel, trim }));
    const made = makeHull(form);
    const attitude = { draught: draught ?? made.draught, ...omitMissing({ heel, trim }) };
    return { ...measureHydrostatics(made, attitude, omitMissing({ kg, density })), assumptions };
  },
});

const SEA: Assumption = {
  what: `Sea water of ${SEA_WATER} kg/m³.`,
  effect: "In fresh water the displaced mass is 2.5 % less.",
};
