import type { LifeRecord, Renewals } from "#reliability";
import { z } from "zod";
import { quantity } from "../quantity-field.ts";
import { levelIn, unitIn } from "./fields.ts";
import { refuse } from "./refuse.ts";

const age = (meaning: string) =>
  quantity("time", `${meaning}; bare numbers all in one unit of your own, or text`, {
    atLeast: 0,
    atMost: 1e12,
    isOwnUnit: true,
  });

const recordIn = z
  .strictObject({
    failedAt: age("Age at which it was seen to fail").optional(),
    goodAt: age("Age at which it was last found good").optional(),
    after: age("Found good at this age; 0 if never looked at before").optional(),
    before: age("Found failed at this age").nullable().optional(),
    count: z.int().min(1).max(1_000_000).optional().describe("So many alike [1]; 1 if left out"),
    group: z.string().max(80).optional().describe("To compare one sort with another"),
  })
  .describe("One life: failedAt, or goodAt, or after and before");

const renewalsIn = z.strictObject({
  id: z.string().max(80).describe("The place or kit"),
  renewedAt: z.array(age("Age at a renewal")).max(1000),
  until: age("Watched to this age"),
});

export const lifetimesIn = z
  .strictObject({
    records: z.array(recordIn).max(5000).optional().describe("Lives of things that fail once"),
    unit: unitIn("What bare ages count, to stand beside every figure: days, months, runs; not for ages in text"),
    model: z.enum(["weibull", "lognormal", "exponential"]).optional().describe("Law to fit; weibull if left out"),
    level: levelIn,
    lasts: z
      .strictObject({ from: age("Good at this age"), to: age("Still good at this age") })
      .optional()
      .describe("The chance that it lasts from one age to another"),
    prior: z
      .strictObject({ a: z.number().min(0).max(1e9).describe("Shape [1]"), b: age("Rate of the gamma, a time") })
      .optional()
      .describe("Gamma prior on the rate of an exponential; ends must be seen"),
    repeated: z.array(renewalsIn).max(2000).optional().describe("Things renewed again and again"),
  })
  .superRefine((given, context) => {
    for (const [i, record] of (given.records ?? []).entries()) checkRecord(record, ["records", i], context);
    for (const [i, { renewedAt, until }] of (given.repeated ?? []).entries())
      if (renewedAt.some((at) => at > until)) refuse(context, ["repeated", i, "until"], { ...LATE, got: until });
    if (given.lasts && given.lasts.to <= given.lasts.from)
      refuse(context, ["lasts", "to"], { ...BACKWARDS, got: given.lasts.to });
    if (given.records === undefined && given.repeated === undefined)
      refuse(context, ["records"], { ...SOMETHING, got: "nothing" });
    checkPrior(given, context);
  });

export type LifetimesInput = z.output<typeof lifetimesIn>;
type Given = z.output<typeof recordIn>;

function checkRecord(record: Given, path: readonly (string | number)[], context: z.RefinementCtx): void {
  const { failedAt, goodAt, after, before } = record;
  const kinds = [failedAt, goodAt, after ?? before ?? undefined].filter((one) => one !== undefined).length;
  if (kinds !== 1) refuse(context, path, { ...ONE_KIND, got: record });
  if (failedAt === 0) refuse(context, [...path, "failedAt"], { ...SOME_AGE, got: 0 });
  if (typeof before === "number" && before <= (after ?? 0))
    refuse(context, [...path, "before"], { ...BACKWARDS, got: before });
}

function checkPrior({ prior, model, records = [] }: LifetimesInput, context: z.RefinementCtx): void {
  if (!prior) return;
  if (model !== undefined && model !== "exponential") refuse(context, ["prior"], { ...OF_A_RATE, got: model });
  const between = records.findIndex(({ before }) => typeof before === "number");
  if (between >= 0) refuse(context, ["records", between, "before"], { ...SEEN, got: records[between]!.before });
}

/** Records as reliability takes them, those alike counted together. */
export function lifeRecords(records: LifetimesInput["records"]): readonly LifeRecord[] {
  const merged = new Map<string, LifeRecord>();
  for (const given of records ?? []) {
    const one = lifeRecord(given);
    const key = `${one.after} ${one.before} ${one.group ?? ""}`;
    merged.set(key, { ...one, count: one.count + (merged.get(key)?.count ?? 0) });
  }
  return [...merged.values()];
}

function lifeRecord({ failedAt, goodAt, after, before, count = 1, group }: Given): LifeRecord {
  const whose = { count, ...(group === undefined ? {} : { group }) };
  if (failedAt !== undefined) return { after: failedAt, before: failedAt, ...whose };
  if (goodAt !== undefined) return { after: goodAt, before: Infinity, ...whose };
  return { after: after ?? 0, before: before ?? Infinity, ...whose };
}

export function renewals(repeated: LifetimesInput["repeated"]): readonly Renewals[] {
  return (repeated ?? []).map(({ id, renewedAt, until }) => ({ id, renewedAt, until }));
}

const ONE_KIND = {
  code: "QU-220",
  allowed: "failedAt, or goodAt, or after and before",
  remedy: "Say one thing of each life: when it failed, when it was last good, or between which looks it failed.",
};
const SOME_AGE = {
  code: "QU-221",
  allowed: "more than 0",
  remedy: "What was bad when new has no life: give the age at which it failed.",
};
const BACKWARDS = {
  code: "QU-222",
  allowed: "later than it begins",
  remedy: "An interval ends after it begins: check the two ages.",
};
const LATE = {
  code: "QU-222",
  allowed: "no earlier than the last renewal",
  remedy: "Give the age to which it was watched.",
};
const SOMETHING = {
  code: "QU-223",
  allowed: "records or repeated",
  remedy: "Give what was seen of lives, or of renewals.",
};
const OF_A_RATE = {
  code: "QU-224",
  allowed: "exponential",
  remedy: "A prior is on the rate of an exponential: leave model out, or the prior.",
};
const SEEN = {
  code: "QU-224",
  allowed: "failedAt or goodAt, with a prior",
  remedy: "With a prior every end must have been seen: leave the prior out, or give failedAt.",
};
