import type { ChancePrior } from "#reliability";
import { z } from "zod";
import { levelIn, lognormalIn, share } from "./fields.ts";
import { POOLING_OF_NONE, refuse } from "./refuse.ts";

const counted = (meaning: string) => z.int().min(0).max(1_000_000).describe(`${meaning} [1]`);

/** Trials at most where failures are a range. */
const MOST_RANGE = 200;

export const startChanceIn = z
  .strictObject({
    failures: z
      .union([counted("Demands that failed"), z.strictObject({ least: counted("At least"), most: counted("At most") })])
      .describe("Demands that failed; least and most where nobody knows exactly"),
    trials: counted("Demands made: starts asked for"),
    level: levelIn,
    prior: z
      .union([
        z.strictObject({ a: z.number().gt(0).max(1e9), b: z.number().gt(0).max(1e9) }),
        z.strictObject({ median: share("Median chance of failing"), ...lognormalIn }),
      ])
      .optional()
      .describe("Belief about failing before the record: beta a, b, or lognormal; Jeffreys 0.5, 0.5 if left out"),
    fleet: z
      .array(z.strictObject({ failures: counted("Failed"), trials: counted("Asked") }))
      .min(2)
      .max(2000)
      .optional()
      .describe("Others alike, each with its own record: they stand for the prior"),
    pooling: z
      .enum(["fitted", "whole", "wary"])
      .optional()
      .describe(
        "The fleet's spread: fitted as if known, whole over gamma(1e-4, 1e-4), or wary, with no leaning to fleets all alike; fitted if left out. Wary in any case where none of them failed, or all did",
      ),
    need: z
      .strictObject({
        least: counted("So many must start"),
        of: z.int().min(1).max(1000).describe("Of so many [1]"),
        shared: z
          .number()
          .min(0)
          .max(0.99)
          .optional()
          .describe("Share of the failures that strike all of them: one fuel delivery, one lot, one pair of hands [1]"),
      })
      .optional()
      .describe("The chance that enough start, all sharing the one unknown chance"),
  })
  .superRefine((given, context) => {
    const { most, least } = rangeOf(given.failures);
    if (most > given.trials) refuse(context, ["failures"], { ...TOO_MANY, got: given.failures });
    if (least > most) refuse(context, ["failures"], { ...BACKWARDS, got: given.failures });
    if (most - least > MOST_RANGE) refuse(context, ["failures"], { ...TOO_WIDE_A_RANGE, got: given.failures });
    for (const [i, one] of (given.fleet ?? []).entries())
      if (one.failures > one.trials) refuse(context, ["fleet", i, "failures"], { ...TOO_MANY, got: one.failures });
    if (given.prior && given.fleet) refuse(context, ["prior"], { ...ONE_PRIOR, got: "both" });
    if (given.pooling && !given.fleet) refuse(context, ["pooling"], { ...POOLING_OF_NONE, got: given.pooling });
    if (given.prior && "median" in given.prior && (given.prior.median <= 0 || given.prior.median >= 1))
      refuse(context, ["prior", "median"], { ...NO_CHANCE, got: given.prior.median });
    if (given.need && given.need.least > given.need.of)
      refuse(context, ["need", "least"], { ...MORE_THAN_ALL, got: given.need.least });
  });

export type StartChanceInput = z.output<typeof startChanceIn>;

export function rangeOf(failures: StartChanceInput["failures"]): { readonly least: number; readonly most: number } {
  return typeof failures === "number" ? { least: failures, most: failures } : failures;
}

/** True where any of a fleet was ever asked: where none was, it says nothing. */
export function wasAsked(fleet: readonly { readonly trials: number }[]): boolean {
  return fleet.some(({ trials }) => trials > 0);
}

export const JEFFREYS: ChancePrior = { kind: "beta", a: 0.5, b: 0.5 };

export function chancePrior({ prior, fleet, pooling }: StartChanceInput): ChancePrior {
  if (fleet && wasAsked(fleet)) return { kind: "fleet", fleet, pooling: pooling ?? "fitted" };
  if (prior === undefined) return JEFFREYS;
  return "a" in prior ? { kind: "beta", ...prior } : { kind: "lognormal", ...prior };
}

const TOO_MANY = {
  code: "QU-210",
  allowed: "no more failures than trials",
  remedy: "Count every demand once, and those that failed among them.",
};
const BACKWARDS = {
  code: "QU-211",
  allowed: "least no more than most",
  remedy: "Give the fewest first, the most after it.",
};
const TOO_WIDE_A_RANGE = {
  code: "QU-211",
  allowed: `a range of at most ${MOST_RANGE}`,
  remedy: "Count again: a range so wide says nothing.",
};
const ONE_PRIOR = {
  code: "QU-212",
  allowed: "prior or fleet, one of them",
  remedy: "A fleet stands for the prior: leave one out.",
};
const NO_CHANCE = {
  code: "QU-213",
  allowed: "more than 0 and less than 1",
  remedy: "Give a median that can be a chance of failing.",
};
const MORE_THAN_ALL = {
  code: "QU-214",
  allowed: "no more than there are",
  remedy: "Say how many of them must start.",
};
