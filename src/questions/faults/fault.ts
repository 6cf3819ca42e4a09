import { InputError } from "#base";
import { findFault, type FaultCase, type FaultPlan, type FaultStep } from "#faults";
import { z } from "zod";
import { defineQuestion } from "../question.ts";
import { faultIn, type FaultInput } from "./fault-fields.ts";

const figure = (meaning: string) => z.number().describe(`${meaning} [cost; any one unit]`);

export const faultQuestion = defineQuestion({
  name: "fault",
  summary: "What to try next on a thing that does not work, by the least expected cost until it does or is given up.",
  input: faultIn,
  output: z.strictObject({
    next: z.strictObject({
      kind: z.enum(["check", "action", "test", "repair", "fallback"]).describe("repair: the last cause left, unseen"),
      name: z.string(),
      opens: z.string().exactOptional().describe("The cover to open first"),
    }),
    order: z.array(z.string()).describe("Checks and actions in order where none helps and no test is done"),
    expectedCost: figure("Until it works or is given up, on average"),
    withoutTests: figure("The same where no test may be done").exactOptional(),
    exact: z.boolean().describe("Whether no other way costs less"),
    bound: figure("Where not exact: no way costs less than this").exactOptional(),
  }),
  example: {
    causes: [
      { name: "fuel cock shut", chance: 0.4 },
      { name: "plug fouled", chance: 0.35 },
      { name: "no spark", chance: 0.25 },
    ],
    checks: [{ name: "look at the fuel cock", cost: 0.5, of: "fuel cock shut" }],
    actions: [{ name: "fit the spare plug", cost: 4, cures: [0, 0.95, 0.1] }],
    tests: [{ name: "spark against the block", cost: 2, positive: [1, 0.6, 0] }],
    fallback: { cost: 12 },
  },
  answer: (given) => answerOf(given, casesOf(given)),
});

function casesOf(given: FaultInput): FaultCase {
  const whole = given.causes.reduce((sum, { chance }) => sum + chance, 0);
  return {
    chances: given.causes.map(({ chance }) => chance / whole),
    steps: stepsOf(given),
    tests: given.tests ?? [],
    covers: (given.covers ?? []).map(({ cost }) => cost),
    ...(given.fallback ? { fallback: given.fallback.cost } : {}),
    lastIsInferred: given.lastIsInferred ?? false,
  };
}

function stepsOf({ causes, checks = [], actions = [], covers = [] }: FaultInput): readonly FaultStep[] {
  const coverOf = (behind: string | undefined) =>
    behind === undefined ? {} : { cover: covers.findIndex(({ name }) => name === behind) };
  const looks = checks.map(({ name, cost, of, detects = 1, repair = 0, behind }): FaultStep => {
    const ends = causes.map((cause) => ([of].flat().includes(cause.name) ? detects : 0));
    return { kind: "check", name, cost, ends, repair, ...coverOf(behind) };
  });
  const deeds = actions.map(({ name, cost, cures, behind }): FaultStep => {
    return { kind: "action", name, cost, ends: cures, repair: 0, ...coverOf(behind) };
  });
  return [...looks, ...deeds];
}

function answerOf(given: FaultInput, fault: FaultCase) {
  const { next, order, expectedCost, withoutTests, exact, bound } = findFault(fault);
  if (!Number.isFinite(expectedCost)) throw new InputError([NO_END]);
  return {
    next: nextOf(given, fault, next),
    order: order.map((index) => fault.steps[index]!.name),
    expectedCost,
    ...(withoutTests === undefined || !Number.isFinite(withoutTests) ? {} : { withoutTests }),
    exact,
    ...(bound === undefined ? {} : { bound }),
  };
}

function nextOf({ covers = [] }: FaultInput, { steps, tests }: FaultCase, next: FaultPlan["next"]) {
  if (next.kind === "fallback") return { kind: "fallback" as const, name: "fallback" };
  if (next.kind === "test") return { kind: "test" as const, name: tests[next.index]!.name };
  const { kind, name, cover } = steps[next.index]!;
  const opens = cover === undefined ? {} : { opens: covers[cover]!.name };
  return { kind: next.kind === "infer" ? ("repair" as const) : kind, name, ...opens };
}

const NO_END = {
  code: "QU-254",
  field: "fallback",
  got: "nothing",
  allowed: "a fallback, where no check or action is sure to end every cause",
  remedy: "Say what it costs to stop and take what always helps, such as the next pump.",
};
