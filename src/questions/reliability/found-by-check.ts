import { foundByCheck, jeffreys, TOO_WIDE, type FoundByCheck } from "#reliability";
import { z } from "zod";
import { defineQuestion } from "../question.ts";
import { checkLooks, looksIn } from "./drills-fields.ts";
import { oneMissMore } from "./one-more.ts";
import { becauseOut, beliefOut, kindOut, levelIn, LEVEL } from "./fields.ts";

const interval = (whose: string) =>
  z.array(z.number()).length(2).describe(`${whose}, of finding, from its own record alone: low and high end [1]`);

export const foundByCheckQuestion = defineQuestion({
  name: "found-by-check",
  summary: "How likely a check is to find a fault that is there, from drills in which faults were planted.",
  input: z
    .strictObject({
      ...looksIn(0).shape,
      others: z.array(looksIn(0)).max(2000).optional().describe("Other checks, each with its own record"),
      level: levelIn,
    })
    .superRefine((given, context) => {
      checkLooks(given, [], context);
      for (const [i, one] of (given.others ?? []).entries()) checkLooks(one, ["others", i], context);
    }),
  output: z.strictObject({
    kind: kindOut,
    because: becauseOut,
    chance: beliefOut("1", "Chance that it finds a fault that it can find"),
    clopperPearson: interval("Clopper and Pearson's"),
    jeffreys: interval("Jeffreys'"),
    oneMore: z
      .number()
      .exactOptional()
      .describe(
        "Only where one fault more missed by another check would make finding look likelier here: the most it would come to [1]",
      ),
    more: z.int().exactOptional().describe("Where it cannot tell: further faults it would take about [1]"),
  }),
  example: {
    found: 5,
    planted: 7,
    others: [
      { found: 8, planted: 9 },
      { found: 3, planted: 6 },
      { found: 10, planted: 10 },
    ],
  },
  answer: ({ found, planted, others = [], level = LEVEL }) => {
    const told = foundByCheck({ found, planted }, others, level);
    const { told: oneMore, words } = oneMissMore(told.chance.mean, told.oneMore);
    const basis = `${found} of ${planted} planted faults found; ${others.length > 0 ? pooled(told) : ALONE}${words}`;
    return {
      kind: told.more === 0 ? ("told" as const) : ("cannot-tell" as const),
      because: told.more === 0 ? basis : `${basis} ${tooLittle(told)}`,
      chance: told.chance,
      clopperPearson: [...told.interval],
      jeffreys: planted === 0 ? [0, 1] : [...jeffreys(found, planted, level)],
      ...oneMore,
      ...(told.more > 0 && { more: told.more }),
    };
  },
});

const ALONE = "the prior is Jeffreys', and weighs as much as 1 fault.";

function pooled({ others }: FoundByCheck): string {
  if (others > 0) return `${others} other checks were pooled with it, warily.`;
  return `the others show too little to be pooled; ${ALONE}`;
}

function tooLittle({ more }: FoundByCheck): string {
  return `Too little to tell: the range is wider than ${TOO_WIDE}; about ${more} more faults would narrow it to that.`;
}
