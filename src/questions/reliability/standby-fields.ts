import type { StandbyCase } from "#reliability";
import { sayDuration } from "#words";
import { z } from "zod";
import { quantity } from "../quantity-field.ts";
import { share, someTime, time } from "./fields.ts";
import { checkLooks, drilled, looksIn } from "./drills-fields.ts";
import { refuse } from "./refuse.ts";

/** One a second: nothing that fails faster is tested at intervals [1/s]. */
const MOST_RATE = 1;
/** Below it a life spreads over more powers of ten than any record tells [1]. */
const LEAST_SHAPE = 0.05;
/** Tests between two overhauls at most. */
const MOST_TESTS = 20_000;

export const standbyIn = {
  failureRate: quantity("rate", "Hidden failures per time; a year is 365.25 days", {
    atLeast: 0,
    atMost: MOST_RATE,
  }).optional(),
  life: z
    .strictObject({
      shape: z.number().min(LEAST_SHAPE).max(20).describe("Weibull shape [1]"),
      scale: someTime("Weibull scale"),
    })
    .optional()
    .describe("Instead of a failure rate: time to a hidden failure"),
  testTime: time("Out of service for every test; none if left out").optional(),
  repairTime: time("Out of service after a test that found a fault; none if left out").optional(),
  demandFailure: share("Chance of failing when asked, whatever the age; none if left out").optional(),
  harm: share("Chance that a test leaves a hidden fault behind, seen by the next; none if left out").optional(),
  coverage: share("Share of hidden faults that a test can see; all if left out").optional(),
  drills: looksIn(1)
    .optional()
    .describe("Instead of coverage: what drills with planted faults measured of the checks of a test"),
  overhaul: someTime("With coverage or drills: between overhauls, which see every fault").optional(),
  pair: z.enum(["together", "staggered"]).optional().describe("Two alike, either enough: how they are tested"),
  shared: share("With pair: share of the failures that strike both; none if left out").optional(),
};

type Given = z.output<z.ZodObject<typeof standbyIn>>;

/** The case as reliability takes it; the interval is set apart. */
export function standbyCase(given: Given): Omit<StandbyCase, "interval"> {
  const { failureRate, life, overhaul, pair, shared } = given;
  const coverage = coverageOf(given);
  return {
    life: life ?? { shape: 1, scale: 1 / failureRate! },
    testTime: given.testTime ?? 0,
    repairTime: given.repairTime ?? 0,
    demandFailure: given.demandFailure ?? 0,
    ...(given.harm === undefined ? {} : { harm: given.harm }),
    ...(coverage === undefined || overhaul === undefined ? {} : { coverage: { share: coverage, overhaul } }),
    ...(pair === undefined ? {} : { pair: { tested: pair, shared: shared ?? 0 } }),
  };
}

/** Share of hidden faults that a test sees: as it was given, or as drills measured it. */
function coverageOf({ coverage, drills }: Given): number | undefined {
  return drills ? drilled(drills).share : coverage;
}

/** What drills measured, for the answer to state; nothing where none were given. */
export function drillsOut({ drills }: Given): { readonly drilled?: ReturnType<typeof drilled> } {
  return drills ? { drilled: drilled(drills) } : {};
}

/** Finds what does not go together; the interval where there is one. */
export function checkStandby(given: Given & { readonly interval?: number }, context: z.RefinementCtx): void {
  checkChoices(given, context);
  if (given.interval !== undefined) checkInterval({ ...given, interval: given.interval }, context);
}

function checkChoices(given: Given, context: z.RefinementCtx): void {
  const { failureRate, life, overhaul, pair, shared, drills } = given;
  const coverage = drills ? drills.planted : given.coverage;
  checkLooks(drills, ["drills"], context);
  if (drills && given.coverage !== undefined) refuse(context, ["drills"], { ...ONE_COVERAGE, got: "both" });
  if ((failureRate === undefined) === (life === undefined))
    refuse(context, ["failureRate"], { ...ONE_LAW, got: failureRate === undefined ? "neither" : "both" });
  if ((coverage === undefined) !== (overhaul === undefined))
    refuse(context, [coverage === undefined ? "coverage" : "overhaul"], { ...TOGETHER, got: "only one of the two" });
  if (shared !== undefined && pair === undefined) refuse(context, ["pair"], { ...OF_A_PAIR, got: "nothing" });
  if (pair !== undefined && (coverage !== undefined || (given.repairTime ?? 0) > 0 || (given.harm ?? 0) > 0))
    refuse(context, ["pair"], { ...PLAIN_PAIR, got: pair });
  if (pair === "staggered" && (shared ?? 0) > 0 && life !== undefined && life.shape !== 1)
    refuse(context, ["shared"], { ...STEADY_SHARE, got: shared });
}

function checkInterval(given: Given & { readonly interval: number }, context: z.RefinementCtx): void {
  const busy = ((given.testTime ?? 0) + (given.repairTime ?? 0)) * (given.pair === "staggered" ? 2 : 1);
  if (busy >= given.interval)
    refuse(context, ["interval"], {
      code: "QU-201",
      got: sayTime(given.interval),
      allowed: `more than the ${sayTime(busy)} that test and repair take`,
      remedy: "Give a longer interval, or shorter times for test and repair.",
    });
  const { overhaul } = given;
  if (overhaul === undefined) return;
  if (overhaul < given.interval || overhaul > MOST_TESTS * given.interval)
    refuse(context, ["overhaul"], {
      code: "QU-202",
      got: sayTime(overhaul),
      allowed: `from one interval to ${MOST_TESTS} intervals`,
      remedy: "Give the time from one overhaul to the next.",
    });
}

/** Where the interval is what is asked for: test and repair fit in twice before the overhaul. */
export function checkOverhaul(given: Given, context: z.RefinementCtx): void {
  const busy = (given.testTime ?? 0) + (given.repairTime ?? 0);
  if (given.overhaul === undefined || given.overhaul > 2 * busy) return;
  refuse(context, ["overhaul"], {
    code: "QU-202",
    got: sayTime(given.overhaul),
    allowed: `more than ${sayTime(2 * busy)}, twice what test and repair take`,
    remedy: "Give the time from one overhaul to the next.",
  });
}

const ONE_LAW = {
  code: "QU-203",
  allowed: "failureRate or life, one of them",
  remedy: "Give how often it fails unseen, once.",
};
const TOGETHER = {
  code: "QU-203",
  allowed: "coverage or drills, and overhaul with it",
  remedy: "What a test cannot see lies hidden until an overhaul: give both, or neither.",
};
const ONE_COVERAGE = {
  code: "QU-271",
  allowed: "coverage or drills, one of them",
  remedy: "What drills measured stands for the coverage: leave one out.",
};
const OF_A_PAIR = {
  code: "QU-203",
  allowed: "together or staggered",
  remedy: "A shared share needs a pair: say how the two are tested.",
};
const PLAIN_PAIR = {
  code: "QU-204",
  allowed: "a pair without repairTime, coverage and harm",
  remedy: "Count the repair in testTime, or ask for each of the two alone.",
};
const STEADY_SHARE = {
  code: "QU-204",
  allowed: "shared failures of a staggered pair only at a steady failureRate",
  remedy: "Give failureRate instead of life, or test the two together.",
};

/** Seconds, and what they come to where nobody counts in them. */
function sayTime(seconds: number): string {
  const plain = `${seconds} s`;
  return seconds < 3600 ? plain : `${plain} (${sayDuration(seconds, "figures")})`;
}
