import { sum } from "#base";
import {
  fitLife,
  lastingByLaws,
  rateOf,
  type Lasting,
  type LifeFit,
  type LifeModel,
  type LifeRecord,
} from "#reliability";
import type { LifeSeen } from "./lives-seen.ts";

/** How long a thing lasts, as far as looks tell. Ages in days. */
export interface LifeTold {
  readonly lives: number;
  /** Of these, found bad. */
  readonly ended: number;
  /** Lost or taken, at whatever age: counted as good when last seen, or left out where nobody had looked. */
  readonly lost: number;
  /** Found bad at the first look, and nobody wrote down when they were new: left out, as they may have been bad when they came. */
  readonly undated: number;
  readonly looks: number;
  /**
   * Time over which they were seen to be good, half of the time between where it failed between two looks; of those of no known
   * age, from their first look on [d].
   */
  readonly watched: number;
  /** Lives found good at or beyond the span that was asked for. */
  readonly beyond: number;
  /** Oldest that anybody looked at, good or bad [d]. */
  readonly oldest: number;
  /** All laws that could be fitted, likeliest first; empty where too few ended. */
  readonly fits: readonly LifeFit[];
  /** That one which is new lasts the span. */
  readonly lasts: Lasting;
  readonly verdict: LifeVerdict;
}

export type LifeVerdict =
  /** Even at best it does not last its span nine times in ten. */
  | { readonly kind: "shorter" }
  /** Even at worst it lasts half as long again. */
  | { readonly kind: "longer" }
  | { readonly kind: "lasts" }
  /** About so many more looks would tell, if as much is found as so far; {@link MOST_LOOKS} where more. */
  | { readonly kind: "cannot-tell"; readonly looks: number };

const MODELS: readonly LifeModel[] = ["weibull", "lognormal", "exponential"];
/** A thing is to last its span so often: judgement [1]. */
const WANTED = 0.9;
/** The range that is told. */
const LEVEL = 0.9;
/** Fewer ends than this are told at a steady rate: limits of a law with two figures are too narrow then. */
export const LEAST_ENDED = 5;
/** So many must have been seen older than their span before a longer one is told. */
const OLDER = 10;
/** More looks than this are never waited for. */
export const MOST_LOOKS = 4000;

/**
 * What looks at lives tell of one span: a stated life, or the time from one opening to the next.
 *
 * From 5 ends on by Weibull and lognormal, each as likely as the looks make it; below by a steady rate, gamma(1/2 + ended, watched).
 *
 * @param all - as `livesSeen` has them
 * @param span - more than 0 [d]
 * @param mayBeLonger - true where the span is a life that the pattern states and that may ever be extended
 * @source Meeker & Escobar 1998; rates: Jeffreys' prior, NASA/SP-2009-569 (both FROM MEMORY); thresholds are judgement
 */
export function lifeTold(all: readonly LifeSeen[], span: number, mayBeLonger: boolean): LifeTold {
  const lives = livesCounted(all);
  const records = lifeRecordsOf(lives);
  const ended = lives.filter(({ before }) => before < Infinity).length;
  const fits = MODELS.flatMap((model) => fitLife(records, model) ?? []);
  const counts = {
    lives: lives.length,
    ended,
    lost: all.filter(({ lost }) => lost).length,
    undated: all.filter(isBadUndated).length,
    looks: sum(lives.map(({ looks }) => looks)),
    watched: watchedOf(lives),
  };
  const beyond = lives.filter(({ after }) => after >= span * 0.999).length;
  const oldest = Math.max(0, ...lives.map(({ after, before }) => (before === Infinity ? after : before)));
  const told = {
    ...counts,
    beyond,
    oldest,
    fits: fits.toSorted((one, other) => other.logLikelihood - one.logLikelihood),
  };
  const verdict = verdictOf(told, span, mayBeLonger && beyond >= OLDER);
  return { ...told, lasts: lastsTo(told, 0, span), verdict };
}

/** Without those lost before anybody looked, and those bad at their first look at an age that is not on record. */
export function livesCounted(all: readonly LifeSeen[]): readonly LifeSeen[] {
  return all.filter((one) => (!one.lost || one.looks > 0) && !isBadUndated(one));
}

