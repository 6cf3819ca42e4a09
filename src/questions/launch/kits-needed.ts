import type { CautionId } from "#base";
import { needKits, runningShareAt, toldWater } from "#flooding";
import { z } from "zod";
import { assumptionsOut } from "../assumptions.ts";
import { omitMissing, throwAny } from "../flooding/casualty-input.ts";
import { cautionsOut } from "../cautions-out.ts";
import { wrongCall } from "../guards/levels.ts";
import { resolveKit } from "../kit/kit-pattern.ts";
import { assumedBefore } from "./kits-needed-assumptions.ts";
import { kitsNeededIn, type KitsNeededInput } from "./kits-needed-fields.ts";
import { kitsInOrder, usualKit, type CountedKit } from "./kits-needed-kits.ts";
import { ordersFor } from "./kits-needed-orders.ts";
import { answered } from "../quantity-field.ts";
import { defineQuestion, type QuestionContext } from "../question.ts";

const spreadOut = z.strictObject({
  p05: z.number(),
  p25: z.number(),
  p50: z.number(),
  p75: z.number(),
  p95: z.number(),
});

const rangeOut = z.strictObject({ p05: z.number(), p95: z.number() });

export const kitsNeededQuestion = defineQuestion({
  name: "kits-needed",
  summary:
    "Before launching: how many kits and cans to take, in which order, what a patch is worth, what to say to the skipper.",
  input: kitsNeededIn,
  output: z.strictObject({
    inflow: spreadOut.describe("Inflow as she lies when last told of [m³/s]"),
    noWorseThan: answered("flow", "Inflow at a discharge coefficient of 1, not exceeded nineteen times in twenty"),
    byKits: z.array(
      z.strictObject({
        kits: z.number(),
        holding: z.number(),
        gaining: z.number(),
        holdingPatched: z.number(),
        spreads: z
          .strictObject({ holding: rangeOut, gaining: rangeOut, holdingPatched: rangeOut })
          .describe("Between what each lies nine times in ten: what the draws leave open, and how surely kits start"),
      }),
    ),
    forHolding: z
      .number()
      .optional()
      .describe("Fewest kits with nine chances in ten of holding; absent: more than six"),
    forGaining: z.number().optional().describe("The same of gaining"),
    forHoldingPatched: z.number().optional().describe("The same of holding with the hole halved"),
    afloatOnArrival: z.number().describe("Chance that her deck edge is not under when the first kit pumps"),
    afloatSpread: rangeOut.describe(
      "Between what that lies nine times in ten, by the time to her and what the draws leave open",
    ),
    arrival: answered("time", "Until the first kit pumps"),
    arrivalSpread: rangeOut.describe("Between what that lies nine times in ten: sea, traffic, a kit slow to rig [s]"),
    cansPerKit: z.number(),
    cans: z.number().describe("For the kits that hold, or for six where none of those looked at does"),
    ask: z.array(z.string()).describe("What to ask by radio, in order"),
    orders: z.array(z.string()).describe("What to read to the skipper, in order"),
    kits: z
      .array(
        z.strictObject({
          name: z.string(),
          flow: answered("flow", "As stated for the lift, times what it was last proved to move"),
          starts: z.number().describe("Chance that it starts, primes and pumps"),
          startsSpread: z
            .strictObject({ p05: z.number(), p95: z.number() })
            .describe("Between what that chance lies nine times in ten, by its runs and ten usual ones"),
          moves: z.strictObject({ p05: z.number(), p50: z.number(), p95: z.number() }).describe("Once it runs [m³/s]"),
          follows: z.boolean().describe("True where it cannot go with the first boat"),
        }),
      )
      .describe("Kits in the order to take them; empty where none were listed"),
    plan: z
      .strictObject({
        now: z.number().describe("Kits to take with the first boat"),
        patch: z.boolean().describe("Whether the hole has to be slowed for them to hold nine times in ten"),
        follow: z.number().describe("Kits to send after: other boats, other places, a second trip"),
        enough: z.boolean().describe("False where even six kits are not enough nine times in ten"),
        chance: z.number().describe("That the first boat's kits hold; with the hole halved where it has to be slowed"),
        spread: rangeOut.describe("Between what that lies nine times in ten"),
      })
      .describe("What to do with the kits there are"),
    riseBeyondHole: z.boolean().describe("The rise told is more than the hole told can give; the hole was left out"),
    assumptions: assumptionsOut,
    cautions: cautionsOut,
  }),
  example: { length: "10 m", boat: "motor boat", holeDiameter: "50 mm", distance: "8 nmi", delivery: "250 L/min" },
  answer: (input, context) => {
    throwAny(wrongCall({ ...input, ...toldOf(input) }));
    const kits = kitsInOrder(input, context);
    const arrival = (input.toLaunch ?? 0) + input.distance / (input.speed ?? TWENTY_KNOTS) + (input.setUp ?? 600);
    const { rise } = toldWater(toldOf(input));
    const isRiseTold = rise !== undefined;
    const { riseBeyondHole = false, ...needed } = needKits(callOf(input, kits, arrival, context));
    return {
      ...needed,
      byKits: needed.byKits.map((row) => ({ ...row, spreads: { ...row.spreads } })),
      ask: [...needed.ask],
      orders: ordersFor({
        isOpenBoat: input.boat === "open boat",
        afloat: needed.afloatOnArrival,
        kits: needed.plan.now,
        isFollowed: kits.length > 0,
        arrival: needed.arrivalSpread,
        isRiseTold,
      }),
      kits: kits.map((one) => ({ ...one, moves: { ...one.moves }, startsSpread: { ...one.startsSpread } })),
      riseBeyondHole,
      arrival,
      cans: needed.cansPerKit * (needed.forHolding ?? needed.byKits.length),
      assumptions: assumedBefore(input, { isRiseTold, isFallTold: isRiseTold && rise.rate < 0, riseBeyondHole }),
      cautions: CAUTIONS,
    };
  },
});

