import { dateOfNumber, sayCount } from "#base";
import {
  cusum,
  cusumRunLength,
  eventsIn,
  ewma,
  ewmaRunLength,
  laplace,
  leastReadings,
  mannKendall,
  powerLaw,
  type Recurrences,
} from "#reliability";
import { z } from "zod";
import { defineQuestion } from "../question.ts";
import { becauseOut, kindOut, LEVEL, unitOut } from "./fields.ts";
import { checkTimeUnits, isDay, TREND_TIMES, unitOfTimes } from "./time-units.ts";
import { recurrences, trendIn, type TrendInput } from "./trend-fields.ts";

const figure = (meaning: string) => z.number().exactOptional().describe(meaning);
/** Its unit is the answer's own `unit`; where days were given, it is told as a day. */
const WHEN = "[instant]";

const output = z.strictObject({
  kind: kindOut,
  because: becauseOut,
  unit: unitOut,
  countedFrom: z.string().exactOptional().describe("Day that instants are counted from, where days were given"),
  signal: z.boolean().describe("Whether something has changed, by this method's own limits"),
  firstSignal: figure(`When the first signal came ${WHEN}`),
  path: z
    .array(
      z.strictObject({
        at: z.number().describe(`When ${WHEN}`),
        up: figure("Cusum of what lies above"),
        down: figure("Cusum of what lies below"),
        value: figure("Ewma"),
        low: figure("Lower limit"),
        high: figure("Upper limit"),
      }),
    )
    .exactOptional(),
  s: figure("Mann-Kendall: rises less falls [1]"),
  variance: figure("Of s where nothing drifts [1]"),
  z: figure("Deviate [1]"),
  p: figure("Chance by luck alone, two-sided [1]"),
  slope: figure("Sen's: value per time [1/unit]"),
  slopeLow: figure("Low end [1/unit]"),
  slopeHigh: figure("High end [1/unit]"),
  shape: figure("Power law: below 1 events thin out, above 1 they crowd [1]"),
  scale: figure("Expected count is (t / scale)^shape [unit]"),
  rateNow: figure("Events per time at the end [1/unit]"),
  rateLow: figure("Low end [1/unit]"),
  rateHigh: figure("High end [1/unit]"),
  runLength: z
    .strictObject({
      inControl: z.number().describe("Readings until a false alarm, on average [1]"),
      atShift: z.number().describe("Readings until a jump is seen, on average [1]"),
    })
    .exactOptional(),
});

type Answer = Omit<z.input<typeof output>, "unit" | "countedFrom">;

export const trendQuestion = defineQuestion({
  name: "trend",
  summary: "Whether something changes: a jump or a slow drift in readings, events that crowd or thin out.",
  input: trendIn,
  output,
  example: {
    method: "cusum",
    target: 3,
    sigma: 0.8,
    series: [3, 2, 3, 3, 4, 4, 5, 4, 6].map((value, i) => ({ at: `${i + 1} months`, value })),
  },
  check: (given) => checkTimeUnits(given, TREND_TIMES),
  answer: (given, _context, asGiven) => {
    const unit = unitOfTimes(asGiven, TREND_TIMES, given.unit);
    const counted = isDay(asGiven, TREND_TIMES) ? { countedFrom: dateOfNumber(0) } : {};
    return { unit, ...counted, ...answerOf(given) };
  },
});

function answerOf(given: TrendInput): Answer {
  if (given.method === "cusum" || given.method === "ewma") return chartAnswer(given);
  if (given.method === "mann-kendall") return driftAnswer(given);
  return eventAnswer(given, recurrences(given.events!));
}

function chartAnswer(given: TrendInput): Answer {
  const series = given.series ?? [];
  const { path, firstSignal, runLength } = given.method === "cusum" ? cusumOf(given) : ewmaOf(given);
  const signal = firstSignal !== undefined;
  const told = { signal, ...(signal ? { firstSignal } : {}), path: [...path], runLength };
  if (series.length < 2 && !signal)
    return { kind: "cannot-tell", because: fewWords(series.length, "reading", 2), ...told };
  const alarm = Math.round(runLength.inControl);
  return {
    kind: "told",
    because: `${sayCount(series.length, "reading")}; a false alarm about once in ${alarm}.`,
    ...told,
  };
}

function cusumOf({ series = [], target = 0, sigma = 1, k = 0.5, h = 4, shift, sides = "both" }: TrendInput) {
  const runLength = {
    inControl: cusumRunLength(k, h, 0, sides),
    atShift: cusumRunLength(k, h, shift ?? (sides === "down" ? -2 * k : 2 * k), sides),
  };
  return { ...cusum(series, target, k * sigma, h * sigma, sides), runLength };
}

function ewmaOf({
  series = [],
  target = 0,
  sigma = 1,
  weight = 0.2,
  width = 3,
  shift = 1,
  sides = "both",
}: TrendInput) {
  const runLength = { inControl: ewmaRunLength(weight, width, 0), atShift: ewmaRunLength(weight, width, shift) };
  return { ...ewma(series, target, sigma, weight, width, sides), runLength };
}

function driftAnswer({ series = [], level = LEVEL }: TrendInput): Answer {
  const least = leastReadings(level);
  if (series.length < least) {
    const drift = series.length < 2 ? {} : mannKendall(series, level);
    return { kind: "cannot-tell", because: fewWords(series.length, "reading", least), ...drift, signal: false };
  }
  const drift = mannKendall(series, level);
  return {
    kind: "told",
    because: `${sayCount(series.length, "reading")}, whatever the law of their scatter.`,
    ...drift,
    signal: drift.p < 1 - level,
  };
}

function eventAnswer({ method, level = LEVEL }: TrendInput, events: Recurrences): Answer {
  const n = eventsIn(events);
  if (n < 2) return { kind: "cannot-tell", because: fewWords(n, "event", 2), signal: false };
  const steady = laplace(events);
  const because = `${n} events.`;
  if (method === "laplace") return { kind: "told", because, signal: steady.p < 1 - level, ...steady };
  const law = powerLaw(events, level);
  if (law === undefined)
    return { kind: "cannot-tell", because: `${because} They all fall where they settle no shape.`, signal: false };
  return { kind: "told", because, signal: (law.p ?? steady.p) < 1 - level, ...law };
}

function fewWords(count: number, what: string, least: number): string {
  return `${sayCount(count, what)}: it takes at least ${least}, so ${least - count} more, to see a change at all.`;
}