/** Bad at its first look, at an age that nobody knows. */
function isBadUndated({ undated, before }: LifeSeen): boolean {
  return undated !== undefined && before <= undated.firstLook;
}

/**
 * Records as laws of life are fitted to, ages in whole days and those alike counted together. What was bad on the very day on
 * which it was last good counts as bad within that day.
 */
export function lifeRecordsOf(lives: readonly LifeSeen[]): readonly LifeRecord[] {
  const merged = new Map<string, LifeRecord>();
  for (const life of lives) {
    const after = Math.round(life.after);
    const before = Math.max(after + 1, Math.round(life.before));
    const count = (merged.get(`${after} ${before}`)?.count ?? 0) + 1;
    merged.set(`${after} ${before}`, { after, before, count });
  }
  return [...merged.values()];
}

/** Shape and scale of a law with their ranges of nine in ten, from the standard errors of their logarithms. */
export function rangesOf({ shape, scale, standardErrors: { logShape, logScale } }: LifeFit) {
  return { scale: range(scale, logScale), ...(logShape !== undefined && { shape: range(shape, logShape) }) };
}

function range(value: number, error: number): readonly [number, number] {
  return [value * Math.exp(-Z * error), value * Math.exp(Z * error)];
}

/** Of the standard normal: nineteen in twenty lie below. */
const Z = 1.644_853_627;

type Counts = Pick<LifeTold, "ended" | "looks" | "watched" | "fits">;

/**
 * Chance that what is good at one age is still good at another, with its range of nine in ten.
 *
 * @param told - by looks
 * @param from - age now [d]
 * @param to - later age [d]
 */
export function lastsTo({ ended, watched, fits }: Omit<Counts, "looks">, from: number, to: number): Lasting {
  const byLaws = ended >= LEAST_ENDED ? lastingByLaws(fits, from, to, LEVEL) : undefined;
  return byLaws ?? atSteadyRate(ended, watched, to - from);
}

/**
 * Without a failure the high end is 1: the exact lower limit of the rate is 0, whatever the prior says.
 *
 * @source that limit: Garwood, Biometrika 28 (1936), FROM MEMORY
 */
function atSteadyRate(ended: number, watched: number, over: number): Lasting {
  if (watched <= 0) return { chance: 0.5, low: 0, high: 1 };
  const { rate } = rateOf({ failures: ended, time: watched }, { kind: "gamma", a: 0.5, b: 0 });
  const high = ended === 0 ? 1 : Math.exp(-rate.p05 * over);
  return { chance: Math.exp(-rate.p50 * over), low: Math.exp(-rate.p95 * over), high };
}

function verdictOf(told: Counts, span: number, mayBeLonger: boolean): LifeVerdict {
  const lasts = lastsTo(told, 0, span);
  if (lasts.high < WANTED) return { kind: "shorter" };
  if (mayBeLonger && lastsTo(told, 0, 1.5 * span).low >= WANTED) return { kind: "longer" };
  if (lasts.low >= WANTED) return { kind: "lasts" };
  return { kind: "cannot-tell", looks: looksToTell(told, span) };
}

/** So many more looks, with as much found in them as so far, until a steady rate would tell. */
function looksToTell({ ended, looks, watched }: Counts, span: number): number {
  const isTold = (more: number) => {
    const grown = 1 + more / Math.max(1, looks);
    const { low, high } = atSteadyRate(ended * grown, Math.max(watched, span / 2) * grown, span);
    return high < WANTED || low >= WANTED;
  };
  let more = 1;
  while (more < MOST_LOOKS && !isTold(more)) more += Math.max(1, Math.floor(more / 20));
  return Math.min(more, MOST_LOOKS);
}

function watchedOf(lives: readonly LifeSeen[]): number {
  return sum(lives.map((one) => goodUntil(one) - (one.undated?.firstLook ?? 0)));
}

function goodUntil({ after, before }: LifeSeen): number {
  return before === Infinity ? after : (after + before) / 2;
}
