import { bestPurchases, leastStock, MOST_STOCK, stockOf, type Part } from "#reliability";
import { z } from "zod";
import { defineQuestion } from "../question.ts";
import { becauseOut, kindOut, someTime } from "./fields.ts";
import { refuse } from "./refuse.ts";
import { sayStocks, type StockTold } from "./spares-words.ts";

/** Demands out at once beyond which a shelf is no shelf. */
const MOST_PIPELINE = 500;
const YEAR = 365.25 * 86_400;

const itemIn = z.strictObject({
  name: z.string().min(1).max(80),
  perYear: z.number().min(0).max(1e6).optional().describe("Demands in a year [1/year]"),
  leadTime: someTime("From ordering to shelf").optional(),
  pipeline: z.number().min(0).max(MOST_PIPELINE).optional().describe("Instead: demands in one lead time [1]"),
  lots: z
    .array(
      z.strictObject({
        size: z.int().min(1).max(100).describe("Wanted at once [1]"),
        share: z.number().gt(0).max(1e6).describe("How often beside the other sizes [1]"),
      }),
    )
    .min(1)
    .max(20)
    .optional()
    .describe("In which sizes they are wanted; one at a time if left out"),
  cost: z.number().gt(0).max(1e9).optional().describe("Of one [any one unit of cost]"),
  stock: z.int().min(0).max(MOST_STOCK).optional().describe("On the shelf now [1]; none if left out"),
});

const input = z
  .strictObject({
    items: z.array(itemIn).min(1).max(500),
    target: z.number().gt(0).lt(1).optional().describe("Chance of no shortage wanted of every part [1]"),
    budget: z
      .number()
      .min(0)
      .max(1e9)
      .optional()
      .describe("To be spent where it saves most waiting [cost; any one unit]"),
    enough: z
      .number()
      .min(0)
      .max(1e6)
      .optional()
      .describe(
        "With budget: no more is bought of a part given by perYear once so few demands find its shelf empty [1/year]",
      ),
  })
  .superRefine(({ items, budget }, context) => {
    const names = new Set<string>();
    for (const [i, { name, perYear, leadTime, pipeline, cost }] of items.entries()) {
      const isGiven = [pipeline !== undefined, perYear !== undefined || leadTime !== undefined];
      const isWhole = pipeline !== undefined || (perYear !== undefined && leadTime !== undefined);
      if (!isWhole || isGiven[0] === isGiven[1]) refuse(context, ["items", i], { ...DEMAND, got: items[i] });
      if (pipelineOf(items[i]!) > MOST_PIPELINE) refuse(context, ["items", i], { ...TOO_MANY, got: perYear });
      if (budget !== undefined && cost === undefined)
        refuse(context, ["items", i, "cost"], { ...COST, got: "nothing" });
      if (names.has(name)) refuse(context, ["items", i, "name"], { ...ONE_NAME, got: name });
      names.add(name);
    }
  });

type Input = z.output<typeof input>;
type Item = Input["items"][number];

function pipelineOf({ perYear = 0, leadTime = 0, pipeline }: Item): number {
  return pipeline ?? (perYear * leadTime) / YEAR;
}

const itemOut = z.strictObject({
  name: z.string(),
  stock: z.number().describe("Least for the target where there is one; else after buying, or as it is [1]"),
  toBuy: z.number().exactOptional().describe("More than are on the shelf [1]"),
  noShortage: z.number().describe("Chance that nobody waits for one [1]"),
  fillRate: z.number().describe("Chance that a demand is filled at once [1]"),
  expectedBackorders: z.number().describe("Demands waiting, on average [1]"),
  emptyPerYear: z
    .strictObject({
      now: z.number().describe("With what is on the shelf now [1/year]"),
      after: z.number().describe("With this stock [1/year]"),
    })
    .exactOptional()
    .describe("With perYear: demands that find the shelf empty, so that a kit waits or another is robbed"),
});

