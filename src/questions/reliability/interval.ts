import { bestInterval, costOfTest, type BestInterval, type IntervalPoint } from "#reliability";
import { z } from "zod";
import { defineQuestion } from "../question.ts";
import { answered } from "../quantity-field.ts";
import { sayBare } from "./bare-numbers.ts";
import { becauseOut, kindOut } from "./fields.ts";
import { refuse } from "./refuse.ts";
import { drilledOut } from "./drills-fields.ts";
import { checkOverhaul, checkStandby, drillsOut, standbyCase, standbyIn } from "./standby-fields.ts";

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
    checkOverhaul(given, context);
    if (failureRate === 0) refuse(context, ["failureRate"], { ...SOME_FAILURES, got: failureRate });
    if (perTest === 0 && testTime + repairTime * (demandFailure + harm) === 0)
      refuse(context, [costs ? "costs" : "testTime"], { ...SOME_COST, got: costs ?? testTime });
  }),
  output: z.strictObject({
    kind: kindOut,
    because: becauseOut,
    best: point
      .exactOptional()
      .describe("Least unavailability, or least cost where costs are given; none where no interval is best"),
    firstOrder: point
      .exactOptional()
      .describe("The best of the textbook sum for rare failures; none where it would not be rare"),
    flat: z
      .strictObject({ from: answered("time", "Shortest"), to: answered("time", "Longest") })
      .exactOptional()
      .describe("Intervals within 5 % of the best"),
    curve: z.array(point).describe("Over a hundredfold range about the least that was found"),
    drilled: drilledOut.exactOptional(),
  }),
  example: {
    failureRate: "0.3 per year",
    testTime: "3 h",
    repairTime: "2 days",
    demandFailure: 0.01,
    costs: { test: 6, parts: 2, wearPerStart: 0.5, startsPerTest: 2, failureOnTheNight: 150, callsPerYear: 4 },
  },
  answer: (given, _context, asGiven) => {
    const { costs } = given;
    const found = bestInterval(standbyCase(given), costs && costsOf(costs));
    const measured = drillsOut(given);
    const answer = answerOf(found, costs !== undefined);
    return { ...answer, because: `${answer.because}${sayDrilled(measured)}${sayBare(asGiven)}`, ...measured };
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

function answerOf(found: BestInterval, isByCost: boolean) {
  const { best, firstOrder, flat, lies } = found;
  const curve = found.curve.map(pointOf);
  if (lies !== "inside") return { kind: "cannot-tell" as const, because: noneWords(found, isByCost), curve };
  const textbook = firstOrder ? { firstOrder: pointOf(firstOrder) } : {};
  return { kind: "told" as const, because: MANUAL_FIRST, best: pointOf(best), ...textbook, flat, curve };
}

/** Why no interval is best. */
function noneWords({ best, lies }: BestInterval, isByCost: boolean): string {
  if (lies === "flat")
    return `No interval is best: the curve is flat from end to end, within 5 %, so the interval makes no difference to ${isByCost ? "the costs given" : "being there when asked"}. ${MANUAL}`;
  if (lies === "shortest")
    return `No interval is best: the shortest interval looked at, ${daysOf(best)} days, is better than any longer one, and test and repair fit into no shorter one that was looked at. ${MANUAL}`;
  const why = isByCost
    ? "by these costs testing never pays. Check the costs"
    : "the longer the better. Check what a test takes";
  return `No interval looked at is best: ${why}. ${MANUAL}`;
}

function daysOf({ interval }: IntervalPoint): number {
  return Number((interval / 86_400).toPrecision(3));
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
const MANUAL = "The unit's own manual stands first.";
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
