import type { LifeFit } from "#reliability";
import { z } from "zod";
import { beliefOut, becauseOut, kindOut, unitOut } from "./fields.ts";

const figure = (meaning: string) => z.number().describe(meaning);
/** Its unit is the answer's own `unit`: see there. */
const AGE = "[unit]";
const orNull = (meaning: string) => z.number().nullable().describe(`${meaning} ${AGE}; null where it was not reached`);

export const fitOut = z.strictObject({
  model: z.enum(["weibull", "lognormal", "exponential"]),
  shape: figure("Weibull shape; 1 of an exponential, 1/sigma of a lognormal [1]"),
  scale: figure(`Weibull scale; 1/rate of an exponential, median of a lognormal ${AGE}`),
  rate: figure("Of an exponential [1/unit]").exactOptional(),
  mu: figure("Of a lognormal: mean of the logarithm").exactOptional(),
  sigma: figure("Of a lognormal: spread of the logarithm [1]").exactOptional(),
  logLikelihood: figure("Natural logarithm [1]"),
  standardErrors: z.strictObject({
    logShape: figure("Of the logarithm of the shape [1]").exactOptional(),
    logScale: figure("Of the logarithm of the scale [1]").exactOptional(),
  }),
});

export const medianOut = z
  .strictObject({ value: orNull("Age by which half failed"), low: orNull("Low end"), high: orNull("High end") })
  .describe("By the product-limit estimate, without any law");

export const lifetimesOut = z.strictObject({
  kind: kindOut,
  because: becauseOut,
  unit: unitOut,
  fit: fitOut.exactOptional().describe("The law asked for"),
  models: z.array(fitOut).describe("All that could be fitted, likeliest first"),
  rate: beliefOut("1/unit", "With a prior: the rate of the exponential").exactOptional(),
  survival: z
    .array(
      z.strictObject({
        at: figure(`Age ${AGE}`),
        survival: figure("Share still good [1]"),
        low: figure("Low end, log-log limits [1]").exactOptional(),
        high: figure("High end, log-log limits [1]").exactOptional(),
        atRisk: figure("Still watched and good just before [1]").exactOptional(),
        failed: figure("Failed at this age [1]").exactOptional(),
      }),
    )
    .describe("Without any law: product-limit, or the interval-censored one where ends lie between looks"),
  median: medianOut,
  tenPercent: figure(`Age by which one in ten has failed, by the fit ${AGE}`).exactOptional(),
  failedBy: z
    .array(
      z.strictObject({
        share: figure("That has failed [1]"),
        age: figure(`By which it has ${AGE}`),
        low: figure(`Low end ${AGE}`),
        high: figure(`High end ${AGE}`),
      }),
    )
    .exactOptional()
    .describe("Ages by which one in ten and half have failed, by the fit"),
  lasts: z
    .strictObject({
      chance: figure("That it lasts [1]"),
      low: figure("Low end [1]"),
      high: figure("High end [1]"),
    })
    .exactOptional(),
  groups: z
    .array(z.strictObject({ group: z.string(), fit: fitOut.exactOptional(), median: medianOut }))
    .exactOptional(),
  logRank: z
    .strictObject({
      chiSquare: figure("[1]"),
      degrees: figure("Of freedom [1]"),
      p: figure("Chance by luck alone [1]"),
    })
    .exactOptional(),
  meanCount: z
    .array(
      z.strictObject({
        at: figure(`Age ${AGE}`),
        count: figure("Renewals of one, on average [1]"),
        low: figure("Low end [1]"),
        high: figure("High end [1]"),
      }),
    )
    .exactOptional(),
});

/** A fit as answers carry it. */
export function fitAnswer({ model, shape, scale, logLikelihood, standardErrors }: LifeFit): z.input<typeof fitOut> {
  const own =
    model === "exponential"
      ? { rate: 1 / scale }
      : model === "lognormal"
        ? { mu: Math.log(scale), sigma: 1 / shape }
        : {};
  return { model, shape, scale, ...own, logLikelihood, standardErrors };
}
