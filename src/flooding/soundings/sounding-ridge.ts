import { nth, numberAt } from "#base";
import {
  AREA_SHARE,
  DELIVERY,
  deliveryPlace,
  deliveryShare,
  EVEN,
  HOLE,
  OUTSIDE,
  strengthAt,
  UNKNOWNS,
  type Pumped,
  type Reading,
  type SoundingPrior,
} from "./sounding-model.ts";
import type { Unbend } from "./sounding-sampler.ts";
import { areaAt, riseWith, volumeAt, type SoundedSpace } from "./sounding-space.ts";

/** The standard normal that stands for a hole at this share of the outside level. */
export function evenPlaceOf(share: number): number {
  const kept = Math.min(0.98, Math.max(0.02, share));
  return Math.log(kept / (1 - kept)) / EVEN;
}

/** What the readings balance, floodable area as drawn. */
interface Balance {
  /** More water at the end than at the start [m³]. */
  readonly gained: number;
  /** Pumped meanwhile as stated [m³]. */
  readonly pumped: number;
  /** So long [s]. */
  readonly time: number;
  /** As much water as the readings' error may feign [m³]. */
  readonly doubt: number;
  /** Levels, how much the outside level has risen by then [m], and the time each stands for, adding up to 1. */
  readonly levels: Float64Array;
  readonly rises: Float64Array;
  readonly weights: Float64Array;
}

/** A case, and what its readings balance. */
interface Ridge {
  readonly space: SoundedSpace;
  readonly prior: SoundingPrior;
  readonly balance: Balance;
}

/** A delivery whose spread is less than this is as good as known: nothing hangs on it. */
const KNOWN_SPREAD = 0.01;

/**
 * Straightens the ridge that soundings leave between hole, height, area and delivery. Over a watch
 *
 *     share·ΔV = K·∫√(H − max(h, z)) dt − q·∫Q dt
 *
 * and soundings tell this difference well, but hardly K or q. What must be the larger of the two stands for its distance
 * from the balance: of a level that falls the delivery, of any other the hole. A shear: volumes stay.
 */
export function straightenRidge(given: {
  readonly space: SoundedSpace;
  readonly prior: SoundingPrior;
  readonly readings: readonly Reading[];
  readonly pumping: readonly Pumped[];
}): Unbend {
  const { space, prior } = given;
  const ridge = { space, prior, balance: balanceOf(given) };
  const { gained, doubt, pumped } = ridge.balance;
  const { logSpread, lowSpread } = prior.delivery;
  const isPumpedDown = gained < -doubt && pumped > 0 && Math.min(logSpread, lowSpread) > KNOWN_SPREAD;
  const bend = isPumpedDown ? bendDelivery : bendHole;
  return (straight, at, plain) => {
    for (let i = 0; i < UNKNOWNS; i += 1) plain[at + i] = numberAt(straight, at + i);
    bend(ridge, plain, at);
  };
}

/** ln K less what the balance makes of it with this delivery. */
function bendHole(ridge: Ridge, plain: Float64Array, at: number): void {
  const { prior, balance } = ridge;
  const pumped = deliveryShare(prior.delivery, numberAt(plain, at + DELIVERY)) * balance.pumped;
  const inflow = heldPositive(gainedAt(ridge, plain, at) + pumped, balance.doubt);
  const typical = balance.doubt + balance.pumped + Math.abs(balance.gained);
  plain[at] = numberAt(plain, at) + Math.log(inflow / (typical * rootAt(ridge, plain, at))) / prior.holeArea.logSpread;
}

/** The hole stands for the inflow it makes; the delivery is less what the balance makes of it with this inflow. */
function bendDelivery(ridge: Ridge, plain: Float64Array, at: number): void {
  const { prior, balance } = ridge;
  const root = rootAt(ridge, plain, at);
  plain[at] = numberAt(plain, at) - Math.log(root) / prior.holeArea.logSpread;
  const moved = strengthAt(prior, numberAt(plain, at)) * root * balance.time - gainedAt(ridge, plain, at);
  const most = MOST_MOVED * prior.delivery.median * balance.pumped;
  const share = heldPositive(Math.min(moved, most), balance.doubt) / balance.pumped;
  plain[at + DELIVERY] = numberAt(plain, at + DELIVERY) + deliveryPlace(prior.delivery, share);
}

/** No pump moves more than this many times what is likely. */
const MOST_MOVED = 2;

function gainedAt({ prior, balance }: Ridge, z: Float64Array, at: number): number {
  return Math.exp(prior.areaLogSpread * numberAt(z, at + AREA_SHARE)) * balance.gained;
}

function rootAt({ space, balance }: Ridge, z: Float64Array, at: number): number {
  const outside = Math.max(0.02, space.outside + space.outsideDoubt * numberAt(z, at + OUTSIDE));
  return rootOver(balance, outside, outside / (1 + Math.exp(-EVEN * numberAt(z, at + HOLE))));
}

/** x where that is much more than the doubt d, small and positive where it is less: (x + √(x² + 4d²))/2. */
function heldPositive(x: number, doubt: number): number {
  const root = Math.sqrt(x * x + 4 * doubt * doubt);
  return x < 0 ? (2 * doubt * doubt) / (root - x) : (x + root) / 2;
}

/** Mean of √(H − max(h, z)) over the watch; never nothing. */
function rootOver({ levels, rises, weights }: Balance, outside: number, hole: number): number {
  let sum = 0;
  for (let k = 0; k < levels.length; k += 1) {
    const sea = outside + numberAt(rises, k);
    const head = (sea > hole ? sea : hole) - (numberAt(levels, k) > hole ? numberAt(levels, k) : hole);
    if (head > 0) sum += numberAt(weights, k) * Math.sqrt(head);
  }
  return Math.max(sum, 0.03);
}

/** Without the stretches where she is dry: there a pump moves less than it could. */
function balanceOf({ space, prior, readings, pumping }: Parameters<typeof straightenRidge>[0]): Balance {
  const dry = 2 * prior.noise;
  const weights = new Float64Array(readings.length);
  let [gained, pumped, time] = [0, 0, 0];
  for (let k = 0; k + 1 < readings.length; k += 1) {
    const [one, next] = [nth(readings, k), nth(readings, k + 1)];
    if (one.level < dry && next.level < dry) continue;
    gained += volumeAt(space, next.level) - volumeAt(space, one.level);
    const span = next.at - one.at;
    pumped += volumePumped(pumping, one.at, next.at);
    weights[k] = numberAt(weights, k) + span / 2;
    weights[k + 1] = numberAt(weights, k + 1) + span / 2;
    time += span;
  }
  if (time === 0) weights[0] = time = 1;
  const levels = Float64Array.from(readings, (one) => one.level);
  return {
    gained,
    pumped,
    time,
    doubt: 2 * prior.noise * areaAt(space, Math.max(...levels)),
    levels,
    rises: levels.map((level) => riseWith(space, volumeAt(space, level))),
    weights: weights.map((one) => one / time),
  };
}

function volumePumped(pumping: readonly Pumped[], from: number, to: number): number {
  return pumping.reduce(
    (sum, one) => sum + one.flow * Math.max(0, Math.min(to, one.to ?? Infinity) - Math.max(from, one.from)),
    0,
  );
}
