import { BOAT_LIMITS } from "#readiness";
import { z } from "zod";
import { kitIn } from "../kit/kit-pattern.ts";
import { quantity, type QuantityField } from "../quantity-field.ts";

/** What stands for a size nobody knows. */
const NOT_KNOWN = "not known";

/** A quantity that may be "not known", which is the same as left out. */
function orNotKnown(field: QuantityField) {
  return z
    .union([z.number(), z.string()])
    .transform((given, context) => {
      if (given === NOT_KNOWN) return undefined;
      const read = field.safeParse(given);
      if (read.success) return read.data;
      for (const issue of read.error.issues) context.issues.push({ ...issue, input: given } as never);
      return z.NEVER;
    })
    .describe(`${field.description ?? ""}; or "${NOT_KNOWN}"`)
    .optional();
}

const kitToTakeIn = z.strictObject({
  name: z.string().min(1).max(80),
  kit: kitIn.optional(),
  delivery: quantity("flow", "What it moves there; from the pattern, or as `delivery`, if left out", {
    above: 0,
    atMost: 1,
  }).optional(),
  proved: quantity("ratio", "Measured over expected flow at its last proof run", { above: 0, atMost: 1.5 }).optional(),
  runs: z
    .strictObject({
      of: z.int().min(0).max(1000).describe("How often it was started and primed for proof"),
      good: z.int().min(0).max(1000).describe("How often it started and primed"),
    })
    .refine(({ of, good }) => good <= of, { error: "good runs are at most all of them" })
    .optional()
    .describe("Its starts on record"),
  follows: z.boolean().optional().describe("True where it lies elsewhere and cannot go with the first boat"),
});

/** What `kits-needed` takes. */
export const kitsNeededIn = z.strictObject({
  length: orNotKnown(quantity("length", "Length of the boat", BOAT_LIMITS.length)),
  boat: z
    .enum(["open boat", "motor boat", "sailing yacht", "fishing boat", NOT_KNOWN])
    .optional()
    .describe("Kind of boat"),
  holeDiameter: quantity("length", "Hole across, if known", { above: 0, atMost: 1 }).optional(),
  holeDepth: quantity("length", "Hole below the waterline, if known", { above: 0, atMost: 6 }).optional(),
  waterInside: quantity("length", "Water over the floor now; left out it is unknown, not dry", {
    atLeast: 0,
    atMost: 6,
  }).optional(),
  rising: quantity("speed", 'How fast it rises: "5 cm in 2 min", "2.5 cm/min"; below 0 where it falls', {
    atLeast: -0.1,
    atMost: 0.1,
  }).optional(),
  tellings: z
    .array(
      z.strictObject({
        ago: quantity("time", "How long ago it was told", { atLeast: 0, atMost: 86_400 }),
        water: quantity("length", "Water over the floor then", { atLeast: 0, atMost: 6 }),
      }),
    )
    .max(20)
    .optional()
    .describe("Levels told with their times; they stand before waterInside, and two of them before rising"),
  spaceLength: quantity("length", "Length of the flooded space", { above: 0, atMost: 40 }).optional(),
  distance: quantity("length", "Distance to her", { atLeast: 0, atMost: 400_000 }),
  speed: quantity("speed", "Speed there; 20 kn if left out", { above: 0, atMost: 60 }).optional(),
  toLaunch: quantity("time", "From now until the boat is under way; none if left out", {
    atLeast: 0,
    atMost: 86_400,
  }).optional(),
  setUp: quantity("time", "From alongside to water over the side; 10 min if left out", {
    atLeast: 0,
    atMost: 7200,
  }).optional(),
  kit: kitIn.optional(),
  delivery: quantity("flow", "What one kit moves there; 200 L/min if neither this nor a kit is given", {
    above: 0,
    atMost: 1,
  }).optional(),
  lift: quantity("length", "From the water in her to the pump, where a pattern gives the flow; 2 m if left out", {
    atLeast: 0,
    atMost: 10,
  }).optional(),
  kits: z
    .array(kitToTakeIn)
    .max(50)
    .optional()
    .describe("Kits that can be used, in any order; the answer has the order to take them in"),
  carries: z.int().min(0).max(50).optional().describe("How many kits the first boat carries and hands over"),
  onScene: quantity("time", "Time on scene to plan fuel for; 3 h if left out", {
    above: 0,
    atMost: 172_800,
  }).optional(),
  burn: quantity("flow", "Fuel one kit burns; 1.5 L/h if left out", { above: 0, atMost: 1e-5 }).optional(),
  can: quantity("volume", "One can; 5 L if left out", { above: 0, atMost: 0.1 }).optional(),
});

export type KitsNeededInput = z.output<typeof kitsNeededIn>;
export type KitIn = z.output<typeof kitToTakeIn>;
