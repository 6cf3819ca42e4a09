import { sayCount } from "#base";
import { rateOf, type RateBelief, type RatePrior } from "#reliability";
import { z } from "zod";
import { defineQuestion } from "../question.ts";
import { quantity } from "../quantity-field.ts";
import { oneMoreOf, oneMoreOut, type OneMore } from "./one-more.ts";
import { sayBare } from "./bare-numbers.ts";
import { becauseOut, beliefOut, kindOut, lognormalIn, time } from "./fields.ts";
import { POOLING_OF_NONE, refuse } from "./refuse.ts";

const failuresIn = z.int().min(0).max(1_000_000).describe("Failures seen [1]");

const input = z
  .strictObject({
    failures: failuresIn,
    time: time("Time watched"),
    prior: z
      .union([
        z.strictObject({ a: z.number().min(0).max(1e9), b: time("Rate of the gamma") }),
        z.strictObject({ median: quantity("rate", "Median rate", { above: 0 }), ...lognormalIn }),
      ])
      .optional()
      .describe("Belief about the rate before the record: gamma a, b, or lognormal; Jeffreys 0.5, 0 if left out"),
    fleet: z
      .array(z.strictObject({ failures: failuresIn, time: time("Time watched") }))
      .min(2)
      .max(2000)
      .optional()
      .describe("Others alike, each with its own record: they stand for the prior"),
    pooling: z
      .enum(["fitted", "wary"])
      .optional()
      .describe(
        "The fleet's spread: fitted as if known, or wary, integrated with no leaning to fleets all alike; fitted if left out. Wary in any case where none of them failed",
      ),
    over: time("For the chance that nothing fails over so long").optional(),
  })
  .superRefine((given, context) => {
    if (given.prior && given.fleet) refuse(context, ["prior"], { ...ONE_PRIOR, got: "both" });
    if (given.pooling && !given.fleet) refuse(context, ["pooling"], { ...POOLING_OF_NONE, got: given.pooling });
    for (const [i, one] of (given.fleet ?? []).entries())
      if (one.time === 0) refuse(context, ["fleet", i, "time"], { ...SOME_TIME, got: 0 });
    const isClean = given.fleet?.every(({ failures }) => failures === 0) ?? false;
    const isWary = given.fleet !== undefined && (isClean || given.pooling === "wary");
    if (isWary && given.time === 0 && given.failures > 0) refuse(context, ["time"], { ...SOME_TIME, got: 0 });
    const prior = priorOf(given);
    if (prior.kind === "gamma" && prior.b + given.time === 0) refuse(context, ["time"], { ...SOME_TIME, got: 0 });
    if (prior.kind === "gamma" && prior.a + given.failures === 0)
      refuse(context, ["prior"], { ...SOMETHING, got: given.prior });
  });

type Input = z.output<typeof input>;

export const failureRateQuestion = defineQuestion({
  name: "failure-rate",
  summary: "How often a thing fails over time, from its record and from others alike.",
  input,
  output: z.strictObject({
    kind: kindOut,
    because: becauseOut,
    rate: beliefOut("1/s", "Failures per time"),
    fleet: z
      .strictObject({
        a: z.number().describe("Of the gamma that tells the fleet [1]"),
        b: z.number().describe("Of the gamma that tells the fleet [s]"),
        logLikelihood: z.number().describe("Natural logarithm [1]"),
      })
      .exactOptional(),
    oneMore: oneMoreOut("1/s"),
    noneOver: z.number().exactOptional().describe("Chance of no failure over the time asked for [1]"),
  }),
  example: { failures: 3, time: "9 years", over: "1 year" },
  answer: (given, _context, asGiven) => {
    const belief = rateOf(given, priorOf(given));
    const oneMore = oneMoreOf(belief.rate.mean, belief.oneMore, perYear);
    const { kind, because } = verdict(given, belief, oneMore);
    return {
      kind,
      because: `${because}${sayBare(asGiven)}`,
      rate: belief.rate,
      ...(belief.fleet ? { fleet: fleetOut(belief.fleet) } : {}),
      ...oneMore.told,
      ...(given.over === undefined ? {} : { noneOver: belief.noneOver(given.over) }),
    };
  },
});

function perYear(rate: number, figures = 2): string {
  return `${Number((rate * YEAR).toPrecision(figures))} a year`;
}

function fleetOut({ a, b, logLikelihood }: NonNullable<RateBelief["fleet"]>) {
  return { a, b, logLikelihood };
}

function priorOf({ prior, fleet, pooling }: Input): RatePrior {
  if (fleet) return { kind: "fleet", fleet, pooling: pooling ?? "fitted" };
  if (prior === undefined) return { kind: "gamma", a: 0.5, b: 0 };
  return "a" in prior ? { kind: "gamma", ...prior } : { kind: "lognormal", ...prior };
}

/** Ends further apart than this many times say too little. */
const TOO_FAR = 30;

function verdict(given: Input, belief: RateBelief, { words }: OneMore) {
  const { rate } = belief;
  const base = `${sayCount(given.failures, "failure")} in ${yearsOf(given.time)}${priorWords(given, belief)}.${words}`;
  if (rate.p95 <= TOO_FAR * rate.p05) return { kind: "told" as const, because: base };
  const because = `${base} Too little to tell more than that the rate is likely below ${perYear(rate.p95)}: it would take ${lackWords(given)}, to say how often.`;
  return { kind: "cannot-tell" as const, because };
}

/** Where the belief before the record came from, and its weight where it was given; Jeffreys' weighs next to nothing. */
function priorWords({ prior, fleet, pooling }: Input, { fleet: fit, weight }: RateBelief): string {
  if (fleet)
    return `; the prior is from ${fleet.length} others${fit ? "" : ", in which none failed: they are pooled warily"}${pooling !== "wary" && fit ? TOO_SURE : ""}`;
  if (prior === undefined || weight === undefined) return "";
  const failures = Number(weight.failures.toPrecision(2));
  return `; the prior was given, and weighs about as much as ${sayCount(failures, "failure")} in ${yearsOf(weight.time)}`;
}

const TOO_SURE = ", their spread taken as better known than a small fleet knows it: pooling wary is less sure";

/** What is not there yet. */
function lackWords({ failures, fleet }: Input): string {
  const more = failures === 0 ? "a failure or two" : "more failures";
  return fleet ? more : `${more}, or others alike`;
}

function yearsOf(seconds: number): string {
  return sayCount(Number((seconds / YEAR).toPrecision(2)), "year");
}

const YEAR = 365.25 * 86_400;
const ONE_PRIOR = {
  code: "QU-212",
  allowed: "prior or fleet, one of them",
  remedy: "A fleet stands for the prior: leave one out.",
};
const SOME_TIME = {
  code: "QU-215",
  allowed: "more than 0 s",
  remedy: "Give the time over which failures were counted.",
};
const SOMETHING = {
  code: "QU-216",
  allowed: "a above 0, or at least one failure",
  remedy: "No failure and no prior settle no rate: give a prior, or leave it out for Jeffreys'.",
};