export const sparesQuestion = defineQuestion({
  name: "spares",
  summary: "How many spare parts to hold: least stock for a chance of no shortage, or the best buys for a budget.",
  input,
  output: z.strictObject({
    kind: kindOut,
    because: becauseOut,
    items: z.array(itemOut),
    purchases: z
      .array(
        z.strictObject({
          name: z.string(),
          cost: z.number().describe("Spent so far [cost; any one unit]"),
          expectedBackorders: z.number().describe("Of the whole shelf from here on [1]"),
        }),
      )
      .exactOptional()
      .describe("In the order of what they save per cost"),
    exact: z.boolean().describe("Whether no other choice is better"),
    gap: z.number().exactOptional().describe("Where not exact: waiting that a better choice could save at most [1]"),
  }),
  example: {
    items: [
      { name: "gasket", perYear: 4, leadTime: "6 weeks", cost: 3, stock: 1 },
      { name: "spark plug", perYear: 6, leadTime: "2 weeks", cost: 9 },
      { name: "recoil spring", perYear: 0.5, leadTime: "3 months", cost: 35 },
    ],
    budget: 60,
  },
  answer: (given) => {
    const bought = given.budget === undefined ? undefined : buy(given, given.budget);
    const stocks = given.items.map((item, i) => wantedStock(item, given.target, bought?.stock[i]));
    const missing = given.items.filter((_, i) => stocks[i] === undefined).map(({ name }) => name);
    const items = given.items.map((item, i) => itemAnswer(item, stocks[i] ?? MOST_STOCK));
    const isTold = missing.length === 0;
    return {
      kind: isTold ? ("told" as const) : ("cannot-tell" as const),
      because: isTold ? sayStocks(toldOf(given, items), given.target) : beyondWords(missing),
      items,
      ...(bought ? { purchases: [...bought.purchases] } : {}),
      exact: isTold && (bought?.exact ?? true),
      ...(bought && !bought.exact ? { gap: bought.gap } : {}),
    };
  },
});

function toldOf(given: Input, answers: readonly { readonly stock: number; readonly noShortage: number }[]) {
  return given.items.map((item, i): StockTold => {
    const { stock, noShortage } = answers[i]!;
    const isInLots = item.lots?.some(({ size }) => size > 1) ?? false;
    return { name: item.name, pipeline: pipelineOf(item), isInLots, stock, noShortage };
  });
}

/** The least for a target, else what the budget bought, else what is there. */
function wantedStock(item: Item, target: number | undefined, bought: number | undefined): number | undefined {
  return target === undefined ? (bought ?? item.stock ?? 0) : leastStock(pipelineOf(item), target, item.lots);
}

function itemAnswer(item: Item, stock: number) {
  const toBuy = Math.max(0, stock - (item.stock ?? 0));
  return { name: item.name, stock, toBuy, ...stockOf(pipelineOf(item), stock, item.lots), ...emptyOf(item, stock) };
}

/** Demands that find the shelf empty, before and after: perYear (1 - fill rate). */
function emptyOf(item: Item, stock: number) {
  const { perYear } = item;
  if (perYear === undefined) return {};
  return { emptyPerYear: { now: emptyAt(item, perYear, item.stock ?? 0), after: emptyAt(item, perYear, stock) } };
}

function buy({ items, enough }: Input, budget: number) {
  const parts = items.map((item): Part => {
    const mostBought = enough === undefined ? undefined : untilEnough(item, enough);
    const most = mostBought === undefined ? {} : { mostBought };
    const lots = item.lots === undefined ? {} : { lots: item.lots };
    return { name: item.name, pipeline: pipelineOf(item), ...lots, cost: item.cost!, stock: item.stock ?? 0, ...most };
  });
  return bestPurchases(parts, budget);
}

/** How many more it takes until so few demands find the shelf empty; undefined where demands a year are not given. */
function untilEnough(item: Item, enough: number): number | undefined {
  if (item.perYear === undefined) return undefined;
  const held = item.stock ?? 0;
  let stock = held;
  while (stock < MOST_STOCK && emptyAt(item, item.perYear, stock) > enough) stock += 1;
  return stock - held;
}

function emptyAt(item: Item, perYear: number, stock: number): number {
  return perYear * (1 - stockOf(pipelineOf(item), stock, item.lots).fillRate);
}

function beyondWords(names: readonly string[]): string {
  return `More than ${MOST_STOCK} of ${names.join(", ")} would be needed.`;
}

const DEMAND = {
  code: "QU-240",
  allowed: "perYear with leadTime, or pipeline",
  remedy: "Give how many are needed in a year and how long one takes to come, or the pipeline in their place.",
};
const TOO_MANY = {
  code: "QU-241",
  allowed: `at most ${MOST_PIPELINE} demands in one lead time`,
  remedy: "Check the demands in a year and the lead time.",
};
const COST = {
  code: "QU-242",
  allowed: "a cost of every part, with a budget",
  remedy: "Give what one costs.",
};
const ONE_NAME = {
  code: "QU-243",
  allowed: "each name once",
  remedy: "Give every part a name of its own.",
};