function callOf(input: KitsNeededInput, kits: readonly CountedKit[], arrival: number, context: QuestionContext) {
  const pattern = resolveKit(input.kit, context);
  const atHand = input.kits && kits.filter(({ follows }) => !follows).length;
  const carries = [input.carries, atHand].filter((count) => count !== undefined);
  return {
    ...toldOf(input),
    arrival,
    kits,
    usual: usualKit(input, kits, context),
    share: runningShareAt,
    ...(carries.length > 0 && { carries: Math.min(...carries) }),
    onScene: input.onScene ?? 3 * 3600,
    burn: input.burn ?? (pattern ? (pattern.engine?.burn.at(-1)?.burn ?? 0) : USUAL_BURN),
    fuelInKit: pattern?.engine?.tank ?? 0,
    can: input.can ?? 0.005,
  };
}

/** What of the input is told of the boat. */
function toldOf({
  boat,
  length,
  holeDiameter,
  holeDepth,
  waterInside,
  rising,
  tellings,
  spaceLength,
}: KitsNeededInput) {
  const kind = boat === "not known" ? undefined : boat;
  return omitMissing({ kind, length, holeDiameter, holeDepth, waterInside, rising, tellings, spaceLength });
}

/** Of a small petrol pump at full throttle [m³/s]: 1.5 L/h, this program's judgement. A kit without an engine burns none. */
const USUAL_BURN = 0.0015 / 3600;
const TWENTY_KNOTS = (20 * 1852) / 3600;
const CAUTIONS: CautionId[] = [
  "carbon-monoxide",
  "petrol-vapour",
  "never-pump-fuel",
  "free-surface",
  "heavy-lift",
  "estimate",
];

/** The answer to `kits-needed`. */
export type KitsNeededAnswer = ReturnType<typeof kitsNeededQuestion.answer>;
