import { BOAT_LIMITS, LEVEL_LIMITS } from "#readiness";
import { z } from "zod";
import { assumptionsOut } from "../assumptions.ts";
import { cautionsOut } from "../cautions-out.ts";
import { answered, instant, quantity } from "../quantity-field.ts";
import { adviceOut, arrivalOut, chancesOut, dryOut, spreadFields, spreadOut, trendOut } from "./sounding-fields.ts";

const readingsIn = z
  .array(
    z.strictObject({
      at: instant("When, on one clock"),
      level: quantity("length", "Above the lowest point of the space", LEVEL_LIMITS),
    }),
  )
  .max(100);

const pumpIdIn = z.string().min(1).max(60);

const pumpingIn = z
  .array(
    z.strictObject({
      from: instant("From, on the same clock"),
      to: instant("Until; still running if left out").optional(),
      flow: quantity("flow", "Stated delivery", { atLeast: 0, atMost: 1 }),
      pump: pumpIdIn.optional().describe("Which pump: runs of one pump share what it really moves"),
      name: z.string().min(1).max(80).optional().describe("What people call that pump: said in place of its id"),
      lift: quantity("length", "Water to discharge, where it is told", { atLeast: 0, atMost: 60 }).optional(),
      throttle: quantity("ratio", "Share of full speed, where it is told", { atLeast: 0, atMost: 1 }).optional(),
    }),
  )
  .max(200);

const pumpSeenIn = z
  .array(
    z.strictObject({
      at: quantity("time", "When, on the same clock"),
      pump: pumpIdIn.optional().describe("Which pump; the only one, or all that ran then, if left out"),
      sign: z.enum(["water", "no-water", "sucks-air", "weak", "wont-start"]).describe("What was seen at its discharge"),
    }),
  )
  .max(100);

export const onSceneIn = z.strictObject({
  boat: z.strictObject({
    kind: z.enum(["open boat", "motor boat", "sailing yacht", "fishing boat"]).describe("Kind of boat"),
    length: quantity("length", "Length of the boat", BOAT_LIMITS.length),
    beam: quantity("length", "Greatest breadth, if known", BOAT_LIMITS.beam).optional(),
    depth: quantity("length", "Keel to deck edge, if known", BOAT_LIMITS.depth).optional(),
    draught: quantity(
      "length",
      "Draught, if known; a sailing yacht's to the foot of her keel or of the hull alone",
      BOAT_LIMITS.draught,
    ).optional(),
  }),
  spaces: z
    .array(
      z.strictObject({
        name: z.string().min(1).max(60),
        sort: z.enum(["engine-room", "cabin", "hold", "open"]).describe("What is in it"),
        part: z.enum(["aft", "middle", "forward", "whole"]).describe("Third of the boat it takes up"),
        level: quantity("length", "Water in it, where it is not the space sounded", LEVEL_LIMITS).optional(),
        readings: readingsIn.optional().describe("Soundings of it, where it is a further space and was sounded too"),
        pumping: pumpingIn.optional().describe("Pumping out of it, where it is a further space"),
        pumpSeen: pumpSeenIn.optional().describe("What was seen of those pumps"),
      }),
    )
    .min(1)
    .max(6)
    .describe("Spaces with water in them; the first is the one sounded"),
  readings: readingsIn.describe("Soundings of the first space, in order of time"),
  pumping: pumpingIn.describe("Pumping out of the first space"),
  pumpSeen: pumpSeenIn.optional().describe("What was seen of the pumps in the first space, in order of time"),
  patches: z
    .array(
      z.strictObject({
        at: instant("When, on the same clock"),
        open: quantity("ratio", "Share of the hole still open", { atLeast: 0, atMost: 10 }),
      }),
    )
    .max(50)
    .optional(),
  hole: z
    .strictObject({ diameter: quantity("length", "Hole across, if known", { above: 0, atMost: 1 }).optional() })
    .optional(),
  now: instant("Now, on the same clock"),
  secondPump: quantity("flow", "What one more kit would move", { above: 0, atMost: 1 }).optional(),
  canOpenUp: z.boolean().optional().describe("False where every running engine is at full speed already"),
  canLower: z.boolean().optional().describe("False where every running pump stands as low as it can"),
  list: quantity("angle", "List seen, to starboard", { atLeast: -1.4, atMost: 1.4 }).optional(),
  rollPeriod: quantity("time", "A full roll out and back, timed", { above: 0, atMost: 60 }).optional(),
  righting: z.enum(["comes-back", "slowly", "stays"]).optional().describe("How she comes back from a roll"),
  trimSeen: quantity("angle", "Trim seen, bow down positive", { atLeast: -0.8, atMost: 0.8 }).optional(),
  deckEdge: z
    .enum(["clear", "awash", "under"])
    .optional()
    .describe("Lowest deck edge as seen: clear of the water, awash in the waves, under"),
  overSill: z.boolean().optional().describe("Water comes in over a sill, a coaming or a hatch"),
  leaving: z.boolean().optional().describe("Her own skipper says leave"),
  fuelSmelt: z.boolean().optional().describe("Fuel smelt or seen in the water"),
});

