import type { BoatKind } from "../hull/boat-kinds.ts";

/** A level her skipper told, so long ago [s]; over the floor [m]. */
export interface Telling {
  readonly ago: number;
  readonly water: number;
}

/** What is told of a boat before anybody of ours sees her. SI units; what nobody knows is left out. */
export interface ToldBoat {
  readonly length?: number;
  readonly kind?: BoatKind;
  /** Hole across [m], and how far below the waterline [m]. */
  readonly holeDiameter?: number;
  readonly holeDepth?: number;
  /** Water over the floor now [m], and how fast it rises, below 0 where it falls [m/s]. Left out it is not known; it is never taken for dry. */
  readonly waterInside?: number;
  readonly rising?: number;
  /** Levels told with their times: two of them tell how fast it rises. They stand before `waterInside` and `rising`. */
  readonly tellings?: readonly Telling[];
  /** Length of the flooded space [m]. */
  readonly spaceLength?: number;
}

/** One kit, in its place in the order in which kits are taken. */
export interface KitToTake {
  /** What it moves there as stated, or as it was last proved [m³/s]. */
  readonly flow: number;
  /** Chance that it starts, primes and pumps on the night, 0 to 1. */
  readonly starts: number;
  /** Between what that chance lies nine times in ten, where it is known. */
  readonly startsSpread?: { readonly p05: number; readonly p95: number };
}

/** Share of its flow that a kit moves [1], for a chance above 0 and below 1: its quantile. */
export type ShareAt = (chance: number) => number;

/** Before launching: what is known of a casualty, and of the kits that can be taken. */
export interface CallForHelp extends ToldBoat {
  /** Until a kit pumps aboard her, from now [s]. */
  readonly arrival: number;
  /** Kits in the order in which they are taken; a kit beyond the last is one like `usual`. */
  readonly kits?: readonly KitToTake[];
  readonly usual: KitToTake;
  /** Share of its flow that a kit really moves on scene once it runs, rising with an even chance. */
  readonly share: ShareAt;
  /** How many kits the first boat carries and hands over; no limit where left out. */
  readonly carries?: number;
  /** Time on scene to plan fuel for [s], burn [m³/s], fuel that goes with a kit [m³], and the can [m³]. */
  readonly onScene: number;
  readonly burn: number;
  readonly fuelInKit: number;
  readonly can: number;
}

/** What tellings come to: the newest level, how long ago, and the rise between the first and the last, with its doubt. */
export interface ToldWater {
  readonly water?: number;
  readonly ago: number;
  readonly rise?: { readonly rate: number; readonly doubt: number };
}

/** Doubt of a rate told, as share of it [1] and beside that [m/s]: 1 cm in two minutes. */
const RATE_DOUBT = { share: 0.3, beside: 8e-5 };
/** Doubt of the difference of two levels told [m]: each is read to 3 cm at best. */
const TELLING_DOUBT = 0.045;
/** Two levels closer in time than this tell no rise [s]. */
const APART = 30;

/**
 * Level and rise as they were told, in whichever form.
 *
 * @param told - tellings with their times, or a level now and a rate
 * @returns level [m], its age [s], rise and its doubt [m/s]; what was not told is absent
 * @range rises of -0.1 to 0.1 m/s
 * @source the doubts: this program's judgement, docs/methods/kits-needed.md
 */
export function toldWater(told: ToldBoat): ToldWater {
  const all = [...(told.tellings ?? [])].sort((one, other) => other.ago - one.ago);
  const last = all.at(-1);
  const water = last?.water ?? told.waterInside;
  const rise = riseBetween(all[0], last) ?? riseTold(told.rising);
  return { ago: last?.ago ?? 0, ...(water !== undefined && { water }), ...(rise && { rise }) };
}

function riseBetween(first: Telling | undefined, last: Telling | undefined): ToldWater["rise"] {
  if (!first || !last || first.ago - last.ago < APART) return undefined;
  const time = first.ago - last.ago;
  return { rate: (last.water - first.water) / time, doubt: TELLING_DOUBT / time };
}

function riseTold(rate: number | undefined): ToldWater["rise"] {
  return rate === undefined ? undefined : { rate, doubt: RATE_DOUBT.beside };
}

/**
 * How well a rise fits what was told: the logarithm of a normal density, its spread a share of the rise and a doubt beside it.
 *
 * @param rate - as a boat would have it [m/s]
 * @param told - as it was told
 * @returns log density, without the constant
 * @source DERIVED: normal error with spread √((0.3·rate)² + doubt²)
 */
export function fitOfRise(rate: number, told: NonNullable<ToldWater["rise"]>): number {
  const spread = riseSpread(rate, told);
  const off = (rate - told.rate) / spread;
  return -0.5 * off * off - Math.log(spread);
}

/**
 * Spread of what is told of a rate: a share of it, and a doubt beside it.
 *
 * @param rate - of rise or fall [m/s]
 * @param told - with its doubt
 * @returns one standard deviation [m/s]
 * @source DERIVED: √((0.3·rate)² + doubt²)
 */
export function riseSpread(rate: number, told: NonNullable<ToldWater["rise"]>): number {
  return Math.hypot(RATE_DOUBT.share * rate, told.doubt);
}
