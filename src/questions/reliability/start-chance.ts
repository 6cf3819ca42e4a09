import {
  clopperPearson,
  jeffreys,
  openingsToTell,
  startingOf,
  TOO_WIDE,
  wilson,
  type Interval,
  type StartBelief,
} from "#reliability";
import { z } from "zod";
import { defineQuestion } from "../question.ts";
import { becauseOut, beliefOut, kindOut, LEVEL } from "./fields.ts";
import { oneMoreOf, oneMoreOut, sayFigures, type OneMore } from "./one-more.ts";
import { chancePrior, rangeOf, wasAsked, startChanceIn, type StartChanceInput } from "./start-chance-fields.ts";

const interval = (whose: string) =>
  z.array(z.number()).length(2).describe(`${whose}, of failing, from the record alone: low and high end [1]`);

export const startChanceQuestion = defineQuestion({
  name: "start-chance",
  summary: "How likely a thing is to fail when asked, and to start, from its record and from others alike.",
  input: startChanceIn,
  output: z.strictObject({
    kind: kindOut,
    because: becauseOut,
    openings: z.int().exactOptional().describe("Where it cannot tell: openings it would take about [1]"),
    failing: beliefOut("1", "Chance of failing on demand"),
    starting: beliefOut("1", "Chance of starting on demand"),
    clopperPearson: interval("Clopper and Pearson's"),
    wilson: interval("Wilson's"),
    jeffreys: interval("Jeffreys'"),
    fleet: z
      .strictObject({
        a: z.number().describe("Of the beta that tells the fleet [1]"),
        b: z.number().describe("Of the beta that tells the fleet [1]"),
        logLikelihood: z.number().describe("Natural logarithm [1]"),
      })
      .exactOptional(),
    oneMore: oneMoreOut("1"),
    atLeast: z.number().exactOptional().describe("Chance that enough start [1]"),
  }),
  example: {
    failures: 1,
    trials: 14,
    fleet: [
      { failures: 0, trials: 22 },
      { failures: 1, trials: 18 },
      { failures: 4, trials: 15 },
      { failures: 0, trials: 9 },
    ],
    need: { least: 2, of: 3 },
  },
  answer: (given) => {
    const { least, most } = rangeOf(given.failures);
    const belief = startingOf({ least, most, trials: given.trials }, chancePrior(given));
    const { mean, p05, p50, p95 } = belief.failing;
    const oneMore = oneMoreOf(mean, belief.oneMore, sayFigures);
    return {
      ...verdict(given, belief, oneMore),
      failing: belief.failing,
      starting: { mean: 1 - mean, p05: 1 - p95, p50: 1 - p50, p95: 1 - p05 },
      clopperPearson: ends(given, clopperPearson),
      wilson: ends(given, wilson),
      jeffreys: ends(given, jeffreys),
      ...(belief.fleet ? { fleet: fleetOut(belief.fleet) } : {}),
      ...oneMore.told,
      ...(given.need ? { atLeast: belief.enough(given.need.least, given.need.of, given.need.shared) } : {}),
    };
  },
});

function fleetOut({ a, b, logLikelihood }: NonNullable<StartBelief["fleet"]>) {
  return { a, b, logLikelihood };
}

/** Ends by one rule; from the fewest failures to the most where they are a range. */
function ends(given: StartChanceInput, rule: (failures: number, trials: number, level: number) => Interval) {
  const { least, most } = rangeOf(given.failures);
  if (given.trials === 0) return [0, 1];
  const level = given.level ?? LEVEL;
  return [rule(least, given.trials, level)[0], rule(most, given.trials, level)[1]];
}

function verdict(given: StartChanceInput, belief: StartBelief, { words }: OneMore) {
  const openings = openingsToTell(belief.failing);
  const base = `${basisOf(given, belief)}${words}`;
  if (openings === 0) return { kind: "told" as const, because: base };
  const because = `${base} Too little to tell: the range is wider than ${TOO_WIDE}; about ${openings} more openings would narrow it to that.`;
  return { kind: "cannot-tell" as const, because, openings };
}

function basisOf(given: StartChanceInput, belief: StartBelief): string {
  const { least, most } = rangeOf(given.failures);
  const failed = least === most ? `${least}` : `${least} to ${most}`;
  return `${failed} of ${given.trials} demands failed; ${priorWords(given, belief)}`;
}

function priorWords({ prior, fleet, pooling }: StartChanceInput, { fleet: fit, weight }: StartBelief): string {
  if (fleet && fit) {
    const alike = fit.isAlike ? ", which differ no more than chance would have it" : "";
    return `the prior is from ${fleet.length} others${alike}, and ${weightWords(weight ?? 0)}.${
      pooling === undefined || pooling === "fitted" ? TOO_SURE : ""
    }`;
  }
  if (fleet && wasAsked(fleet)) return sameWords(fleet, weight ?? 0);
  const unused = fleet ? "The others were never asked: they are left out. " : "";
  if (prior === undefined) return `${unused}the prior is Jeffreys', and weighs as much as 1 demand.`;
  if ("a" in prior) return `the prior was given, and weighs as much as ${rounded(prior.a + prior.b)} demands.`;
  return "the prior was given by its median and error factor.";
}

/** Of others that all came, or all failed: they show no spread that could be fitted. */
function sameWords(fleet: NonNullable<StartChanceInput["fleet"]>, weight: number): string {
  const came = fleet.every(({ failures }) => failures === 0) ? "none failed" : "all failed";
  return `the prior is from ${fleet.length} others, in which ${came}: they are pooled warily, and that ${weightWords(weight)}.`;
}

function weightWords(weight: number): string {
  return weight < 1 ? "weighs less than one demand" : `weighs about as much as ${rounded(weight)} demands`;
}

function rounded(weight: number): string {
  return String(Number(weight.toPrecision(2)));
}

const TOO_SURE = " The fleet's spread is taken as better known than a small fleet knows it: pooling wary is less sure.";