export const readingOut = z.strictObject({
  soundings: z.number().describe("How many it is from"),
  age: answered("time", "Since the last of them"),
  stale: z.boolean().describe("The last is older than half an hour: what is said of now is carried on from it"),
  expected: z
    .boolean()
    .describe(
      "A pump or the hole was changed since the last sounding: the verdict is what to expect, nobody has seen it",
    ),
  says: z.string().describe("The one line: how she is, or that it is not known any more"),
  lastKnown: z.string().optional().describe("Where it is not known any more: how she was when last sounded"),
  verdict: z
    .strictObject({ kind: z.enum(["gaining", "holding", "losing", "unknown"]), chance: z.number() })
    .describe("The likeliest and its chance; unknown with one sounding, the chance then what is thought of any hole"),
  chances: chancesOut,
  holding: z.number().describe("Chance that the pumps at least hold over the next hour"),
  inflow: spreadOut.describe("[m³/s]"),
  levelNow: spreadOut.describe("[m]"),
  fan: z
    .array(z.strictObject({ at: answered("time", "On the readings' clock"), ...spreadFields }))
    .describe("Level to come [m]"),
  dry: dryOut
    .optional()
    .describe("Time until she is down to the strainer, only where the level has been seen to fall or she is dry"),
  loss: arrivalOut.optional().describe("Time to loss, only where the word says something of her and the soundings fit"),
  misfit: z.boolean().describe("The readings do not fit one steady hole and the pumping stated"),
  trend: trendOut
    .optional()
    .describe(
      "Where the last soundings point, only where they do not fit, and the last is not above her deck edge: no estimate",
    ),
  advice: adviceOut("In an hour, median"),
  nextSounding: answered("time", "When the next sounding is due, on the readings' clock"),
});

const WORDS = [
  "gaining",
  "holding",
  "losing",
  "should-be-gaining",
  "should-be-holding",
  "should-be-losing",
  "too-soon",
  "one-sounding",
  "does-not-fit",
  "not-known",
  "above-deck",
  "fuel",
] as const;

export const wordOut = z.strictObject({
  kind: z
    .enum(WORDS)
    .describe("Gaining, holding, losing: shown by soundings since the last change; should be: expected, not yet shown"),
  because: z.string().describe("Why, in one plain sentence"),
  certainty: z.number().describe("Chance of what the word says; 0 where it says nothing of her"),
  since: answered("time", "Last change of pumping or hole, on the readings' clock").optional(),
  soundings: z.number().describe("How many since that change; of all where there was none"),
});

const pumpOut = z.strictObject({
  pump: z.string().optional().describe("Its id, where it has one"),
  seen: z
    .strictObject({ p05: z.number(), p50: z.number(), p95: z.number() })
    .describe("Share of the stated delivery that it moves"),
  doubt: z.enum(["none", "weak", "dead"]).describe("Weak: surely less than stated; dead: little or nothing"),
  because: z.string().optional(),
});

export const lyingOut = z.union([
  z.strictObject({
    kind: z.literal("afloat"),
    aft: answered("length", "Outside water above the keel at the after end"),
    forward: answered("length", "The same at the forward end"),
    heel: answered("angle", "To starboard"),
    freeboard: answered("length", "Least height of the deck edge above the water"),
    gm: answered("length", "Metacentric height, floodwater free to move"),
    inside: z.array(z.strictObject({ aft: z.number(), forward: z.number() })).describe("By space [m above the keel]"),
  }),
  z.strictObject({ kind: z.enum(["founders", "capsizes"]), because: z.string() }),
]);

export const warningOut = z.strictObject({
  kind: z.string(),
  signal: z.enum(["DANGER", "WARNING", "CAUTION", "NOTICE"]),
  hazard: z.string(),
  says: z.string(),
});

export const onSceneOut = z.strictObject({
  word: wordOut.describe("The one word at the top, decided here; every door words it"),
  pumps: z.array(pumpOut).describe("What each pump that ran or was tried is thought to move"),
  reading: readingOut.optional().describe("What the soundings say; absent before the first"),
  lying: lyingOut.describe("How she lies with the water now in her"),
  dryFreeboard: answered("length", "Freeboard with no water in her"),
  hull: z.strictObject({
    length: z.number(),
    beam: z.number(),
    depth: z.number(),
    draught: z.number(),
    spaces: z.array(z.strictObject({ name: z.string(), from: z.number(), to: z.number() })),
  }),
  warnings: z.array(warningOut).describe("Gravest first"),
  leave: z.strictObject({
    kind: z.enum(["now", "be-ready", "no-sign"]).describe("Signs that people should leave her"),
    because: z.array(z.string()),
    seen: z.boolean().describe("What people saw or said decides it, not a figure"),
  }),
  assumptions: assumptionsOut,
  cautions: cautionsOut,
});

/** What `on-scene` takes, in bare SI numbers. */
export type OnSceneInput = z.output<typeof onSceneIn>;
/** The word at the top. */
export type Word = z.output<typeof wordOut>;
/** What a pump is thought to move. */
export type PumpOut = z.output<typeof pumpOut>;
export type OnSceneWarning = z.input<typeof warningOut>;
export type LyingOut = z.input<typeof lyingOut>;

/** The answer to `on-scene`. */
export type OnSceneAnswer = z.output<typeof onSceneOut>;
