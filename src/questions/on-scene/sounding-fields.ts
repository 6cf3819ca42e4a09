import { z } from "zod";
import { assumptionsOut } from "../assumptions.ts";
import { compartmentIn, hullIn } from "../flooding/casualty-fields.ts";
import { cautionsOut } from "../cautions-out.ts";
import { answered, instant, quantity } from "../quantity-field.ts";

const LEVEL = { atLeast: 0, atMost: 30 };

export const soundedBoatIn = z.strictObject({
  hull: hullIn,
  draught: quantity("length", "As she floats dry", { above: 0, atMost: 60 }).optional(),
  trim: quantity("length", "Draught aft less draught forward, dry", { atLeast: -20, atMost: 20 }).optional(),
  kg: quantity("length", "Centre of gravity above the keel, dry", { above: 0, atMost: 60 }).optional(),
  compartments: z.array(compartmentIn).min(1).max(12),
  lostWhen: z.enum(["deck-edge", "foundered"]).optional(),
});

export const soundedSpaceIn = z.strictObject({
  area: quantity("area", "Plan area water can fill", { above: 0, atMost: 1e4 }),
  permeability: quantity("ratio", "Share of the space water can fill; 1 if left out", {
    above: 0,
    atMost: 1,
  }).optional(),
  outsideLevel: quantity("length", "Outside level above the floor", { above: 0, atMost: 30 }).optional(),
  sinkage: z
    .number()
    .min(0)
    .max(10)
    .optional()
    .describe("Rise of the outside level per volume let in [m⁻²]; 0 if left out"),
  lossLevel: quantity("length", "Level inside at which she is lost", { above: 0, atMost: 30 }).optional(),
});

const priorIn = z.strictObject({
  holeDiameter: quantity("length", "Likeliest diameter of the hole; 20 mm if left out", {
    above: 0,
    atMost: 2,
  }).optional(),
  holeArea: quantity("area", "Likeliest area of the hole, in place of diameter", { above: 0, atMost: 5 }).optional(),
  holeLogSpread: quantity("ratio", "Log spread of the hole's area; 2.6", { above: 0, atMost: 4 }).optional(),
  areaLogSpread: quantity("ratio", "Log spread of the floodable area; 0.15", { above: 0, atMost: 1 }).optional(),
  deliveryMedian: quantity("ratio", "Likeliest delivery over stated; 0.85", { above: 0, atMost: 2 }).optional(),
  deliveryLogSpread: quantity("ratio", "Log spread of delivery above that; 0.08", { above: 0, atMost: 1 }).optional(),
  deliveryLowSpread: quantity("ratio", "Log spread of delivery below it; as above it where that is given, else 0.75", {
    above: 0,
    atMost: 2,
  }).optional(),
  startLevel: quantity("length", "Level at the first reading; the reading itself", LEVEL).optional(),
  startSpread: quantity("length", "Spread of that level; 0.1 m", { above: 0, atMost: 5 }).optional(),
  noise: quantity("length", "Error of one sounding, standard deviation; 15 mm", { above: 0, atMost: 1 }).optional(),
});

export const soundingIn = z.strictObject({
  vessel: soundedBoatIn.optional().describe("The boat, or compartment"),
  compartment: z
    .union([soundedSpaceIn, z.string()])
    .optional()
    .describe("{area, outsideLevel, …}, or the name of the boat's compartment being sounded; its first if left out"),
  readings: z
    .array(
      z.strictObject({
        at: instant("When, on one clock"),
        level: quantity("length", "Above the floor of the space", LEVEL),
      }),
    )
    .min(1)
    .max(100)
    .describe("Soundings, in order of time"),
  pumping: z
    .array(
      z.strictObject({
        from: instant("From, on the same clock"),
        to: instant("Until; still running if left out").optional(),
        flow: quantity("flow", "Stated delivery", { atLeast: 0, atMost: 10 }),
      }),
    )
    .max(100)
    .describe("What was pumped"),
  prior: priorIn.optional().describe("What is thought before any sounding"),
  options: z
    .strictObject({
      now: instant("Now, on the readings' clock: when the forecast begins; the last reading if left out").optional(),
      horizon: quantity("time", "How far the forecast goes; 1 h", { above: 0, atMost: 86_400 }).optional(),
      secondPump: quantity("flow", "Delivery of one more kit; what is pumped now", { above: 0, atMost: 10 }).optional(),
      moreThrottle: quantity("ratio", "Factor of full throttle on delivery; 1.2", { atLeast: 1, atMost: 5 }).optional(),
      shorterLift: quantity("ratio", "Factor of a metre less lift on delivery; 1.1", {
        atLeast: 1,
        atMost: 5,
      }).optional(),
    })
    .optional(),
});

