import { firstOf, numberAt } from "#base";
import { mixBits, normalQuantile, sobolPoints, weightedQuantiles } from "#numerics";
import { questionsFor } from "./kits-needed-ask.ts";
import {
  coefficientOf,
  COEFFICIENT,
  drawBoat,
  DRAWS,
  headAt,
  HOLE,
  holeScale,
  levelAt,
  lieAfter,
  SIZE,
  TIGHT,
  strengthOf,
  surfaceAt,
  type DrawnBoat,
  type HoleScale,
} from "./kits-needed-boat.ts";
import { fitOfFall } from "./kits-needed-fall.ts";
import { fitOfRise, toldWater, type CallForHelp, type ToldWater } from "./kits-needed-call.ts";
import { chancesToMove, moveAtEnds, ordered, type Ordered } from "./kits-needed-kits.ts";
import { planKits, SURE, type KitsChance, type KitsPlan } from "./kits-needed-plan.ts";
import {
  arrivalSpread,
  chanceSpread,
  EARLY,
  LATE,
  LATENESS,
  meanWithError,
  weightedMean,
  type Spread,
} from "./kits-needed-spread.ts";
import type { FiveQuantiles } from "../soundings/sounding-forecast.ts";

export interface KitsNeeded {
  /** Inflow as she lies when last told of [m³/s]. */
  readonly inflow: FiveQuantiles;
  /** The same with the water below the hole and a discharge coefficient of 1, 95 % [m³/s]. */
  readonly noWorseThan: number;
  /** Chances with 1, 2, … kits, in the order in which they are taken. */
  readonly byKits: readonly KitsChance[];
  /** Fewest kits with at least nine chances in ten, absent where none of those looked at has them. */
  readonly forHolding?: number;
  readonly forGaining?: number;
  /** The same for holding with the hole halved. */
  readonly forHoldingPatched?: number;
  readonly plan: KitsPlan;
  /** The rise told is more than the hole told can give: then its size was left out, for there is more than that. */
  readonly riseBeyondHole?: true;
  /** Chance that her deck edge is not under when the first kit pumps. */
  readonly afloatOnArrival: number;
  /** Between what it lies nine times in ten, by how long it takes to her and what the draws leave open. */
  readonly afloatSpread: Spread;
  /** Until the first kit pumps, nine times in ten [s]. */
  readonly arrivalSpread: Spread;
  readonly cansPerKit: number;
  /** What to ask the skipper, the answer that narrows this most first. */
  readonly ask: readonly string[];
}

const POINTS = 4096;
const MOST_KITS = 6;
/** Gaining means a tenth and a half more out than in: a level that falls visibly. */
const GAINING = 1.15;

/**
 * How many kits to take, before launching, from what little is known.
 *
 * Boats that fit kind and length, each with a hole of a size and height thought likely before any sounding, count by how
 * well they fit the rise that was told. Each is followed, unpumped, until the first kit pumps. Kits hold where together
 * they move the inflow then, gain where they move 1.15 times what comes in with the water down to the hole. Her own pumps
 * are left out.
 *
 * @param call - what is known, SI units; what is left out is not known
 * @returns inflow, chances by number of kits, plan, fuel, and what to ask next
 * @range boats of 3 to 40 m; one hole
 * @source orifice: see `flowThrough`; hole: `likelyPrior`; share of a pump: `THOUGHT`; proportions and other spreads: this program's
 *   judgement, docs/methods/kits-needed.md
 * @example needKits({ length: 10, kind: "motor boat", holeDiameter: 0.05, arrival: 1200, usual: { flow: 0.004, starts: 0.9 },
 *   share: runningShareAt, onScene: 7200, burn: 4e-7, fuelInKit: 0.0036, can: 0.005 }).forHolding // 3
 */
export function needKits(call: CallForHelp): KitsNeeded {
  const { holeDiameter, ...rest } = call;
  const cases = drawCases(call);
  if (holeDiameter !== undefined && !fitsRise(cases, call)) return { ...needKits(rest), riseBeyondHole: true };
  const byKits = rangedOf(cases, call);
  const fewest = (key: "holding" | "gaining" | "holdingPatched") => byKits.find((row) => row[key] >= SURE)?.kits;
  const wanted = {
    forHolding: fewest("holding"),
    forGaining: fewest("gaining"),
    forHoldingPatched: fewest("holdingPatched"),
  };
  const known = Object.entries(wanted).filter(([, count]) => count !== undefined);
  return {
    inflow: weightedSpread(cases.inflow, cases.weights),
    noWorseThan: firstOf(weightedQuantiles(cases.worst, cases.weights, [0.95])),
    byKits,
    ...(Object.fromEntries(known) as Partial<typeof wanted> as { forHolding?: number }),
    plan: planKits(byKits, call.carries ?? MOST_KITS),
    ...afloatOf(cases),
    arrivalSpread: arrivalSpread(call.arrival),
    cansPerKit: Math.max(0, Math.ceil((call.onScene * call.burn - call.fuelInKit) / call.can - 1e-9)),
    ask: questionsFor(call),
  };
}

