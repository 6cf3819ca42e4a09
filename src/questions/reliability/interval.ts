import { bestInterval, costOfTest, type BestInterval, type IntervalPoint } from "#reliability";
import { z } from "zod";
import { defineQuestion } from "../question.ts";
import { answered } from "../quantity-field.ts";
import { becauseOut, kindOut } from "./fields.ts";
import { refuse } from "./refuse.ts";
import { drilledOut } from "./drills-fields.ts";
import { checkStandby, drillsOut, standbyCase, standbyIn } from "./standby-fields.ts";

const cost = (meaning: string) => z.number().min(0).describe(`${meaning} [any one unit of cost]`);

const costsIn = z
  .strictObject({
    test: cost("One test: its hours, or all of it where parts and wear are left out"),
    parts: cost("Parts used up in one test; none if left out").optional(),
    wearPerStart: cost("What one start wears off the engine; none if left out").optional(),
    startsPerTest: z.number().min(0).max(1000).describe("With wearPerStart: starts in one test [1]").optional(),
    failureOnTheNight: cost("Not there on the night"),
    callsPerYear: z.number().min(0).max(10_000).describe("Calls on it [1/year]"),
    perDayNotReady: cost("One day out for test or repair; none if left out").optional(),
  })
  .describe(
    "Where what counts is cost: (test + parts + startsPerTest x wearPerStart) / T + failureOnTheNight x callsPerYear x unavailability + days not ready",
  );

const aYear = (meaning: string) => z.number().describe(`${meaning} [cost; per year]`);

const point = z.strictObject({
  interval: answered("time", "From test to test"),
  unavailability: z.number().describe("Chance that it is not there when asked [1]"),
  costPerYear: z.number().exactOptional().describe("Of testing, of the night and of days not ready [cost; per year]"),
  costs: z
    .strictObject({
      tests: aYear("Tests themselves"),
      parts: aYear("Parts"),
      wear: aYear("Wear of starts"),
      notReady: aYear("Days out for test or repair"),
      night: aYear("Not there on the night"),
    })
    .exactOptional()
    .describe("What the cost is made of [cost; per year]"),
});

export const intervalQuestion = defineQuestion({
  name: "interval",
  summary: "How often to open and test a thing that lies sealed, and how little it matters near the best.",
  input: z.strictObject({ ...standbyIn, costs: costsIn.optional() }).superRefine((given, context) => {
    checkStandby(given, context);
    const { failureRate, costs, testTime = 0, repairTime = 0, demandFailure = 0, harm = 0 } = given;
    const perTest = costs ? costOfTest(costsOf(costs)) : 0;
    if ((costs?.wearPerStart === undefined) !== (costs?.startsPerTest === undefined))
      refuse(context, ["costs", "startsPerTest"], { ...WEAR_TOGETHER, got: "only one of the two" });
    if (failureRate === 0) refuse(context, ["failureRate"], { ...SOME_FAILURES, got: failureRate });
    if (perTest === 0 && testTime + repairTime * (demandFailure + harm) === 0)
      refuse(context, [costs ? "costs" : "testTime"], { ...SOME_COST, got: costs ?? testTime });
  }),
  output: z.strictObject({
    kind: kindOut,
    because: becauseOut,
    best: point.describe("Least unavailability, or least cost where costs are given"),
    firstOrder: point.exactOptional().describe("The best of the textbook sum for rare failures"),
    flat: z
      .strictObject({ from: answered("time", "Shortest"), to: answered("time", "Longest") })
      .describe("Intervals within 5 % of the best"),
    curve: z.array(point).describe("Over a hundredfold range about the best"),
    drilled: drilledOut.exactOptional(),
  }),
  example: {
    failureRate: "0.3 per year",
    testTime: "3 h",
    repairTime: "2 days",
    demandFailure: 0.01,
    costs: { test: 6, parts: 2, wearPerStart: 0.5, startsPerTest: 2, failureOnTheNight: 150, callsPerYear: 4 },
  },
  answer: (given) => {
    const { costs } = given;
    const found = bestInterval(standbyCase(given), costs && costsOf(costs));
    const measured = drillsOut(given);
    const answer = answerOf(found);
    return { ...answer, because: `${answer.because}${sayDrilled(measured)}`, ...measured };
  },
});

function costsOf({ parts, wearPerStart, startsPerTest, perDayNotReady, ...costs }: z.output<typeof costsIn>) {
  return {
    ...costs,
    parts: parts ?? 0,
    wearPerStart: wearPerStart ?? 0,
    startsPerTest: startsPerTest ?? 0,
    perDayNotReady: perDayNotReady ?? 0,
  };
}

function answerOf({ best, firstOrder, flat, curve, isOpenEnded }: BestInterval) {
  const kind = isOpenEnded ? ("cannot-tell" as const) : ("told" as const);
  return {
    kind,
    because: isOpenEnded ? NEVER : MANUAL_FIRST,
    best: pointOf(best),
    ...(firstOrder ? { firstOrder: pointOf(firstOrder) } : {}),
    flat,
    curve: curve.map(pointOf),
  };
}

function sayDrilled({ drilled }: ReturnType<typeof drillsOut>): string {
  if (!drilled) return "";
  return ` A test finds what drills measured: ${drilled.found} of ${drilled.planted} planted faults.`;
}

function pointOf(one: IntervalPoint) {
  return { ...one };
}

const MANUAL_FIRST =
  "Least of what was given, nothing else. The rule of the unit's own manual stands first: this is a proposal.";
const NEVER =
  "No interval looked at is best: by these costs testing never pays. Check the costs; the unit's own manual stands first.";
const WEAR_TOGETHER = {
  code: "QU-273",
  allowed: "wearPerStart and startsPerTest together",
  remedy: "Say what one start wears and how many starts a test has, or leave both out.",
};
const SOME_FAILURES = {
  code: "QU-205",
  allowed: "more than 0 1/s",
  remedy: "What never fails needs no test: give the rate at which it does.",
};
const SOME_COST = {
  code: "QU-206",
  allowed: "a testTime, a demandFailure or harm with a repairTime, or a cost of a test above 0",
  remedy: "Where a test costs nothing, the shortest interval is best: say what a test takes.",
};