export const spreadFields = {
  p05: z.number(),
  p25: z.number(),
  p50: z.number(),
  p75: z.number(),
  p95: z.number(),
};
export const spreadOut = z.strictObject(spreadFields);
export const chancesOut = z.strictObject({ gaining: z.number(), holding: z.number(), losing: z.number() });
export const arrivalOut = z.strictObject({
  chance: z.number().describe("That it comes to it within the time looked at"),
  within: answered("time", "Time looked at"),
  time: spreadOut.optional().describe("From now, where it comes to it [s]"),
});

/** Dry is down to the strainer, never the last of the water. */
export const dryOut = arrivalOut.extend({
  left: answered(
    "length",
    "Water left when she counts as dry: down to the strainer, the middle of what is thought",
  ).optional(),
});

/** Actions with what each would change; `level` says when the level they leave is. */
export function adviceOut(level: string) {
  const action = z.enum(["second-pump", "patch-half", "more-throttle", "shorter-lift"]);
  return z
    .array(
      z.strictObject({
        action,
        chances: chancesOut,
        holding: z.number(),
        change: z.number().describe("In the chance of holding"),
        level: answered("length", level),
        says: z.string(),
      }),
    )
    .describe("What would change it most, best first");
}

const intervalOut = z.strictObject({ p05: z.number(), p50: z.number(), p95: z.number() });
export const trendOut = z.strictObject({
  kind: z.enum(["rising", "falling", "unclear"]),
  soundings: z.number().describe("How many it is from"),
  from: answered("time", "First of them, on the readings' clock"),
  to: answered("time", "Last of them"),
  rise: intervalOut.describe("A fall is negative [m/s]"),
  ahead: answered("time", "Carried on so far past the last sounding"),
  level: intervalOut.describe("Then, if it goes on so [m]"),
});

export const soundingOut = z.strictObject({
  holding: z.number().describe("Chance that the pumps at least hold over the horizon"),
  chances: chancesOut,
  verdict: z.strictObject({ kind: z.enum(["gaining", "holding", "losing"]), chance: z.number() }),
  quantities: z
    .record(z.string(), spreadOut)
    .describe(
      "holeArea [m²], holeHeight [m], floodableArea [m²], pumpDelivery and inflow [m³/s], startLevel, levelNow and levelAtHorizon [m]",
    ),
  forecast: z.strictObject({
    fan: z
      .array(z.strictObject({ at: answered("time", "On the readings' clock"), ...spreadFields }))
      .describe("Level to come [m]"),
    chances: chancesOut,
    dry: dryOut.describe("Down to the strainer"),
    loss: arrivalOut,
  }),
  effectiveSamples: z.number(),
  misfit: z.strictObject({
    distance: z.number().describe("χ² of the readings, one degree of freedom each"),
    chance: z.number().describe("Of readings so far off when model and error are right"),
    flagged: z.boolean(),
    worst: z.strictObject({ reading: z.number(), deviations: z.number() }),
    change: z
      .strictObject({ kind: z.enum(["inflow", "delivery"]), after: z.number(), factor: z.number(), gain: z.number() })
      .optional()
      .describe("Change on the way, after reading number `after`, that explains much more than a steady casualty"),
  }),
  advice: adviceOut("At the horizon, median"),
  warnings: z.array(z.strictObject({ kind: z.string(), says: z.string() })),
  trend: trendOut
    .optional()
    .describe("Where the last soundings point, only where they do not fit one steady casualty: a trend, no estimate"),
  age: answered("time", "Of the last sounding, now"),
  stale: z.boolean().describe("The last sounding is older than 30 min"),
  nextSounding: answered("time", "Until the next sounding is due"),
  assumptions: assumptionsOut,
  cautions: cautionsOut,
});