/** False where nineteen in twenty of the boats with the hole told, whatever else fits, rise slower than was told. */
function fitsRise({ rates, before }: Cases, call: CallForHelp): boolean {
  const { rise } = toldWater(call);
  if (!rise) return true;
  const fastest = firstOf(weightedQuantiles(rates, before, [0.95]));
  return rise.rate - 2 * rise.doubt < fastest;
}

/** What comes of each draw [m³/s], and how much it counts; weights add up to 1. */
interface Cases {
  readonly weights: Float64Array;
  /** The same before the rise that was told. */
  readonly before: Float64Array;
  readonly inflow: Float64Array;
  readonly worst: Float64Array;
  /** Rise then [m/s]. */
  readonly rates: Float64Array;
  /** When the first kit pumps, and with the water then down to the hole. */
  readonly later: Float64Array;
  readonly lowered: Float64Array;
  readonly afloat: Float64Array;
  /** Afloat only where she is reached early, and lost only where late: of every fourth, for all four. */
  readonly gainedEarly: Float64Array;
  readonly goneLate: Float64Array;
}

function drawCases(call: CallForHelp): Cases {
  const points = sobolPoints(POINTS, DRAWS, 3);
  const blank = () => new Float64Array(POINTS);
  const [weights, before, inflow, worst, rates] = [blank(), blank(), blank(), blank(), blank()];
  const ahead = { later: blank(), lowered: blank(), afloat: blank(), gainedEarly: blank(), goneLate: blank() };
  const cases: Cases = { weights, before, inflow, worst, rates, ...ahead };
  const told = { call, water: toldWater(call), scale: holeScale(call.holeDiameter) };
  const z = new Float64Array(DRAWS);
  for (let n = 0; n < POINTS; n += 1) {
    for (let d = 0; d < DRAWS; d += 1)
      z[d] =
        d === SIZE || d === TIGHT ? numberAt(points, n * DRAWS + d) : normalQuantile(numberAt(points, n * DRAWS + d));
    drawCase(told, z, n, cases);
  }
  return { ...cases, weights: weighted(weights), before: weighted(before) };
}

interface Told {
  readonly call: CallForHelp;
  readonly water: ToldWater;
  readonly scale: HoleScale;
}

function drawCase({ call, water, scale }: Told, z: Float64Array, n: number, cases: Cases): void {
  const { told: boat, later: open } = drawBoat(call, water, z);
  const coefficient = coefficientOf(numberAt(z, COEFFICIENT));
  const level = levelAt(boat, boat.water);
  const now = headAt(boat, boat.water, level);
  const { place, weight } = placeHole({ boat, water, scale, coefficient, now, level }, numberAt(z, HOLE), n);
  const area = scale.at(place);
  const strength = strengthOf(area, coefficient, scale.most);
  const { water: then, isLost } = lieAfter(open, strength, water.ago + call.arrival * latenessOf(n));
  cases.inflow[n] = strength * Math.sqrt(now);
  cases.rates[n] = numberAt(cases.inflow, n) / surfaceAt(boat, level);
  cases.before[n] = weight;
  cases.weights[n] =
    weight + fitOf(water, { inflow: numberAt(cases.inflow, n), surface: surfaceAt(boat, level), draw: n });
  cases.worst[n] = strengthOf(area, 1, scale.most) * Math.sqrt(headAt(boat, boat.water, 0));
  cases.later[n] = strength * Math.sqrt(headAt(open, then, levelAt(open, then)));
  cases.lowered[n] = strength * Math.sqrt(headAt(open, then, 0));
  cases.afloat[n] = isLost ? 0 : 1;
  if (n % EVERY !== 0) return;
  const isLostAt = (lateness: number) => lieAfter(open, strength, water.ago + call.arrival * lateness).isLost;
  cases.gainedEarly[n] = isLost && !isLostAt(EARLY) ? EVERY : 0;
  cases.goneLate[n] = !isLost && isLostAt(LATE) ? EVERY : 0;
}

/** Draws of which one is followed to an early and a late hour too: to follow all is not worth the wait. */
const EVERY = 4;

