import {
  dayNumber,
  isDate,
  isInputError,
  parseQuantity,
  printGiven,
  readClock,
  type Dimension,
  type Fault,
} from "#base";
import { z } from "zod";

/** SI limits of a quantity. */
export interface Limits {
  readonly atLeast?: number;
  readonly atMost?: number;
  /** Exclusive lower limit. */
  readonly above?: number;
  /** Where bare numbers are all in one unit of whoever asks, and not in SI. */
  readonly isOwnUnit?: true;
}

const SI_UNIT: Readonly<Record<Dimension, string>> = {
  length: "m",
  area: "m²",
  volume: "m³",
  flow: "m³/s",
  pressure: "Pa",
  mass: "kg",
  temperature: "K",
  time: "s",
  speed: "m/s",
  angle: "rad",
  power: "W",
  voltage: "V",
  salinity: "g/kg",
  "specific-consumption": "kg/J",
  ratio: "1",
  density: "kg/m³",
  rate: "1/s",
  resistance: "Ω",
};

/** A quantity as text with a unit or as a bare SI number; what comes out is SI. */
export type QuantityField = z.ZodPipe<
  z.ZodUnion<readonly [z.ZodNumber, z.ZodString]>,
  z.ZodTransform<number, number | string>
>;

/**
 * Schema of one quantity in a question.
 *
 * @param dimension - what it measures
 * @param meaning - what it is, in the person's words; unit and limits are added to the description
 * @param limits - SI limits
 */
export function quantity(dimension: Dimension, meaning: string, limits: Limits = {}): QuantityField {
  return z
    .union([z.number(), z.string()])
    .transform((given, context) => {
      const read = readQuantity(given, dimension, limits);
      if (typeof read === "number") return read;
      context.issues.push({ code: "custom", message: read.remedy, input: given, params: { fault: read } });
      return z.NEVER;
    })
    .describe(describeQuantity(dimension, meaning, limits));
}

/**
 * Schema of an instant on the clock of whoever read it: a time of day ("14:05": seconds since the midnight before the
 * first), or a time counted from a start of their own. What comes out is in seconds.
 *
 * @param meaning - what it is, in the person's words
 */
export function instant(meaning: string): QuantityField {
  return z
    .union([z.number(), z.string()])
    .transform((given, context) => {
      const clock = typeof given === "string" ? readClock(given) : undefined;
      if (clock !== undefined) return clock;
      const read = readQuantity(given, "time", {});
      if (typeof read === "number") return read;
      const fault = read.code === "BA-106" ? { ...read, remedy: NO_SUCH_TIME } : read;
      context.issues.push({ code: "custom", message: fault.remedy, input: given, params: { fault } });
      return z.NEVER;
    })
    .describe(`${describeQuantity("time", meaning, {})}; or a time of day, 14:05`);
}

/**
 * Schema of a time counted from a start of somebody's own, or of a day of the calendar. What comes out is in seconds; of a
 * day, since 1970-01-01.
 *
 * @param meaning - what it is, in the person's words
 * @param limits - SI limits
 */
export function timeOrDay(meaning: string, limits: Limits): QuantityField {
  return z
    .union([z.number(), z.string()])
    .transform((given, context) => {
      if (typeof given === "string" && isDate(given)) return DAY * dayNumber(given);
      const read = readQuantity(given, "time", limits);
      if (typeof read === "number") return read;
      const fault = read.remedy === NO_LENGTH ? { ...read, remedy: NO_SUCH_DAY } : read;
      context.issues.push({ code: "custom", message: fault.remedy, input: given, params: { fault } });
      return z.NEVER;
    })
    .describe(`${describeQuantity("time", meaning, limits)}; or a day, 2026-03-14`);
}

const DAY = 86_400;

/** Written as a day or a month of the calendar, where a length of time is wanted; or a day that there is not. */
const LIKE_DAY = /^\s*\d{4}-\d{1,2}(-\d{1,2})?\s*$/;
const NO_LENGTH = 'That is a day, and a length of time is wanted here: count from one start, as in "10 months".';
const NO_SUCH_DAY = "There is no such day: write one as 2026-03-14, or a length of time from one start.";

const NO_SUCH_TIME = "No such time of day: 00:00 to 23:59, and after midnight count on, 24:10 for ten past.";

/**
 * Schema of a rate whose name says "per minute": a bare number is per minute, text carries its unit ("50 /min").
 * What comes out is in 1/s; limits are in 1/s too.
 */
