import { flowThrough, GREATEST_COEFFICIENT, headOver, type Opening } from "#flooding";
import type { Fault } from "#base";
import { z } from "zod";
import { assumptionsOut, type Assumption } from "../assumptions.ts";
import { openingIn } from "./casualty-fields.ts";
import { resolveOpening, throwAny } from "./casualty-input.ts";
import { answered, quantity } from "../quantity-field.ts";
import { defineQuestion } from "../question.ts";

const LEVEL = { atLeast: -20, atMost: 60 };

export const inflowQuestion = defineQuestion({
  name: "inflow",
  summary: "Flow through a hole, slot, pipe or deck edge between two water levels.",
  input: z.strictObject({
    opening: openingIn,
    outsideLevel: quantity("length", "Outside water level, above the keel", LEVEL),
    insideLevel: quantity("length", "Inside water level, above the keel; its floor when dry", LEVEL),
  }),
  output: z.strictObject({
    flow: answered("flow", "Flow, inward positive"),
    head: answered("length", "Outside level less the higher of inside level and hole, or the reverse with its sign"),
    noWorseThan: answered("flow", "The same with a discharge coefficient of 1, which no hole exceeds"),
    assumptions: assumptionsOut,
  }),
  example: { opening: { kind: "hole", diameter: "2 in", height: 0 }, outsideLevel: "1 ft", insideLevel: 0 },
  answer: ({ opening: given, outsideLevel: outside, insideLevel: inside }) => {
    const faults: Fault[] = [];
    const opening = resolveOpening(given, "opening", faults);
    throwAny(faults);
    return {
      flow: flowThrough(opening, { outside, inside }),
      head: headOver(heightOf(opening), outside, inside),
      noWorseThan: flowThrough(wideOpen(opening), { outside, inside }),
      assumptions: "dischargeCoefficient" in opening || opening.kind === "pipe" ? [] : [COEFFICIENT],
    };
  },
});

const COEFFICIENT: Assumption = {
  what: "A discharge coefficient of 0.6, sharp or ragged edges.",
  effect:
    "Printed coefficients of sharp edges run from 0.60 to 0.66; a rounded hole or a short pipe passes up to two thirds more.",
};

function heightOf(opening: Opening): number {
  return opening.kind === "slot" || opening.kind === "deck-edge" ? opening.sill : opening.height;
}

function wideOpen(opening: Opening): Opening {
  return opening.kind === "pipe" ? opening : { ...opening, dischargeCoefficient: GREATEST_COEFFICIENT };
}