/** Factor on the time to her, a draw of its own. */
function latenessOf(n: number): number {
  return Math.exp(LATENESS * normalQuantile(((mixBits(n + 7919) >>> 0) + 0.5) / 2 ** 32));
}

function fitOf({ rise }: ToldWater, boat: Parameters<typeof fitOfFall>[0]): number {
  if (!rise) return 0;
  return rise.rate < 0 ? fitOfFall(boat, rise) : fitOfRise(boat.inflow / boat.surface, rise);
}

interface Placing {
  readonly boat: DrawnBoat;
  readonly water: ToldWater;
  readonly scale: HoleScale;
  readonly coefficient: number;
  readonly now: number;
  readonly level: number;
}

/** Spread of the holes drawn around the one that explains the rise [standard normals of the hole]. */
const NEAR = 0.45;

/**
 * Where the hole is looked for. Where a rise was told every other draw looks near the hole that explains it, since few of
 * the holes there may be do; its weight makes up for that.
 */
function placeHole(given: Placing, z: number, n: number): { readonly place: number; readonly weight: number } {
  const { water, boat, scale, coefficient, now, level } = given;
  if (!water.rise || water.rise.rate < 0 || now <= 0) return { place: z, weight: 0 };
  const rate = Math.max(water.rise.rate, water.rise.doubt / 4);
  const area =
    (rate * surfaceAt(boat, level)) / (Math.sqrt(now) * strengthOf(1, coefficient, Number.POSITIVE_INFINITY));
  const centre = Math.max(-5, Math.min(5, scale.place(area)));
  const place = (mixBits(n + 1) & 1) === 0 ? z : centre + NEAR * z;
  const prior = Math.exp(-(place ** 2) / 2);
  const near = Math.exp(-(((place - centre) / NEAR) ** 2) / 2) / NEAR;
  return { place, weight: -(place ** 2) / 2 - Math.log((prior + near) / 2) };
}

/** Weights that add up to 1, from their logarithms. */
function weighted(logs: Float64Array): Float64Array {
  const most = logs.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
  const raw = logs.map((log) => Math.exp(log - most));
  const sum = raw.reduce((a, b) => a + b, 0);
  return raw.map((weight) => weight / sum);
}

function afloatOf({ weights, afloat, gainedEarly, goneLate }: Cases) {
  const { mean, error } = meanWithError(afloat, weights);
  const ends = [mean - weightedMean(goneLate, weights), mean + weightedMean(gainedEarly, weights)] as const;
  return { afloatOnArrival: mean, afloatSpread: chanceSpread(mean, ends, error) };
}

function weightedSpread(values: Float64Array, weights: Float64Array): FiveQuantiles {
  const [p05, p25, p50, p75, p95] = weightedQuantiles(values, weights, [0.05, 0.25, 0.5, 0.75, 0.95]);
  return { p05: p05!, p25: p25!, p50: p50!, p75: p75!, p95: p95! };
}

/** Chances with their ranges: kits that start as seldom, and as often, as nine times in ten they may. */
function rangedOf({ weights, later, lowered }: Cases, call: CallForHelp): readonly KitsChance[] {
  const kits = Array.from({ length: MOST_KITS }, (_, k) => call.kits?.[k] ?? call.usual);
  const { told, low, high } = moveAtEnds(kits, call.share);
  const flows = { later: ordered(later), lowered: ordered(lowered) };
  return told.map((sorted, k) => rowOf(weights, flows, k + 1, [sorted, low[k]!, high[k]!]));
}

type AtEnds = readonly [told: Float64Array, low: Float64Array, high: Float64Array];

function rowOf(
  weights: Float64Array,
  { later, lowered }: Readonly<Record<"later" | "lowered", Ordered>>,
  kits: number,
  ends: AtEnds,
): KitsChance {
  const holding = rangeOf(weights, later, 1, ends);
  const gaining = rangeOf(weights, lowered, GAINING, ends);
  const patched = rangeOf(weights, later, 0.5, ends);
  return {
    kits,
    holding: holding.chance,
    gaining: gaining.chance,
    holdingPatched: patched.chance,
    spreads: { holding: holding.spread, gaining: gaining.spread, holdingPatched: patched.spread },
  };
}

function rangeOf(weights: Float64Array, flows: Ordered, factor: number, [told, low, high]: AtEnds) {
  const { mean, error } = meanWithError(chancesToMove(told, flows, factor), weights);
  const [least, most] = [low, high].map((sorted) => weightedMean(chancesToMove(sorted, flows, factor), weights));
  const nights = (mean * (1 - mean)) / told.length;
  return { chance: mean, spread: chanceSpread(mean, [least!, most!], Math.sqrt(error * error + nights)) };
}