export function perMinute(meaning: string, limits: Limits): QuantityField {
  return z
    .union([z.number(), z.string()])
    .transform((given, context) => {
      const read = readQuantity(typeof given === "number" ? given / 60 : given, "rate", limits);
      if (typeof read === "number") return read;
      context.issues.push({ code: "custom", message: read.remedy, input: given, params: { fault: read } });
      return z.NEVER;
    })
    .describe(`${meaning} [1/min; as text with its unit]${describeRange(limits, 60)}`);
}

/** A quantity in an answer: a bare SI number. */
export function answered(dimension: Dimension, meaning: string): z.ZodNumber {
  return z.number().describe(describeQuantity(dimension, meaning, {}));
}

/** Less than this of anything is none of it: a flow of 1e-300 is a slip, and no sum survives it. */
const NOTHING = 1e-21;

function readQuantity(given: string | number, dimension: Dimension, limits: Limits): number | Fault {
  try {
    const read = parseQuantity(given, dimension);
    const si = Math.abs(read) < NOTHING ? 0 : read;
    return isWithin(si, limits) ? si : outOfLimits(given, si, dimension, limits);
  } catch (thrown) {
    const fault = isInputError(thrown) ? thrown.faults[0] : undefined;
    if (fault && dimension === "time" && LIKE_DAY.test(String(given))) return { ...fault, remedy: NO_LENGTH };
    if (fault) return fault;
    throw thrown;
  }
}

function isWithin(si: number, { atLeast = -Infinity, atMost = Infinity, above = -Infinity }: Limits): boolean {
  return si >= atLeast && si <= atMost && si > above;
}

function outOfLimits(given: string | number, si: number, dimension: Dimension, limits: Limits): Fault {
  return {
    code: "QU-104",
    field: "",
    got: typeof given === "number" ? printGiven(given) : `${printGiven(given)}, ${withUnit(rounded(si), dimension)}`,
    allowed: allowedBy(typeof given, dimension, limits),
    remedy: limitRemedy(given, si, dimension, limits),
  };
}

/** A limit as it is meant: 75 degrees in radians is no figure of seventeen digits. */
function asLimit(si: number): string {
  return `${Number(si.toPrecision(6))}`;
}

/** A bare number of somebody's own unit is held to the same figures, in that unit. */
function allowedBy(given: string, dimension: Dimension, limits: Limits): string {
  if (dimension === "angle") return anglesAllowed(limits);
  const text = limitsText(limits, asLimit);
  return limits.isOwnUnit && given === "number" ? text : withUnit(text, dimension);
}

/** Angles are told in degrees; nobody on a boat reads radians. */
function anglesAllowed(limits: Limits): string {
  return `${limitsText(limits, asLimit)} rad (${limitsText(limits, (si) => `${Math.trunc((180 * si) / Math.PI)}`)}°)`;
}

/** A share has no unit to show. */
function withUnit(text: string, dimension: Dimension): string {
  return dimension === "ratio" ? text : `${text} ${SI_UNIT[dimension]}`;
}

function rounded(si: number): string {
  return `${Number(si.toPrecision(4))}`;
}

/** Too little or too much, and what it was read in where no unit said so. */
function limitRemedy(given: string | number, si: number, dimension: Dimension, limits: Limits): string {
  const { atMost = Infinity, isOwnUnit } = limits;
  const much = si > atMost ? "It is too much" : "It is too little";
  const bare = typeof given === "number" && !isOwnUnit ? `; a bare number ${bareMeans(dimension, atMost)}` : "";
  return `${much}: check the number and its unit${bare}.`;
}

/** A ratio beyond this is no share of something, but a factor of its own kind. */
const MOST_SHARE = 10;

function bareMeans(dimension: Dimension, atMost: number): string {
  if (dimension !== "ratio") return `is read in ${SI_UNIT[dimension]}, text in its own unit`;
  return atMost > MOST_SHARE ? "is read as it stands" : "is a share of one: 0.85, or 85 %";
}

function describeQuantity(dimension: Dimension, meaning: string, limits: Limits): string {
  return `${meaning} [${SI_UNIT[dimension]}]${describeRange(limits, 1)}`;
}

function describeRange(limits: Limits, factor: number): string {
  const range = limitsText(limits, (si) => String(si * factor));
  return range === "" ? "" : `, ${range}`;
}

function limitsText({ atLeast, atMost, above }: Limits, say: (limit: number) => string = String): string {
  const low = above !== undefined ? `more than ${say(above)}` : atLeast !== undefined ? `at least ${say(atLeast)}` : "";
  const high = atMost !== undefined ? `at most ${say(atMost)}` : "";
  return [low, high].filter(Boolean).join(", ");
}
