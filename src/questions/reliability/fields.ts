import { z } from "zod";
import { quantity } from "../quantity-field.ts";

/** A chance or a share, 0 to 1. */
export function share(meaning: string) {
  return z.number().min(0).max(1).describe(`${meaning} [1], 0 to 1`);
}

/** A time: text with its unit, or a bare number of seconds. */
export function time(meaning: string) {
  return quantity("time", `${meaning}; a year is 365.25 days`, { atLeast: 0, atMost: 1e12 });
}

/** A time that is more than nothing. */
export function someTime(meaning: string) {
  return quantity("time", `${meaning}; a year is 365.25 days`, { above: 0, atMost: 1e12 });
}

export const levelIn = z
  .number()
  .min(0.5)
  .max(0.999)
  .optional()
  .describe("How sure an interval is meant to be [1]; 0.95 if left out");

export const LEVEL = 0.95;

/** The unit of bare times. */
export function unitIn(meaning: string) {
  return z
    .string()
    .regex(/^\p{L}{1,20}$/u)
    .optional()
    .describe(meaning);
}

/** The unit of every time in an answer, and what a schema says of such a figure. */
export const unitOut = z
  .string()
  .describe("Of every time: s where times were text or days, else as it was told; units where it was not");

/** Whether there is enough to say anything. */
export const kindOut = z.enum(["told", "cannot-tell"]).describe("Whether there is evidence enough to tell");

export const becauseOut = z.string().describe("What the answer rests on, or what is missing");

/** What is believed of a figure. */
export function beliefOut(unit: string, meaning: string) {
  const one = (what: string) => z.number().describe(`${what} [${unit}]`);
  return z
    .strictObject({
      mean: one("Mean"),
      p05: one("One in twenty lies below"),
      p50: one("Half lie below"),
      p95: one("One in twenty lies above"),
    })
    .describe(`${meaning} [${unit}]`);
}

/** Prior of a chance or rate by its median and the ratio of the 95th percentile to it. */
export const lognormalIn = {
  errorFactor: z.number().gt(1).max(1e6).describe("95th percentile over the median [1], more than 1"),
};
