import { normalQuantile } from "#numerics";
import { STANDARD_GRAVITY } from "#water";
import { LIKELY_COEFFICIENT } from "../openings/opening.ts";
import type { Chances } from "./chances.ts";

/** Log of a normal: median and log spread. */
export interface LogSpread {
  readonly median: number;
  readonly logSpread: number;
}

/**
 * What is thought before any sounding on scene, and of what may change unseen. One place for all of it: the sheet, the
 * calibration and what is said before launch go by these. This program's judgement: docs/methods/soundings.md.
 */
export const THOUGHT = {
  /** Area of a hole nobody has told of: 20 mm across, 2 to 170 mm nine times in ten [m²]. */
  hole: { median: (Math.PI / 4) * 0.02 ** 2, logSpread: 2.6 },
  /** Of one told: its strength over what it passes at the likeliest coefficient; never over coefficient 1. */
  told: { median: 0.9, logSpread: 0.6 },
  /** A hole that opens unseen: 40 mm across [m²]. */
  further: { median: (Math.PI / 4) * 0.04 ** 2, logSpread: 1.2 },
  /** Floodable area over that drawn: measured beam, and guessed. */
  area: { measured: 0.24, guessed: 0.4 },
  /** That area grows by so much of itself with each metre of level beyond what is drawn, give or take, between [1/m]. */
  widens: { middle: 0.15, spread: 0.5, from: -0.4, to: 1.5 },
  /** A pump moves more by up to so much of what it moves with each metre the water stands higher [1/m]. */
  eases: 0.4,
  /** Error of a sounding that is read well: a stick in a calm bilge, and in a boat that works [m]. */
  stick: { median: 0.012, logSpread: 0.4 },
  /**
   * Depth of the outside water over the floor, as a share of it: beam told, and guessed. Now and then the floor lies much
   * higher than is thought, as it does where the keel rises to her ends: a share even from `from` to 1.
   */
  outside: { measured: 0.12, guessed: 0.18, raised: { chance: 0.15, from: 0.35 } },
  /** Level at which she is lost over that computed, log spreads: beam told, and guessed; now and then quite another. */
  loss: { measured: 0.18, guessed: 0.22, other: { chance: 0.15, logSpread: 0.5 } },
  /** Share of the stated delivery: dead, weak (even in the logarithm), as stated (normal, never above the greatest). */
  pump: {
    dead: { chance: 0.08, most: 0.04 },
    weak: { chance: 0.14, from: 0.06, to: 0.55 },
    good: { middle: 0.82, spread: 0.13 },
    greatest: 1.05,
  },
  /** Strainers lie so high over the floor at which levels begin, and now and then on something [m]. */
  strainer: { low: [0, 0.07], high: [0.05, 0.22], onSomething: 0.25, shifts: 0.004 },
  /** A patch told: log spread of its worth, how often it does not hold, and what weeps through one said to be tight. */
  patch: { logSpread: 0.5, tightSpread: 1, fails: 0.12, weeps: 0.02 },
  /** Something untold changes once in so long [s]; it is the hole at this chance where a pump runs. */
  untold: { every: 9000, hole: 0.5, factor: 0.9, adds: 0.5, blocks: 0.75, blocksTo: 0.7 },
  /** Slow changes, log spreads in an hour, growing with the root of time; area by ten centimetres moved. */
  drift: { hole: 0.25, pump: 0.15, area: 0.06 },
} as const;

const ROOT = Math.sqrt(2 * STANDARD_GRAVITY);

/** Strength Cd·A·√(2g) of an area at the likeliest coefficient [m^2.5/s]. */
export function strengthOfArea(area: number): number {
  return LIKELY_COEFFICIENT * ROOT * area;
}

/** Draws the depth of the outside water over the floor, as a share of that computed [1]. */
export function drawOutside(isMeasured: boolean, chances: Chances): number {
  const { measured, guessed, raised } = THOUGHT.outside;
  const share = chances.even() < raised.chance ? raised.from + (1 - raised.from) * chances.even() : 1;
  return share * (1 + (isMeasured ? measured : guessed) * chances.normal());
}

/** Draws by how much of itself an area grows with each metre of level [1/m]. */
export function drawWidening(chances: Chances): number {
  const { middle, spread, from, to } = THOUGHT.widens;
  return Math.min(to, Math.max(from, middle + spread * chances.normal()));
}

/** Draws the error of a sounding that is read well [m]. */
export function drawStick(chances: Chances): number {
  const { median, logSpread } = THOUGHT.stick;
  return median * Math.exp(logSpread * chances.normal());
}

/** Draws how high a strainer lies over the floor [m]. */
export function drawStrainer(chances: Chances): number {
  const { low, high, onSomething } = THOUGHT.strainer;
  const [from, to] = chances.even() < onSomething ? high : low;
  return from + (to - from) * chances.even();
}

/**
 * Share of the stated delivery that a pump moves, before anything is seen of it: dead, weak or as stated. For an even
 * chance it rises from 0 to its greatest, so that even chances draw pumps as they are thought to be.
 *
 * @param chance - above 0, below 1 [1]
 * @returns share of what is stated [1]
 * @range pumps of a kit, handed over and started by strangers
 * @source this program's judgement; docs/methods/soundings.md, "On scene: one belief for the sheet"
 * @example pumpShareAt(0.5) // 0.773
 */
export function pumpShareAt(chance: number): number {
  const { dead, weak, good, greatest } = THOUGHT.pump;
  if (chance < dead.chance) return (dead.most * chance) / dead.chance;
  const over = chance - dead.chance;
  if (over < weak.chance) return weak.from * (weak.to / weak.from) ** (over / weak.chance);
  const z = normalQuantile(Math.max(1e-9, over - weak.chance) / (1 - dead.chance - weak.chance));
  return Math.min(greatest, Math.max(weak.to, good.middle + good.spread * z));
}

/**
 * The same of a pump that started and primed: a dead one is left out.
 *
 * @param chance - above 0, below 1 [1]
 * @returns share of what is stated [1]
 * @range as `pumpShareAt`
 * @source as `pumpShareAt`; docs/methods/kits-needed.md, "Kits"
 * @example runningShareAt(0.5) // 0.79
 */
export function runningShareAt(chance: number): number {
  const { dead } = THOUGHT.pump;
  return pumpShareAt(dead.chance + (1 - dead.chance) * chance);
}

/** Draws what one pump moves of what is stated: as `pumpShareAt` of an even chance. */
export function drawShare(chances: Chances): number {
  const { dead, weak, good, greatest } = THOUGHT.pump;
  const chance = chances.even();
  if (chance < dead.chance + weak.chance) return pumpShareAt(chance);
  return Math.min(greatest, Math.max(weak.to, good.middle + good.spread * chances.normal()));
}

/** Log strength of the hole before any sounding: median, spread and upper end. */
export interface HoleThought {
  readonly middle: number;
  readonly spread: number;
  readonly most: number;
}

/** Of a hole told by its area [m²], or of any. */
export function holeThought(told: number | undefined): HoleThought {
  if (told === undefined) {
    const { median, logSpread } = THOUGHT.hole;
    return { middle: Math.log(strengthOfArea(median)), spread: logSpread, most: Number.POSITIVE_INFINITY };
  }
  const likely = Math.log(strengthOfArea(told));
  const { median, logSpread } = THOUGHT.told;
  return { middle: likely + Math.log(median), spread: logSpread, most: likely - Math.log(LIKELY_COEFFICIENT) };
}
