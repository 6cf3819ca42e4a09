import type { CautionId } from "#base";
import { needKits } from "#flooding";
import { BOAT_LIMITS } from "#readiness";
import { z } from "zod";
import { assumptionsOut, type Assumption } from "./assumptions.ts";
import { cautionsOut } from "./cautions-out.ts";
import { omitMissing } from "./casualty-input.ts";
import { kitIn, resolveKit } from "./kit-pattern.ts";
import { answered, quantity } from "./quantity-field.ts";
import { defineQuestion } from "./question.ts";

const spreadOut = z.strictObject({
  p05: z.number(),
  p25: z.number(),
  p50: z.number(),
  p75: z.number(),
  p95: z.number(),
});

export const kitsNeededQuestion = defineQuestion({
  name: "kits-needed",
  summary: "Before launching: how many kits and cans to take, what a patch is worth, what to ask the skipper.",
  input: z.strictObject({
    length: quantity("length", "Length of the boat", BOAT_LIMITS.length),
    boat: z.enum(["open boat", "motor boat", "sailing yacht", "fishing boat"]).describe("Kind of boat"),
    holeDiameter: quantity("length", "Hole across, if known", { above: 0, atMost: 1 }).optional(),
    holeDepth: quantity("length", "Hole below the waterline, if known", { above: 0, atMost: 6 }).optional(),
    waterInside: quantity("length", "Water over the floor now", { atLeast: 0, atMost: 6 }).optional(),
    rising: quantity("speed", "How fast it rises, m/s; say 5 cm in 2 min as 0.00042", {
      atLeast: 0,
      atMost: 0.1,
    }).optional(),
    spaceLength: quantity("length", "Length of the flooded space", { above: 0, atMost: 40 }).optional(),
    distance: quantity("length", "Distance to her", { atLeast: 0, atMost: 400_000 }),
    speed: quantity("speed", "Speed there; 20 kn if left out", { above: 0, atMost: 60 }).optional(),
    setUp: quantity("time", "From alongside to water over the side; 10 min if left out", {
      atLeast: 0,
      atMost: 7200,
    }).optional(),
    kit: kitIn.optional(),
    delivery: quantity("flow", "What one kit moves there; 200 L/min if left out", { above: 0, atMost: 1 }).optional(),
    onScene: quantity("time", "Time on scene to plan fuel for; 3 h if left out", {
      above: 0,
      atMost: 172_800,
    }).optional(),
    burn: quantity("flow", "Fuel one kit burns; 1.5 L/h if left out", { above: 0, atMost: 1e-5 }).optional(),
    can: quantity("volume", "One can; 5 L if left out", { above: 0, atMost: 0.1 }).optional(),
  }),
  output: z.strictObject({
    inflow: spreadOut.describe("Inflow [m³/s]"),
    noWorseThan: answered("flow", "Inflow at a discharge coefficient of 1, not exceeded nineteen times in twenty"),
    byKits: z.array(
      z.strictObject({ kits: z.number(), holding: z.number(), gaining: z.number(), holdingPatched: z.number() }),
    ),
    forHolding: z
      .number()
      .optional()
      .describe("Fewest kits with nine chances in ten of holding; absent: more than six"),
    forGaining: z.number().optional().describe("The same of gaining"),
    forHoldingPatched: z.number().optional().describe("The same of holding with the hole halved"),
    afloatOnArrival: z.number().describe("Chance that her deck edge is not under when the first kit pumps"),
    arrival: answered("time", "Until the first kit pumps"),
    cansPerKit: z.number(),
    cans: z.number().describe("For the kits that hold, or for six where none of those looked at does"),
    ask: z.array(z.string()).describe("What to ask by radio, in order"),
    assumptions: assumptionsOut,
    cautions: cautionsOut,
  }),
  example: { length: "10 m", boat: "motor boat", holeDiameter: "50 mm", distance: "8 nmi", delivery: "250 L/min" },
  answer: (input, context) => {
    const assumptions: Assumption[] = [...ALWAYS];
    const pattern = resolveKit(input.kit, context);
    if (input.delivery === undefined) assumptions.push(DELIVERY);
    const arrival = input.distance / (input.speed ?? TWENTY_KNOTS) + (input.setUp ?? 600);
    const needed = needKits({
      kind: input.boat,
      arrival,
      delivery: input.delivery ?? 0.2 / 60,
      deliveryLogSpread: input.delivery === undefined ? 0.35 : 0.2,
      onScene: input.onScene ?? 3 * 3600,
      burn: input.burn ?? pattern?.engine?.burn.at(-1)?.burn ?? 0.0015 / 3600,
      fuelInKit: pattern?.engine?.tank ?? 0,
      can: input.can ?? 0.005,
      length: input.length,
      ...omitMissing({
        holeDiameter: input.holeDiameter,
        holeDepth: input.holeDepth,
        waterInside: input.waterInside,
        rising: input.rising,
        spaceLength: input.spaceLength,
      }),
    });
    const cans = needed.cansPerKit * (needed.forHolding ?? needed.byKits.length);
    return {
      ...needed,
      byKits: [...needed.byKits],
      ask: [...needed.ask],
      arrival,
      cans,
      assumptions,
      cautions: CAUTIONS,
    };
  },
});

const TWENTY_KNOTS = (20 * 1852) / 3600;
const CAUTIONS: CautionId[] = [
  "carbon-monoxide",
  "petrol-vapour",
  "never-pump-fuel",
  "free-surface",
  "heavy-lift",
  "estimate",
];

const DELIVERY: Assumption = {
  what: "One kit moves 200 L/min through its hoses on that boat, give or take a third.",
  effect: "Ask `delivery` for the lift and hoses at hand: the number of kits goes with it.",
};
const ALWAYS: readonly Assumption[] = [
  {
    what: "One hole; unknown holes are about 50 mm across (15 to 160 mm), somewhere between keel and waterline.",
    effect: "Inflow goes with the square of the hole's diameter: a fist is not a plate.",
  },
  { what: "Her own pumps left out.", effect: "They help, and often stop when water reaches the batteries." },
  {
    what: "Kits that work on the day.",
    effect: "Take one more than this says: a second trip for it has lost boats.",
  },
];

/** The answer to `kits-needed`. */
export type KitsNeededAnswer = ReturnType<typeof kitsNeededQuestion.answer>;
