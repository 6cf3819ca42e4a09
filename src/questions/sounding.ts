import type { CautionId, Fault } from "#base";
import {
  likelyPrior,
  readSoundings,
  spaceOf,
  uprightSpace,
  type SoundedSpace,
  type Sounding,
  type SoundingPrior,
} from "#flooding";
import { z } from "zod";
import { assumptionsOut, type Assumption } from "./assumptions.ts";
import { compartmentIn, hullIn } from "./casualty-fields.ts";
import { omitMissing, resolveFloating, throwAny } from "./casualty-input.ts";
import { cautionsOut } from "./cautions-out.ts";
import { answered, quantity } from "./quantity-field.ts";
import { defineQuestion } from "./question.ts";

const LEVEL = { atLeast: 0, atMost: 30 };

const soundedBoatIn = z.strictObject({
  hull: hullIn,
  draught: quantity("length", "As she floats dry", { above: 0, atMost: 60 }).optional(),
  trim: quantity("length", "Draught aft less draught forward, dry", { atLeast: -20, atMost: 20 }).optional(),
  kg: quantity("length", "Centre of gravity above the keel, dry", { above: 0, atMost: 60 }).optional(),
  compartments: z.array(compartmentIn).min(1).max(12),
  lostWhen: z.enum(["deck-edge", "foundered"]).optional(),
});

const soundedSpaceIn = z.strictObject({
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
  holeDiameter: quantity("length", "Likeliest diameter of the hole; 50 mm if left out", {
    above: 0,
    atMost: 2,
  }).optional(),
  holeArea: quantity("area", "Likeliest area of the hole, in place of diameter", { above: 0, atMost: 5 }).optional(),
  holeLogSpread: quantity("ratio", "Log spread of the hole's area; 1.45", { above: 0, atMost: 4 }).optional(),
  areaLogSpread: quantity("ratio", "Log spread of the floodable area; 0.15", { above: 0, atMost: 1 }).optional(),
  deliveryMedian: quantity("ratio", "Likeliest delivery over stated; 0.95", { above: 0, atMost: 2 }).optional(),
  deliveryLogSpread: quantity("ratio", "Log spread of delivery; 0.18", { above: 0, atMost: 1 }).optional(),
  startLevel: quantity("length", "Level at the first reading; the reading itself", LEVEL).optional(),
  startSpread: quantity("length", "Spread of that level; 0.1 m", { above: 0, atMost: 5 }).optional(),
  noise: quantity("length", "Error of one sounding, standard deviation; 15 mm", { above: 0, atMost: 1 }).optional(),
});

