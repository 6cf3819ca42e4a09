import { SEA_WATER, lieWithWater, rightingOf } from "#flooding";
import type { CautionId, Fault } from "#base";
import { z } from "zod";
import { assumptionsOut, type Assumption } from "../assumptions.ts";
import { compartmentIn } from "./casualty-fields.ts";
import { resolveFloating, throwAny } from "./casualty-input.ts";
import { cautionsOut } from "../cautions-out.ts";
import { wrongSpaces } from "../guards/places.ts";
import { hydrostaticsFields } from "./hydrostatics.ts";
import { answered, quantity } from "../quantity-field.ts";
import { defineQuestion } from "../question.ts";

const STEEPEST = (75 * Math.PI) / 180;
const HEEL = { atLeast: -STEEPEST * (1 + 1e-9), atMost: STEEPEST * (1 + 1e-9) };
const USUAL = [0, 10, 20, 30, 40, 50, 60, 70].map((degrees) => (degrees * Math.PI) / 180);

const pointOut = z.strictObject({
  heel: answered("angle", "To starboard"),
  lever: answered("length", "Righting lever; to port it is negative where she comes back"),
});

export const rightingQuestion = defineQuestion({
  name: "righting",
  summary:
    "How strongly a boat with water in her comes back from a heel: righting levers, the greatest, where none is left.",
  input: z.strictObject({
    ...hydrostaticsFields,
    heels: z
      .array(quantity("angle", "Heel to starboard", HEEL))
      .min(1)
      .max(200)
      .optional()
      .describe("Heels at which the lever is wanted; each 10° to 70° if left out"),
    compartments: z
      .array(compartmentIn)
      .max(12)
      .optional()
      .describe("Spaces with water in them, each with its level or volume, as in flood; none if left out"),
  }),
  output: z.strictObject({
    kind: z.enum(["afloat", "founders"]),
    because: z.string().optional().describe("Why she does not float"),
    curve: z
      .array(pointOut)
      .describe(
        "At the heels asked for; where no trim holds her the lever is with the trim as it last was, and that is assumed",
      ),
    greatest: z
      .strictObject({
        heel: answered("angle", "Where"),
        lever: answered("length", "Greatest lever, positive where it rights"),
      })
      .optional()
      .describe("Up to 75°, to starboard, or to port where only heels to port are asked for"),
    vanishing: answered(
      "angle",
      "Heel beyond it at which no lever is left; absent where some is left at 75°",
    ).optional(),
    areaTo: z
      .strictObject({ 30: z.number().optional(), 40: z.number().optional() })
      .optional()
      .describe("Area under the curve from upright to 30° and to 40° [m·rad]"),
    gm: answered("length", "Metacentric height upright, floodwater free to move").optional(),
    displacement: answered("mass", "Boat and floodwater").optional(),
    assumptions: assumptionsOut,
    cautions: cautionsOut,
  }),
  example: {
    hull: { form: "family", length: "9 m", beam: "3 m", depth: "1.5 m", draught: "0.8 m", blockCoefficient: 0.5 },
    kg: "0.9 m",
    heels: ["10 °", "20 °", "30 °", "40 °"],
    compartments: [{ name: "engine room", from: "1 m", to: "4 m", permeability: 0.85, level: "0.4 m" }],
  },
  answer: ({ heels, heel, compartments = [], density, ...given }) => {
    const faults: Fault[] = [];
    const assumptions: Assumption[] = [STILL];
    const vessel = resolveFloating({ ...given, compartments }, faults, assumptions, "");
    throwAny(faults);
    throwAny(wrongSpaces(vessel, "compartments"));
    const wanted = heels ?? (heel === undefined ? USUAL : [heel]);
    const found = rightingOf(vessel, wanted);
    const cautions: CautionId[] = [...noLie(lieWithWater(vessel).kind), "no-one-below-alone", "estimate"];
    if (found.kind === "founders") return { ...found, curve: [], assumptions, cautions };
    const displacement = found.volume * (density ?? SEA_WATER);
    const { volume: _volume, trimHeldFrom, ...curve } = found;
    if (trimHeldFrom !== undefined) assumptions.push(trimHeld(trimHeldFrom));
    return { ...curve, curve: [...found.curve], displacement, assumptions, cautions };
  },
});

function noLie(kind: "afloat" | "founders" | "capsizes"): CautionId[] {
  return kind === "afloat" ? ["free-surface"] : ["free-surface", "no-stable-lie"];
}

function trimHeld(from: number): Assumption {
  return {
    what: `From ${Math.abs(Math.round((from * 180) / Math.PI))}° on no trim holds her by itself: it is taken as it last was.`,
    effect: "She would plunge by one end as well: the levers there are the least that is wrong with her.",
  };
}

const STILL: Assumption = {
  what: "Still water, deck and openings tight, nothing and nobody moving, floodwater level in its own space.",
  effect:
    "Waves, a hatch that goes under or a weight that shifts take lever away: she can roll over well before it vanishes here.",
};
