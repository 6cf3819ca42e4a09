import type { Chances } from "./chances.ts";
import { emptyCloud, rowsOf, type Cloud } from "./cloud.ts";
import { CLOCK, SLIP, SLOSH, WELL } from "./reading.ts";
import { THOUGHT } from "./thought.ts";

/** A sounding, and where every way was how long before it [s], [m]: clocks are no better than sticks. */
export interface Sight {
  readonly level: number;
  readonly before: Float64Array;
  readonly seconds: number;
  /** Its number. */
  readonly reading: number;
}

/** Weighs every way by a sounding. */
export function weighBy(cloud: Cloud, { level, before, seconds, reading }: Sight): void {
  const slip = SLIP.chance / SLIP.within;
  const clock = CLOCK / Math.max(30, seconds);
  for (let n = 0; n < cloud.count; n += 1) {
    const now = cloud.level[n]!;
    const off = level - now;
    const well = cloud.stick[n]! ** 2 + (clock * (now - before[n]!)) ** 2;
    const seen = WELL.chance * bell(off, well) + SLOSH.chance * bell(off, well + SLOSH.spread ** 2);
    cloud.weight[n]! += Math.log(seen + slip);
    cloud.slips[reading]![n] = slip / (seen + slip);
  }
}

const ROOT = Math.sqrt(2 * Math.PI);

/** Of a normal with this variance. */
function bell(off: number, variance: number): number {
  return Math.exp((off * off) / (-2 * variance)) / (ROOT * Math.sqrt(variance));
}

/** Weights scaled to add up to one. */
export function weightsOf(cloud: Cloud): Float64Array {
  let most = Number.NEGATIVE_INFINITY;
  for (const log of cloud.weight) if (log > most) most = log;
  let sum = 0;
  const weights = new Float64Array(cloud.count);
  for (let n = 0; n < cloud.count; n += 1) sum += weights[n] = Math.exp(cloud.weight[n]! - most);
  for (let n = 0; n < cloud.count; n += 1) weights[n]! /= sum;
  return weights;
}

/** How many equally weighted ways the cloud is worth. */
export function effectiveOf(weights: Float64Array): number {
  let squares = 0;
  for (const weight of weights) squares += weight * weight;
  return 1 / squares;
}

/** So many ways, equally weighted, by their weights. */
export function drawAnew(cloud: Cloud, weights: Float64Array, count: number, chances: Chances): Cloud {
  return pickAnew(cloud, weights, count, chances).cloud;
}

/** The same, with which way each was. */
export function pickAnew(
  cloud: Cloud,
  weights: Float64Array,
  count: number,
  chances: Chances,
): { readonly cloud: Cloud; readonly picks: Int32Array } {
  const next = emptyCloud(count, cloud.shares.length, cloud.slips.length);
  const [from, to] = [rowsOf(cloud), rowsOf(next)];
  const picks = picksBy(weights, count, chances.even());
  from.forEach((row, r) => {
    const copy = to[r]!;
    for (let k = 0; k < count; k += 1) copy[k] = row[picks[k]!]!;
  });
  return { cloud: next, picks };
}

/** Places at even steps of the summed weights, from a first one. */
function picksBy(weights: Float64Array, count: number, first: number): Int32Array {
  const picks = new Int32Array(count);
  let [place, sum] = [0, weights[0]!];
  for (let k = 0; k < count; k += 1) {
    const target = (k + first) / count;
    while (sum < target && place < weights.length - 1) sum += weights[(place += 1)]!;
    picks[k] = place;
  }
  return picks;
}

/** Part of their own spread by which ways drawn anew are moved apart. */
const APART = 0.15;

/**
 * Moves ways that were drawn from one and the same apart again, in what never changes in them: middle and spread of each
 * stay as they are.
 *
 * @source Liu & West, Combined parameter and state estimation, in Sequential Monte Carlo Methods in Practice (2001)
 *   (FROM MEMORY)
 */
export function loosen({ height, outside, widens, eases, stick }: Cloud, chances: Chances): void {
  loosenRow(height, [0, 1], chances);
  loosenRow(outside, [0.05, Number.POSITIVE_INFINITY], chances);
  loosenRow(widens, [THOUGHT.widens.from, THOUGHT.widens.to], chances);
  loosenRow(eases, [0, THOUGHT.eases], chances);
  loosenRow(stick, [0.003, Number.POSITIVE_INFINITY], chances);
}

function loosenRow(row: Float64Array, [least, most]: readonly [number, number], chances: Chances): void {
  let [sum, squares] = [0, 0];
  for (const one of row) sum += one;
  const middle = sum / row.length;
  for (const one of row) squares += (one - middle) ** 2;
  const spread = Math.sqrt(squares / row.length);
  const kept = Math.sqrt(1 - APART ** 2);
  for (let n = 0; n < row.length; n += 1) {
    const moved = middle + kept * (row[n]! - middle) + APART * spread * chances.normal();
    row[n] = Math.min(most, Math.max(least, moved));
  }
}
