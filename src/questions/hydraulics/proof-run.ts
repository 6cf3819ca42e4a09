import { InputError } from "#base";
import { meanOfFills, proofRun, runningVacuum, type ProofLimits, type ProofReading, type ProofRun } from "#hydraulics";
import { z } from "zod";
import { assumptionsOut, type Assumption } from "../assumptions.ts";
import { cautionsOut } from "../cautions-out.ts";
import { pumpingCautions } from "./delivery.ts";
import { deliveryIn, resolveDelivery } from "./delivery-input.ts";
import { leftOut } from "./hose-fields.ts";
import { resolveKit } from "../kit/kit-pattern.ts";
import { answered, quantity } from "../quantity-field.ts";
import { defineQuestion, type QuestionContext } from "../question.ts";
import { vacuumOut, vacuumVerdict } from "./vacuum-out.ts";

const GAUGE = { atLeast: 0, atMost: 5e6 };
const VACUUM = { atLeast: 0, atMost: 101_325 };

const readingIn = z
  .discriminatedUnion("method", [
    z.strictObject({
      method: z.literal("timed-fill"),
      volume: quantity("volume", "What the drum holds to its mark", { above: 0, atMost: 10 }),
      timings: z
        .array(quantity("time", "Seconds from empty to the mark", { above: 0, atMost: 3600 }))
        .min(1)
        .max(20)
        .describe("One or more timings of the same drum"),
      volumeUncertainty: quantity("volume", "One standard uncertainty; 2 % if left out", GAUGE).optional(),
    }),
    z.strictObject({
      method: z.literal("discharge-pressure"),
      pressure: quantity("pressure", "Gauge at the pump's outlet", GAUGE),
      pressureUncertainty: quantity("pressure", "One standard uncertainty; 5 kPa if left out", GAUGE).optional(),
    }),
    z.strictObject({
      method: z.literal("suction-vacuum"),
      vacuum: quantity("pressure", "Vacuum at the pump's inlet while it pumps", VACUUM),
      vacuumUncertainty: quantity("pressure", "One standard uncertainty; 5 kPa if left out", GAUGE).optional(),
    }),
    z.strictObject({
      method: z.literal("flow-meter"),
      flow: quantity("flow", "As the meter shows", { atLeast: 0, atMost: 1 }),
      flowUncertainty: quantity("flow", "One standard uncertainty; 3 % if left out", GAUGE).optional(),
    }),
  ])
  .describe("What was read, by the way it was measured");

export const proofRunOut = z.strictObject({
  flow: answered("flow", "Measured flow"),
  flowUncertainty: answered("flow", "One standard uncertainty of it"),
  expected: answered("flow", "What the figures give for this lift and these hoses"),
  ratio: answered("ratio", "Measured over expected"),
  ratioUncertainty: answered("ratio", "One standard uncertainty of it"),
  verdict: z.enum(["as-expected", "noted", "grounds", "unclear"]),
  because: z.string(),
  suction: vacuumOut.optional().describe("What the vacuum at the inlet says beside it, where that was read"),
  assumptions: assumptionsOut,
  cautions: cautionsOut,
});

export const proofRunQuestion = defineQuestion({
  name: "proof-run",
  summary: "A proof run as a measurement: flow with its uncertainty, what was expected, their ratio and the verdict.",
  input: deliveryIn.omit({ pumpsInParallel: true, advise: true }).extend({
    reading: readingIn,
    suctionVacuum: quantity("pressure", "Vacuum at the inlet while it pumps, beside the reading", VACUUM).optional(),
    limits: z
      .strictObject({
        grounds: quantity("ratio", "Measured over expected below which it is grounded", { atLeast: 0, atMost: 1 }),
        notes: quantity("ratio", "Measured over expected below which it is noted", { atLeast: 0, atMost: 1 }),
      })
      .optional()
      .describe("How it is judged, where no kit says"),
  }),
  output: proofRunOut,
  example: {
    pump: { curve: [{ flow: "480 L/min", head: "26 m" }], greatestLift: "7.6 m" },
    suction: { lift: "2 m", bore: "51 mm", length: "4.6 m", roughness: "0.05 mm", fittings: 2.3 },
    discharge: { rise: "1 m", bore: "51 mm", length: "7.6 m", hazenWilliams: 140, fittings: 2.4 },
    reading: { method: "timed-fill", volume: "200 L", timings: ["21.5 s", "22.1 s"] },
    limits: { grounds: 0.75, notes: 0.9 },
  },
  answer: ({ reading, suctionVacuum, limits, ...input }, context) => {
    const { rig, electric, assumptions } = resolveDelivery(input, context);
    const run = proofRun(rig, readingOf(reading), limits ?? patternLimits(input.kit, context));
    return {
      ...run,
      ...(suctionVacuum === undefined ? {} : { suction: vacuumVerdict(runningVacuum(rig, run.flow, suctionVacuum)) }),
      assumptions: [...assumptions, ...runAssumptions(reading, run)],
      cautions: pumpingCautions(electric),
    };
  },
});

type Reading = z.output<typeof readingIn>;

/** Uncertainties left out are left out for hydraulics too, which takes the common ones. */
function readingOf(reading: Reading): ProofReading {
  if (reading.method !== "timed-fill") return withoutGaps(reading);
  const { timings, ...fill } = reading;
  const { seconds, uncertainty } = meanOfFills(timings);
  return { ...withoutGaps(fill), seconds, secondsUncertainty: uncertainty };
}

/** What is undefined is taken out, as the next room wants it absent. */
function withoutGaps<Given extends object>(given: Given): { [K in keyof Given]: Exclude<Given[K], undefined> } {
  const kept = Object.entries(given).filter(([, value]) => value !== undefined);
  return Object.fromEntries(kept) as { [K in keyof Given]: Exclude<Given[K], undefined> };
}

function patternLimits(kit: string | undefined, context: QuestionContext): ProofLimits {
  const limits = resolveKit(kit, context)?.hydraulics?.proof;
  if (limits) return limits;
  throw new InputError([leftOut("limits", "how it is judged {grounds, notes}")]);
}

function runAssumptions(reading: Reading, run: ProofRun): Assumption[] {
  const given = Object.entries(reading).some(([field, value]) => field.endsWith("Uncertainty") && value !== undefined);
  return given || run.expected <= 0 ? [] : [TAKEN[reading.method]];
}

const TAKEN: Readonly<Record<Reading["method"], Assumption>> = {
  "timed-fill": {
    what: "The drum's volume is known to 2 % and the watch is stopped to half a second (one standard uncertainty each).",
    effect: "A bigger drum, filled twice, makes the answer sharper.",
  },
  "discharge-pressure": {
    what: "The gauge is right to 5 kPa and the hose's losses are known to 20 % (one standard uncertainty each).",
    effect: "The hose is the meter here: a timed drum is sharper.",
  },
  "suction-vacuum": {
    what: "The gauge is right to 5 kPa and the hose's losses are known to 20 % (one standard uncertainty each).",
    effect: "A short suction hose loses too little to be a meter; then the verdict is unclear.",
  },
  "flow-meter": {
    what: "The meter is right to 3 % (one standard uncertainty).",
    effect: "Give the meter's own figure where it has one.",
  },
};
