import { standbyOf } from "#reliability";
import { z } from "zod";
import { defineQuestion } from "../question.ts";
import { sayBare } from "./bare-numbers.ts";
import { someTime } from "./fields.ts";
import { drilledOut } from "./drills-fields.ts";
import { checkStandby, drillsOut, standbyCase, standbyIn } from "./standby-fields.ts";

const part = (meaning: string) => z.number().describe(`${meaning} [1]`);

export const standbyQuestion = defineQuestion({
  name: "standby",
  summary: "How unready a thing is that lies sealed between tests: hidden faults, tests, repairs, failed demands.",
  input: z
    .strictObject({ ...standbyIn, interval: someTime("From the beginning of one test to that of the next") })
    .superRefine(checkStandby),
  output: z.strictObject({
    unavailability: part("Chance that it is not there when asked, averaged over time; exact for what was given"),
    firstOrder: part("The textbook sum for rare failures; may exceed 1"),
    faultFound: part("Chance that a test finds a fault"),
    parts: z
      .strictObject({
        hidden: part("By a hidden fault"),
        testing: part("Out for a test"),
        repair: part("Out for a repair"),
        demand: part("Fails when asked"),
      })
      .describe("They add up to the unavailability [1]"),
    drilled: drilledOut.exactOptional(),
    because: z.string().exactOptional().describe("What numbers without a unit were read in, where there are any"),
  }),
  example: {
    failureRate: "0.3 per year",
    interval: "1 year",
    testTime: "3 h",
    repairTime: "2 days",
    demandFailure: 0.01,
  },
  answer: (given, _context, asGiven) => {
    const bare = sayBare(asGiven).trim();
    const told = standbyOf({ ...standbyCase(given), interval: given.interval });
    return { ...told, ...drillsOut(given), ...(bare !== "" && { because: bare }) };
  },
});
