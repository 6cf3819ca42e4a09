import {
  exponentialWithPrior,
  failedAge,
  failuresIn,
  fitLife,
  intervalCensored,
  isBetween,
  lastingOf,
  LEAST_FAILURES,
  logRank,
  meanCount,
  medianOf,
  productLimit,
  type LifeFit,
  type LifeModel,
  type LifeRecord,
  type SurvivalPoint,
} from "#reliability";
import type { z } from "zod";
import { defineQuestion } from "../question.ts";
import { LEVEL } from "./fields.ts";
import { lifeRecords, lifetimesIn, renewals, type LifetimesInput } from "./lifetimes-fields.ts";
import { checkTimeUnits, LIFE_TIMES, unitOfTimes } from "./time-units.ts";
import { sayChoice } from "./lifetimes-choice.ts";
import { fitAnswer, type fitOut, lifetimesOut } from "./lifetimes-out.ts";

const MODELS: readonly LifeModel[] = ["weibull", "lognormal", "exponential"];

export const lifetimesQuestion = defineQuestion({
  name: "lifetimes",
  summary: "How long things last, from when they were found good and found failed, with and without a law of life.",
  input: lifetimesIn,
  output: lifetimesOut,
  example: {
    records: [
      { after: "12 months", before: "24 months", count: 3 },
      { after: "24 months", before: "36 months", count: 5 },
      { failedAt: "30 months" },
      { goodAt: "12 months", count: 8 },
      { goodAt: "36 months", count: 14 },
    ],
    lasts: { from: "24 months", to: "36 months" },
  },
  check: (given) => checkTimeUnits(given, LIFE_TIMES),
  answer: (given, _context, asGiven) => {
    const records = lifeRecords(given.records);
    const level = given.level ?? LEVEL;
    const curve = curveOf(records, level);
    return {
      unit: unitOfTimes(asGiven, LIFE_TIMES, given.unit),
      ...(given.prior ? withPrior(given, records, given.prior) : withoutPrior(given, records)),
      survival: [...curve],
      median: medianOf(curve),
      ...groupsOf(given, records, level),
      ...(given.repeated ? { meanCount: [...meanCount(renewals(given.repeated), level)] } : {}),
    };
  },
});

function curveOf(records: readonly LifeRecord[], level: number): readonly SurvivalPoint[] {
  return records.some(isBetween) ? intervalCensored(records).curve : productLimit(records, level);
}

function withoutPrior(given: LifetimesInput, records: readonly LifeRecord[]) {
  const model = given.model ?? "weibull";
  const fits = MODELS.flatMap((one) => fitLife(records, one) ?? []);
  const models = fits.toSorted((one, other) => other.logLikelihood - one.logLikelihood).map(fitAnswer);
  const fit = fits.find((one) => one.model === model);
  const told = verdict(given, records, model, fits);
  return { ...told, ...(fit ? { failedBy: failedBy(given, fit) } : {}), models, ...(fit ? fromFit(given, fit) : {}) };
}

/** One in ten, and one in two. */
const SHARES = [0.1, 0.5];

function failedBy({ level = LEVEL }: LifetimesInput, fit: LifeFit) {
  return SHARES.map((share) => ({ share, ...failedAge(fit, share, level) }));
}

function fromFit({ lasts, level }: LifetimesInput, fit: LifeFit) {
  return {
    fit: fitAnswer(fit),
    tenPercent: failedAge(fit, 0.1, LEVEL).age,
    ...(lasts ? { lasts: lastingOf(fit, lasts.from, lasts.to, level ?? LEVEL) } : {}),
  };
}

