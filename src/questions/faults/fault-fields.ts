import { sayCount } from "#base";
import { z } from "zod";
import { share } from "../reliability/fields.ts";
import { refuse } from "../reliability/refuse.ts";

const MOST = 200;
/** How far chances may be from adding up to 1. */
const ROUNDING = 1e-6;

const name = z.string().min(1).max(120);
const cost = z.number().min(0).max(1e9).describe("[any one unit of cost, such as minutes]");
const byCause = (meaning: string) => z.array(share(meaning)).max(MOST);

export const faultIn = z
  .strictObject({
    causes: z
      .array(z.strictObject({ name, chance: share("Chance that this is it") }))
      .min(1)
      .max(MOST)
      .describe("One of them is the cause; chances add up to 1"),
    checks: z
      .array(
        z.strictObject({
          name,
          cost,
          of: z.union([name, z.array(name).min(1).max(MOST)]).describe("Cause or causes that it finds"),
          detects: share("Chance that it finds the cause where that is it; 1 if left out").optional(),
          repair: cost.optional().describe("Of mending what it found [same unit]; none if left out"),
          behind: name.optional().describe("Cover to open first"),
        }),
      )
      .max(MOST)
      .optional()
      .describe("Looks that find a cause, which is then mended"),
    actions: z
      .array(z.strictObject({ name, cost, cures: byCause("Chance that it cures, by cause"), behind: name.optional() }))
      .max(MOST)
      .optional()
      .describe("Things done, after which it is tried again"),
    tests: z
      .array(z.strictObject({ name, cost, positive: byCause("Chance of a yes, by cause") }))
      .max(100)
      .optional()
      .describe("Looks that end nothing but tell causes apart"),
    covers: z.array(z.strictObject({ name, cost })).max(50).optional().describe("Opened once, then open"),
    fallback: z.strictObject({ cost }).optional().describe("What always helps: stop, and take the next pump"),
    lastIsInferred: z.boolean().optional().describe("True where the last cause left is mended without a look"),
  })
  .superRefine((given, context) => {
    checkChances(given.causes, context);
    const causes = given.causes.map((cause) => cause.name);
    const covers = (given.covers ?? []).map((cover) => cover.name);
    for (const [i, check] of (given.checks ?? []).entries()) {
      const unknown = [check.of].flat().find((one) => !causes.includes(one));
      if (unknown !== undefined) refuse(context, ["checks", i, "of"], { ...nameOf(causes), got: unknown });
      if (check.behind !== undefined && !covers.includes(check.behind))
        refuse(context, ["checks", i, "behind"], { ...nameOf(covers), got: check.behind });
    }
    for (const [i, { cures, behind }] of (given.actions ?? []).entries()) {
      if (cures.length !== causes.length) refuse(context, ["actions", i, "cures"], lengthOf(cures, causes));
      if (behind !== undefined && !covers.includes(behind))
        refuse(context, ["actions", i, "behind"], { ...nameOf(covers), got: behind });
    }
    for (const [i, { positive }] of (given.tests ?? []).entries())
      if (positive.length !== causes.length) refuse(context, ["tests", i, "positive"], lengthOf(positive, causes));
    const doable = [...(given.checks ?? []), ...(given.actions ?? []), ...(given.tests ?? [])];
    for (const list of [given.causes, doable, given.covers ?? []]) checkNames(list, context);
  });

export type FaultInput = z.output<typeof faultIn>;

function checkChances(causes: readonly { readonly chance: number }[], context: z.RefinementCtx): void {
  const whole = causes.reduce((sum, { chance }) => sum + chance, 0);
  if (Math.abs(whole - 1) <= ROUNDING) return;
  refuse(context, ["causes"], {
    code: "QU-250",
    got: `chances that add up to ${Number(whole.toPrecision(7))}`,
    allowed: "chances that add up to 1",
    remedy: "Exactly one of them is the cause: divide every chance by their sum, or add a cause for anything else.",
  });
}

function checkNames(list: readonly { readonly name: string }[], context: z.RefinementCtx): void {
  const names = list.map((one) => one.name);
  const twice = names.find((one, i) => names.indexOf(one) !== i);
  if (twice === undefined) return;
  refuse(context, [], {
    code: "QU-251",
    got: twice,
    allowed: "each name once",
    remedy: "Give every cause, everything to do and every cover a name of its own.",
  });
}

function nameOf(names: readonly string[]) {
  const allowed = names.length === 0 ? "none: there are none" : names.slice(0, 8).join(", ");
  return { code: "QU-252", allowed, remedy: "Use a name from the list it refers to." };
}

function lengthOf(given: readonly number[], causes: readonly string[]) {
  return {
    code: "QU-253",
    got: sayCount(given.length, "chance"),
    allowed: `${sayCount(causes.length, "chance")}, one for every cause in order`,
    remedy: "Give one chance for every cause, 0 where it does nothing.",
  };
}
