import type { Observation, Recurrences } from "#reliability";
import { z } from "zod";
import { quantity, timeOrDay } from "../quantity-field.ts";
import { levelIn, unitIn } from "./fields.ts";
import { refuse } from "./refuse.ts";

const LIMITS = { atLeast: -1e12, atMost: 1e12, isOwnUnit: true } as const;
const OWN_UNIT = "bare numbers all in one unit of your own, or text";

const at = (meaning: string) => quantity("time", `${meaning}; ${OWN_UNIT}`, LIMITS);

const positive = (meaning: string) => z.number().gt(0).max(1e9).describe(meaning);

export const METHODS = ["cusum", "ewma", "mann-kendall", "power-law", "laplace"] as const;

export const trendIn = z
  .strictObject({
    method: z.enum(METHODS).describe("cusum or ewma for a jump, mann-kendall for a slow drift, the others for events"),
    series: z
      .array(
        z.strictObject({
          at: timeOrDay(`When; ${OWN_UNIT}`, LIMITS),
          value: z.number().min(-1e12).max(1e12).describe("What was read"),
        }),
      )
      .max(2000)
      .optional()
      .describe("Readings, for cusum, ewma and mann-kendall"),
    events: z
      .union([
        z.strictObject({ times: z.array(at("When it happened")).max(5000), end: at("Watched to") }),
        z.strictObject({
          ends: z.array(at("End of a span")).min(1).max(2000),
          counts: z.array(z.int().min(0).max(1_000_000)).max(2000),
        }),
      ])
      .optional()
      .describe(
        "Events of one thing watched from 0, for power-law and laplace: times, or counts in spans one after the other",
      ),
    target: z.number().min(-1e12).max(1e12).optional().describe("What the readings should be, for cusum and ewma"),
    sigma: positive(
      "Scatter of one reading about its mean; an ewma needs it; of a cusum 1 if left out: k and h are then in the readings' own unit",
    ).optional(),
    k: z.number().min(0).max(100).optional().describe("Allowance of a cusum [sigma]; 0.5 if left out"),
    h: positive("Limit of a cusum [sigma]; 4 if left out").optional(),
    weight: z.number().gt(0).max(1).optional().describe("Weight of the newest in an ewma [1]; 0.2 if left out"),
    width: positive("Limits of an ewma [sigma of the mean]; 3 if left out").optional(),
    shift: z
      .number()
      .min(-50)
      .max(50)
      .optional()
      .describe("Jump for which a run length is told [sigma]; 2k, or 1 for ewma"),
    sides: z.enum(["up", "down", "both"]).optional().describe("Which way matters; both if left out"),
    level: levelIn,
    unit: unitIn("What bare times count, to stand beside every figure: days, months, runs; not for times in text"),
  })
  .superRefine((given, context) => {
    const isOfEvents = given.method === "power-law" || given.method === "laplace";
    const wanted = isOfEvents ? "events" : "series";
    if (given[wanted] === undefined) refuse(context, [wanted], { ...NEEDED, got: "nothing" });
    const isChart = given.method === "cusum" || given.method === "ewma";
    if (isChart && given.target === undefined) refuse(context, ["target"], { ...TARGET, got: "nothing" });
    if (given.method === "ewma" && given.sigma === undefined) refuse(context, ["sigma"], { ...SIGMA, got: "nothing" });
    checkSeries(given.series ?? [], context);
    if (given.events) checkEvents(given.events, context);
  });

export type TrendInput = z.output<typeof trendIn>;

function checkSeries(series: readonly Observation[], context: z.RefinementCtx): void {
  for (const [i, reading] of series.entries())
    if (i > 0 && reading.at <= series[i - 1]!.at) {
      refuse(context, ["series", i, "at"], { ...IN_ORDER, got: reading.at });
      return;
    }
}

function checkEvents(events: NonNullable<TrendInput["events"]>, context: z.RefinementCtx): void {
  if ("times" in events) {
    const wrong = events.times.findIndex((time) => time <= 0 || time > events.end);
    if (wrong >= 0) refuse(context, ["events", "times", wrong], { ...WATCHED, got: events.times[wrong] });
    if (events.end <= 0) refuse(context, ["events", "end"], { ...WATCHED, got: events.end });
    return;
  }
  const { ends, counts } = events;
  const wrong = ends.findIndex((end, i) => end <= (ends[i - 1] ?? 0));
  if (wrong >= 0) refuse(context, ["events", "ends", wrong], { ...IN_ORDER, got: ends[wrong] });
  if (ends.length !== counts.length) refuse(context, ["events", "counts"], { ...AS_MANY, got: counts.length });
}

/** Events as reliability takes them. */
export function recurrences(events: NonNullable<TrendInput["events"]>): Recurrences {
  return "times" in events ? { kind: "times", ...events } : { kind: "counts", ...events };
}

const NEEDED = {
  code: "QU-230",
  allowed: "series for cusum, ewma and mann-kendall; events for power-law and laplace",
  remedy: "Give what the method looks at.",
};
const TARGET = {
  code: "QU-230",
  allowed: "what the readings should be",
  remedy: "Give the target: what is normal for this kit.",
};
const SIGMA = {
  code: "QU-230",
  allowed: "the scatter of one reading",
  remedy: "Give sigma: how far one reading lies from the mean by chance alone.",
};
const IN_ORDER = {
  code: "QU-231",
  allowed: "later than the one before, and than 0 where it is the end of a span",
  remedy: "Give times in order, each once.",
};
const WATCHED = {
  code: "QU-232",
  allowed: "more than 0 and no later than the end of the watch",
  remedy: "Count times from the beginning of the watch, and give its end.",
};
const AS_MANY = {
  code: "QU-233",
  allowed: "one count for every span",
  remedy: "Give as many counts as ends.",
};