function verdict(
  given: LifetimesInput,
  records: readonly LifeRecord[],
  model: LifeModel,
  fits: readonly LifeFit[],
): { readonly kind: "told" | "cannot-tell"; readonly because: string } {
  const failures = failuresIn(records);
  const lives = records.reduce((sum, { count }) => sum + count, 0);
  const base = `${failures} of ${lives} lives ended.`;
  const fit = fits.find((one) => one.model === model);
  if (fit) return { kind: "told", because: `${base} ${sayChoice(fit, fits, failures, given.model !== undefined)}` };
  if (given.records === undefined) return { kind: "told", because: "Renewals alone were given: no law is fitted." };
  const because = failures < LEAST_FAILURES[model] ? lackWords(model, failures, lives) : flatWords(model, records);
  return { kind: "cannot-tell", because: `${base} ${because}` };
}

/** What is missing for a law, and about how many further looks that takes at the share seen so far. */
function lackWords(model: LifeModel, failures: number, lives: number): string {
  const need = LEAST_FAILURES[model];
  const openings = Math.ceil(((need - failures) * (lives + 1)) / (failures + 0.5));
  return `It takes ${need} for ${nameOf(model)}: at the share seen so far about ${openings} more looks.`;
}

/** Why no law has a likelihood with a peak, and what it would take. */
function flatWords(model: LifeModel, records: readonly LifeRecord[]): string {
  const name = nameOf(model);
  if (records.some(isBetween))
    return `They do not settle ${name}: many such laws tell these looks equally well. It takes ends that can be told apart: an earlier look, looks in between, or the ages at which things failed.`;
  return `They do not settle ${name}: the ages at which things failed lie too close to say more. It takes failures at other ages.`;
}

function nameOf(model: LifeModel): string {
  return model === "exponential" ? "an exponential" : `a ${model}`;
}

function withPrior(given: LifetimesInput, records: readonly LifeRecord[], prior: { a: number; b: number }) {
  const failures = failuresIn(records);
  const time = records.reduce((sum, { after, count }) => sum + after * count, 0);
  if (prior.a + failures === 0 || prior.b + time === 0) {
    const because = "No failure, or no time, and a prior that says nothing: nothing settles a rate.";
    return { kind: "cannot-tell" as const, because, models: [] };
  }
  const { belief, logLikelihood } = exponentialWithPrior(records, prior.a, prior.b);
  const { rate } = belief;
  const fit: z.input<typeof fitOut> = {
    model: "exponential",
    shape: 1,
    scale: 1 / rate.mean,
    rate: rate.mean,
    logLikelihood,
    standardErrors: { logScale: 1 / Math.sqrt(prior.a + failures) },
  };
  const because = `${failures} failures, and a prior that weighs as much as ${Number(prior.a.toPrecision(2))}.`;
  return { kind: "told" as const, because, fit, models: [fit], rate, ...lastsWithPrior(given, belief) };
}

/** Limits of belief at nine in ten, whatever the level. */
function lastsWithPrior(
  { lasts }: LifetimesInput,
  { rate, noneOver }: ReturnType<typeof exponentialWithPrior>["belief"],
) {
  const tenPercent = -Math.log(0.9) / rate.mean;
  if (!lasts) return { tenPercent };
  const over = lasts.to - lasts.from;
  const [low, high] = [Math.exp(-rate.p95 * over), Math.exp(-rate.p05 * over)];
  return { tenPercent, lasts: { chance: noneOver(over), low, high } };
}

function groupsOf(given: LifetimesInput, records: readonly LifeRecord[], level: number) {
  const names = [...new Set(records.flatMap(({ group }) => group ?? []))];
  if (names.length === 0) return {};
  const groups = names.map((group) => {
    const own = records.filter((record) => record.group === group);
    const fit = fitLife(own, given.model ?? "weibull");
    return { group, ...(fit ? { fit: fitAnswer(fit) } : {}), median: medianOf(curveOf(own, level)) };
  });
  const compared =
    names.length < 2 || records.some(isBetween)
      ? undefined
      : logRank(
          records.filter(({ group }) => group !== undefined),
          names,
        );
  return { groups, ...(compared ? { logRank: compared } : {}) };
}
