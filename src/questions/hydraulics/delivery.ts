import type { CautionId } from "#base";
import { PRACTICE_LIFT, deliveryAdvice, deliveryOf, type DeliveryCase } from "#hydraulics";
import { z } from "zod";
import { assumptionsOut, type Assumption } from "../assumptions.ts";
import { bandOut } from "../on-scene/band-out.ts";
import { cautionsOut } from "../cautions-out.ts";
import { deliveryIn, resolveDelivery } from "./delivery-input.ts";
import { answered } from "../quantity-field.ts";
import { defineQuestion } from "../question.ts";

const pointOut = z.strictObject({
  flow: answered("flow", "Flow of all pumps together"),
  residual: answered("length", "What is left of the energy balance"),
  stable: z.boolean(),
});

const adviceOut = z.strictObject({
  kind: z.enum([
    "lower-pump",
    "shorten-suction",
    "shorten-discharge",
    "lower-outlet",
    "widen-suction",
    "widen-discharge",
    "open-throttle",
    "throttle-back",
  ]),
  what: z.string(),
  by: z.number().describe("How much [m; speed ratio for the throttle]"),
  flow: answered("flow", "Flow of all pumps after it"),
  gain: answered("flow", "Flow gained"),
});

export const deliveryOut = z.strictObject({
  kind: z.enum(["delivers", "cannot-lift", "suction-limited"]),
  limit: z.enum(["curve", "suction", "height"]).describe("What binds"),
  flow: answered("flow", "Flow of all pumps together"),
  flowPerPump: answered("flow", "Flow of each pump"),
  band: bandOut,
  head: answered("length", "Head each pump gives; at no flow, its shut-off head"),
  npshAvailable: answered("length", "Net positive suction head at the pump's inlet"),
  npshRequired: answered("length", "What the pump needs there"),
  suctionLoss: answered("length", "Head lost in a suction hose"),
  dischargeLoss: answered("length", "Head lost in the discharge hose, exit among it"),
  residual: answered("length", "What is left of the equation that binds"),
  iterations: z.number(),
  speedRatio: answered("ratio", "Running speed over rated speed"),
  speed: answered("rate", "Running speed, where the rated one was given").optional(),
  because: z.string(),
  points: z.array(pointOut).describe("Every operating point of the curve, greatest flow first"),
  advice: z.array(adviceOut).describe("What to change, the change that gains most first"),
  assumptions: assumptionsOut,
  cautions: cautionsOut,
});

export const deliveryQuestion = defineQuestion({
  name: "delivery",
  summary: "Flow a rigged pump really moves at this lift, through these hoses, at this throttle; and what binds.",
  input: deliveryIn,
  output: deliveryOut,
  example: {
    water: { temperature: "12 °C", salinity: 35 },
    air: { altitude: "0 m" },
    pump: {
      curve: [
        { flow: "0 L/min", head: "32 m" },
        { flow: "480 L/min", head: "26 m" },
        { flow: "900 L/min", head: "12 m" },
      ],
      npshRequired: [
        { flow: "0 L/min", head: "2 m" },
        { flow: "900 L/min", head: "4 m" },
      ],
    },
    throttle: 1,
    suction: { lift: "3 m", bore: "76 mm", length: "6 m", roughness: "0.3 mm", fittings: 3 },
    discharge: { rise: "2 m", bore: "65 mm", length: "15 m", roughness: "0.1 mm", fittings: 1 },
  },
  answer: (input, context) => {
    const { rig, electric, assumptions } = resolveDelivery(input, context);
    const { points, ...answer } = deliveryOf(rig);
    return {
      ...answer,
      points: points.map(({ flow, residual, stable }) => ({ flow: flow * rig.pumps, residual, stable })),
      speedRatio: rig.speedRatio,
      ...(input.pump?.speed === undefined ? {} : { speed: input.pump.speed * rig.speedRatio }),
      advice: input.advise === false ? [] : [...deliveryAdvice(rig)],
      assumptions: [...assumptions, ...answer.assumptions, ...practice(rig)],
      cautions: pumpingCautions(electric),
    };
  },
});

/** Cautions of a pump at work, by what turns it. */
export function pumpingCautions(electric: boolean): CautionId[] {
  return electric ? ELECTRIC_CAUTIONS : ENGINE_CAUTIONS;
}

const ENGINE_CAUTIONS: CautionId[] = [
  "carbon-monoxide",
  "never-pump-fuel",
  "refuel-stopped-and-cool",
  "pressurised-hose",
  "hot-exhaust",
  "noise",
  "strainer-suction",
  "estimate",
  "unit-manual-first",
];

const ELECTRIC_CAUTIONS: CautionId[] = [
  "never-pump-fuel",
  "electric-shock",
  "pressurised-hose",
  "strainer-suction",
  "estimate",
  "unit-manual-first",
];

/** What practice says of high lifts and short hoses, beside the computed answer. */
function practice(rig: DeliveryCase): Assumption[] {
  const notes: Assumption[] = [];
  if (!rig.suction) return notes;
  if (rig.lift > rig.suction.length) notes.push(TOO_SHORT);
  if (rig.lift > PRACTICE_LIFT.notBeyond) notes.push(NOT_ATTEMPTED);
  else if (rig.lift > PRACTICE_LIFT.plainLossAbove) notes.push(PLAIN_LOSS);
  return notes;
}

const TOO_SHORT: Assumption = {
  what: "The suction hose is shorter than the lift.",
  effect: "It does not reach the water; a longer one reaches, and loses more.",
};

const PLAIN_LOSS: Assumption = {
  what: "Practice: above about 4.6 m (15 ft) of suction lift the loss is plain (US Army TM 10-4320-310-14, read in excerpt).",
  effect: "Any air leak or wear costs more here than it would lower down.",
};
const NOT_ATTEMPTED: Assumption = {
  what: "Practice: suction lift beyond about 7.6 m (25 ft) is not attempted (US Army TM 10-4320-310-14, read in excerpt).",
  effect: "Do not count on this flow; put the pump lower.",
};
