import { answerFrom, type Sounding } from "../answer/answer.ts";
import type { Present } from "../soundings/sounding-forecast.ts";
import type { Misfit } from "../soundings/sounding-misfit.ts";
import { ALL_PLACES, DELIVERY, START_LEVEL, STRENGTH } from "../soundings/sounding-model.ts";
import { believeSheet, flowsAt, type SheetBelief, type SheetCase } from "./belief.ts";
import { chancesFrom, type Chances } from "./chances.ts";
import type { Cloud } from "./cloud.ts";
import { fill } from "./motion.ts";
import { pickAnew } from "./sight.ts";
import { drawShare, THOUGHT } from "./thought.ts";

/** What a sheet says of one space: as soundings do, and what each pump is thought to move. */
export interface SheetReading extends Sounding {
  readonly pumps: readonly PumpBelief[];
}

/** Share of the stated delivery that a pump moves, and the chance that it moves next to nothing, or little. */
export interface PumpBelief {
  readonly p05: number;
  readonly p50: number;
  readonly p95: number;
  readonly dead: number;
  readonly weak: number;
}

/** Ways followed onward. */
const FOLLOWED = 1024;
/** A share below this is next to nothing, below that little. */
const DEAD = 0.15;
const WEAK = 0.6;
/** How far the hole and the pumps may wander over what is forecast: log spreads. */
const ONWARD = { hole: 0.12, pump: 0.06 };
const SEED = 0xf01;
/** Error of a sounding on scene, for what the last ones show by themselves [m]. */
const NOISE = 0.02;

/**
 * What a sheet says: one belief for all of it, carried to now and forecast.
 *
 * @param given - the sheet, SI units
 * @param gains - what one more kit would move, where it is known [m³/s]
 * @returns as `readSoundings`, with the pumps apart; the same for the same sheet, always
 * @range see `believeSheet`
 * @source DERIVED: docs/methods/soundings.md, "On scene"
 */
export function readSheet(given: SheetCase, gains: { readonly secondPump?: number } = {}): SheetReading {
  const belief = believeSheet(given);
  const present = presentOf(given, belief, chancesFrom(SEED));
  const { readings, runs } = given;
  const answer = answerFrom({
    present,
    pumped: flowsAt(given, present.now).reduce((sum, flow) => sum + flow, 0),
    readings,
    pumping: runs,
    noise: NOISE,
    misfit: misfitOf(given, belief),
    effective: belief.effective,
    rounds: 1,
    gains,
    telling: tellingOf(given),
    ...slipOf(belief),
  });
  return { ...answer, pumps: belief.cloud.shares.map(pumpOf) };
}

/** The likeliest slip before the last sounding. */
function slipOf({ slips }: SheetBelief): { readonly slip?: number } {
  const before = slips.slice(0, -1);
  const worst = before.reduce((most, one, k) => (one > before[most]! ? k : most), 0);
  return (before[worst] ?? 0) > TOLD ? { slip: worst } : {};
}

/** Soundings since the hole was last patched. */
function tellingOf({ readings, patches }: SheetCase): number {
  const since = patches.at(-1)?.at ?? Number.NEGATIVE_INFINITY;
  return readings.filter(({ at }) => at >= since).length;
}

function pumpOf(shares: Float64Array): PumpBelief {
  const sorted = shares.toSorted();
  const at = (chance: number): number => sorted[Math.floor(chance * (sorted.length - 1))]!;
  const below = (share: number): number => sorted.filter((one) => one < share).length / sorted.length;
  return { p05: at(0.05), p50: at(0.5), p95: at(0.95), dead: below(DEAD), weak: below(WEAK) };
}