const soundingIn = z.strictObject({
  vessel: soundedBoatIn.optional().describe("The boat, or compartment"),
  compartment: z
    .union([soundedSpaceIn, z.string()])
    .optional()
    .describe("{area, outsideLevel, …}, or the name of the boat's compartment being sounded; its first if left out"),
  readings: z
    .array(
      z.strictObject({
        at: quantity("time", "When, on one clock"),
        level: quantity("length", "Above the floor of the space", LEVEL),
      }),
    )
    .min(1)
    .max(100)
    .describe("Soundings, in order of time"),
  pumping: z
    .array(
      z.strictObject({
        from: quantity("time", "From, on the same clock"),
        to: quantity("time", "Until; still running if left out").optional(),
        flow: quantity("flow", "Stated delivery", { atLeast: 0, atMost: 10 }),
      }),
    )
    .max(100)
    .describe("What was pumped"),
  prior: priorIn.optional().describe("What is thought before any sounding"),
  options: z
    .strictObject({
      now: quantity("time", "When the forecast begins; the last reading if left out").optional(),
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

const spreadFields = {
  p05: z.number(),
  p25: z.number(),
  p50: z.number(),
  p75: z.number(),
  p95: z.number(),
};
const spreadOut = z.strictObject(spreadFields);
const chancesOut = z.strictObject({ gaining: z.number(), holding: z.number(), losing: z.number() });
const arrivalOut = z.strictObject({
  chance: z.number().describe("That it comes to it within the time looked at"),
  within: answered("time", "Time looked at"),
  time: spreadOut.optional().describe("From now, where it comes to it [s]"),
});

type SoundingInput = z.output<typeof soundingIn>;

export const soundingQuestion = defineQuestion({
  name: "sounding",
  summary: "What timed soundings say: hole, delivery, are we gaining, when dry, what would change it most.",
  input: soundingIn,
  output: z.strictObject({
    holding: z.number().describe("Chance that the pumps at least hold over the horizon"),
    chances: chancesOut,
    verdict: z.strictObject({ kind: z.enum(["gaining", "holding", "losing"]), chance: z.number() }),
    quantities: z
      .record(z.string(), spreadOut)
      .describe("holeArea [m²], holeHeight [m], floodableArea [m²], pumpDelivery [m³/s], inflow [m³/s], levels [m]"),
    forecast: z.strictObject({
      fan: z.array(z.strictObject({ at: answered("time", "On the readings' clock"), ...spreadFields })),
      chances: chancesOut,
      dry: arrivalOut,
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
    advice: z
      .array(
        z.strictObject({
          action: z.enum(["second-pump", "patch-half", "more-throttle", "shorter-lift"]),
          chances: chancesOut,
          holding: z.number(),
          change: z.number().describe("In the chance of holding"),
          level: answered("length", "At the horizon, median"),
          says: z.string(),
        }),
      )
      .describe("What would change it most, best first"),
    warnings: z.array(z.strictObject({ kind: z.string(), says: z.string() })),
    nextSounding: answered("time", "Until the next sounding is due"),
    assumptions: assumptionsOut,
    cautions: cautionsOut,
  }),
  example: {
    compartment: { area: "12 m²", outsideLevel: "1.2 m", lossLevel: "1.1 m" },
    readings: [
      { at: 0, level: "0.50 m" },
      { at: "5 min", level: "0.58 m" },
      { at: "10 min", level: "0.57 m" },
      { at: "15 min", level: "0.55 m" },
      { at: "20 min", level: "0.54 m" },
    ],
    pumping: [{ from: "5 min", flow: "250 L/min" }],
  },
  answer: (input) => {
    const assumptions: Assumption[] = [ONE_HOLE];
    const faults: Fault[] = [];
    checkTimes(input, faults);
    const space = resolveSpace(input, faults, assumptions);
    throwAny(faults);
    const { now, horizon, ...gains } = input.options ?? {};
    const result = readSoundings({
      space,
      readings: input.readings,
      pumping: input.pumping.map((one) => omitMissing(one)),
      prior: resolvePrior(input, assumptions),
      options: omitMissing({ horizon }),
      gains: omitMissing(gains),
      ...omitMissing({ now }),
    });
    return answerOf(result, assumptions);
  },
});

const ONE_HOLE: Assumption = {
  what: "One space, one hole, pumps as stated, all steady between the times given; level water.",
  effect: "A second inflow, a blocked strainer or a wrong sounding shows as a misfit.",
};

function answerOf(result: Sounding, assumptions: Assumption[]) {
  const { rounds: _rounds, advice, warnings, forecast, ...rest } = result;
  const cautions: CautionId[] = ["free-surface", "no-one-below-alone", "estimate"];
  return {
    ...rest,
    forecast: { ...forecast, fan: [...forecast.fan] },
    advice: [...advice],
    warnings: [...warnings],
    assumptions,
    cautions,
  };
}

function fault(code: string, field: string, got: string, allowed: string, remedy: string): Fault {
  return { code, field, got, allowed, remedy };
}

function checkTimes(input: SoundingInput, faults: Fault[]): void {
  input.readings.forEach((reading, i) => {
    if (i === 0 || reading.at > input.readings[i - 1]!.at) return;
    faults.push(
      fault("QU-132", `readings[${i}].at`, `${reading.at} s`, "later than the reading before", "Sort by time."),
    );
  });
  input.pumping.forEach((one, i) => {
    if (one.to === undefined || one.to > one.from) return;
    faults.push(fault("QU-133", `pumping[${i}].to`, `${one.to} s`, "later than from", "Check both times."));
  });
}

function resolveSpace(input: SoundingInput, faults: Fault[], assumptions: Assumption[]): SoundedSpace {
  const { vessel, compartment } = input;
  if (vessel !== undefined && typeof compartment !== "object")
    return boatSpace(vessel, compartment, faults, assumptions);
  if (typeof compartment === "object" && vessel === undefined) return givenSpace(compartment, input, assumptions);
  const got = vessel === undefined ? "neither" : "both";
  faults.push(fault("QU-134", "compartment", got, "a vessel, or compartment {area}", "Give one of the two."));
  return uprightSpace({ area: 1, outside: 1, outsideDoubt: 1 });
}

function boatSpace(
  given: z.output<typeof soundedBoatIn>,
  name: string | undefined,
  faults: Fault[],
  assumptions: Assumption[],
): SoundedSpace {
  const vessel = resolveFloating(given, faults, assumptions);
  const names = vessel.compartments.map((one) => one.name);
  const wanted = name ?? names[0]!;
  if (!names.includes(wanted)) {
    faults.push(
      fault("QU-135", "compartment", JSON.stringify(wanted), names.join(", "), "Use the name of a compartment."),
    );
  }
  throwAny(faults);
  return spaceOf(vessel, wanted);
}

function givenSpace(
  given: z.output<typeof soundedSpaceIn>,
  input: SoundingInput,
  assumptions: Assumption[],
): SoundedSpace {
  const highest = Math.max(...input.readings.map((reading) => reading.level));
  if (given.outsideLevel === undefined) {
    assumptions.push({
      what: `An outside level of ${(highest + 0.5).toFixed(2)} m above the floor, give or take 0.3 m.`,
      effect: "Inflow goes with the square root of the head: say how deep she floats over the floor of the space.",
    });
  }
  return uprightSpace({
    area: given.area * (given.permeability ?? 1),
    outside: given.outsideLevel ?? highest + 0.5,
    outsideDoubt: given.outsideLevel === undefined ? 0.3 : 0.04,
    ...omitMissing({ sinkage: given.sinkage, lossLevel: given.lossLevel }),
  });
}

function resolvePrior(input: SoundingInput, assumptions: Assumption[]): SoundingPrior {
  const given = input.prior ?? {};
  const usual = likelyPrior(input.readings[0]!.level);
  if (given.noise === undefined) {
    assumptions.push({
      what: "Soundings good to 15 mm.",
      effect: "Rougher soundings give wider answers: say so if she rolls.",
    });
  }
  const area =
    given.holeArea ?? (given.holeDiameter === undefined ? undefined : (Math.PI / 4) * given.holeDiameter ** 2);
  return {
    holeArea: { median: area ?? usual.holeArea.median, logSpread: given.holeLogSpread ?? usual.holeArea.logSpread },
    areaLogSpread: given.areaLogSpread ?? usual.areaLogSpread,
    delivery: {
      median: given.deliveryMedian ?? usual.delivery.median,
      logSpread: given.deliveryLogSpread ?? usual.delivery.logSpread,
    },
    startLevel: {
      median: given.startLevel ?? usual.startLevel.median,
      spread: given.startSpread ?? usual.startLevel.spread,
    },
    noise: given.noise ?? usual.noise,
  };
}
