import { isInputError, parseQuantity, printGiven, type Dimension, type Fault } from "#base";
import { z } from "zod";

/** SI limits of a quantity. */
export interface Limits {
  readonly atLeast?: number;
  readonly atMost?: number;
  /** Exclusive lower limit. */
  readonly above?: number;
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

function readQuantity(given: string | number, dimension: Dimension, limits: Limits): number | Fault {
  try {
    const si = parseQuantity(given, dimension);
    return isWithin(si, limits) ? si : outOfLimits(given, dimension, limits);
  } catch (thrown) {
    const fault = isInputError(thrown) ? thrown.faults[0] : undefined;
    if (fault) return fault;
    throw thrown;
  }
}

function isWithin(si: number, { atLeast = -Infinity, atMost = Infinity, above = -Infinity }: Limits): boolean {
  return si >= atLeast && si <= atMost && si > above;
}

function outOfLimits(given: string | number, dimension: Dimension, limits: Limits): Fault {
  return {
    code: "QU-104",
    field: "",
    got: printGiven(given),
    allowed: `${limitsText(limits)} ${SI_UNIT[dimension]}`,
    remedy: `Check the number and its unit; a bare number is read in ${SI_UNIT[dimension]}.`,
  };
}

function describeQuantity(dimension: Dimension, meaning: string, limits: Limits): string {
  return `${meaning} [${SI_UNIT[dimension]}]${describeRange(limits, 1)}`;
}

function describeRange(limits: Limits, factor: number): string {
  const scaled = Object.fromEntries(Object.entries(limits).map(([end, value]) => [end, value * factor]));
  const range = limitsText(scaled);
  return range === "" ? "" : `, ${range}`;
}

function limitsText({ atLeast, atMost, above }: Limits): string {
  const low = above !== undefined ? `more than ${above}` : atLeast !== undefined ? `at least ${atLeast}` : "";
  const high = atMost !== undefined ? `at most ${atMost}` : "";
  return [low, high].filter(Boolean).join(", ");
}
