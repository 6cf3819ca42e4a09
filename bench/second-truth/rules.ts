// Two plain rules that need no boat: a straight line through the last two soundings, and one through the last four.
import { AHEAD, type Chances, type Five } from "./sheet.ts";

/** A sounding as it is written. */
export interface Read {
  readonly at: number;
  readonly level: number;
}

/** A level to come, as a normal. */
export interface RuleForecast {
  readonly levels: readonly Five[];
  readonly chances: Chances;
}

/** What a stick is good to [m], and how much of what a line adds it is wrong by: those with which both rules do best. */
const STICK = 0.015;
const BENDS = 0.8;
/** Held: within so much after an hour [m]. */
const HELD = 0.03;
/** 5, 25, 50, 75, 95 in 100 of a standard normal. */
const PLACES = [-1.6448536, -0.6744898, 0, 0.6744898, 1.6448536] as const;

/**
 * Carries the least-squares line through the last few soundings on.
 *
 * @param readings - as written, in order; the last is now
 * @param count - of soundings taken; fewer where there are no more
 * @returns undefined with fewer than two
 */
export function carryLine(readings: readonly Read[], count: number): RuleForecast | undefined {
  const last = readings.slice(-count);
  if (last.length < 2) return undefined;
  const line = fitLine(last);
  const now = last.at(-1)!.at;
  const ahead = AHEAD.map((time) => aheadOf(line, now, time));
  const hour = ahead.at(-1)!;
  const here = line.level + line.rise * (now - line.middle);
  return {
    levels: ahead.map(({ level, spread }) => PLACES.map((z) => Math.max(0, level + z * spread)) as unknown as Five),
    chances: chancesOf((hour.level - here) / hour.spread, HELD / hour.spread),
  };
}

interface Line {
  readonly middle: number;
  readonly level: number;
  readonly rise: number;
  readonly levelSpread: number;
  readonly riseSpread: number;
}

function meanOf(values: readonly number[]): number {
  return values.reduce((sum, one) => sum + one, 0) / values.length;
}

function fitLine(points: readonly Read[]): Line {
  const middle = meanOf(points.map(({ at }) => at));
  const level = meanOf(points.map((one) => one.level));
  const wide = points.reduce((sum, { at }) => sum + (at - middle) ** 2, 0);
  const rise = points.reduce((sum, one) => sum + (one.at - middle) * (one.level - level), 0) / wide;
  return { middle, level, rise, levelSpread: STICK / Math.sqrt(points.length), riseSpread: STICK / Math.sqrt(wide) };
}

function aheadOf(line: Line, now: number, time: number): { readonly level: number; readonly spread: number } {
  const far = now + time - line.middle;
  const spread = Math.hypot(line.levelSpread, line.riseSpread * far, BENDS * line.rise * time);
  return { level: line.level + line.rise * far, spread };
}

function chancesOf(change: number, held: number): Chances {
  const losing = 1 - below(held - change);
  const gaining = below(-held - change);
  return { gaining, holding: Math.max(0, 1 - losing - gaining), losing };
}

/**
 * Chance that a standard normal is below z.
 *
 * @source Abramowitz and Stegun, Handbook of Mathematical Functions, 26.2.17; off by 7.5e-8 at most
 */
export function below(z: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(z));
  const sum = t * (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  const tail = (Math.exp(-(z ** 2) / 2) / Math.sqrt(2 * Math.PI)) * sum;
  return z > 0 ? 1 - tail : tail;
}