function presentOf(given: SheetCase, { cloud: all, sounded }: SheetBelief, chances: Chances): Present {
  const losses = Float64Array.from({ length: all.count }, () => drawLoss(given, chances));
  const afloat = weightsAfloat(sounded, losses);
  const even = new Float64Array(all.count).fill(1 / all.count);
  const { cloud, picks } = pickAnew(all, afloat ?? even, FOLLOWED, chances);
  const flows = flowsAt(given, given.now);
  const casualties = Array.from({ length: cloud.count }, (_, n) => casualtyOf(cloud, n, flows, chances));
  return {
    space: given.space,
    casualties,
    levels: cloud.level,
    now: given.now,
    lossLevels: cloud.level.map((_, n) => Math.max(losses[picks[n]!]!, sounded[picks[n]!]! + JUST_AFLOAT)),
    newShares: Float64Array.from({ length: cloud.count }, () => drawShare(chances)),
  };
}

/** She was afloat when sounded: ways lost by then are not hers. Undefined where hardly one is left. */
function weightsAfloat(sounded: Float64Array, losses: Float64Array): Float64Array | undefined {
  const weights = Float64Array.from(losses, (loss, n) => (loss > sounded[n]! ? 1 : 0));
  const left = weights.reduce((sum, one) => sum + one, 0);
  return left < FEWEST_AFLOAT * sounded.length ? undefined : weights.map((one) => one / left);
}

/** Share of the ways that must be afloat for the others to be left out: else it is the hull that is not as guessed. */
const FEWEST_AFLOAT = 0.05;
/** A boat that is afloat has at least so much to go [m]. */
const JUST_AFLOAT = 1e-3;

function casualtyOf(cloud: Cloud, n: number, flows: readonly number[], chances: Chances): Float64Array {
  const stated = flows.reduce((sum, flow) => sum + flow, 0);
  const moved = flows.reduce((sum, flow, p) => sum + flow * cloud.shares[p]![n]!, 0);
  const casualty = new Float64Array(ALL_PLACES);
  fill(cloud, n, casualty);
  casualty[STRENGTH]! *= Math.exp(ONWARD.hole * chances.normal());
  casualty[DELIVERY] = stated > 0 ? (moved / stated) * Math.exp(ONWARD.pump * chances.normal()) : 1;
  casualty[START_LEVEL] = cloud.level[n]!;
  return casualty;
}

/** Draws the level she is lost at [m]: the hull is guessed, and a list seen brings its deck edge down. */
function drawLoss({ space, isMeasured }: SheetCase, chances: Chances): number {
  const { lossLevel = Number.POSITIVE_INFINITY, uprightLoss = lossLevel } = space;
  if (!Number.isFinite(uprightLoss)) return uprightLoss;
  const { measured, guessed, other } = THOUGHT.loss;
  const usual = isMeasured ? measured : guessed;
  const spread = chances.even() < other.chance ? other.logSpread : usual;
  return uprightLoss * Math.exp(spread * chances.normal()) - (uprightLoss - lossLevel);
}

/** So many soundings after an untold change it has become part of what is known. */
const STILL_NEW = 3;
/** A slip or an untold change is told from this chance on. */
const TOLD = 0.5;

function misfitOf({ readings }: SheetCase, { slips, turns, pumpTurns }: SheetBelief): Misfit {
  const last = readings.length - 1;
  const isNew = (k: number): boolean => last - k < STILL_NEW;
  const recent = turns.reduce((sum, chance, k) => sum + (isNew(k) ? chance : 0), 0);
  const odd = readings.map((_, k) => slips[k]! + turns[k]!);
  const worst = odd.reduce((most, one, k) => (one > odd[most]! ? k : most), 0);
  const isTurned = recent > TOLD;
  const change = {
    kind: pumpTurns[worst]! > turns[worst]! / 2 ? ("delivery" as const) : ("inflow" as const),
    after: Math.max(0, worst - 1),
    factor: pumpTurns[worst]! > turns[worst]! / 2 ? 0.5 : 2,
    gain: 0,
  };
  return {
    distance: 0,
    chance: 1 - Math.max(recent, slips[last]!),
    flagged: isTurned || slips[last]! > TOLD,
    worst: { reading: worst, deviations: 0 },
    ...(isTurned && { change }),
  };
}
