import { deliveryShare, EVEN, UNKNOWNS, type Pumped, type Reading, type SoundingPrior } from "./sounding-model.ts";
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
  /** As much water as the readings' error may feign [m³]. */
  readonly doubt: number;
  /** Levels, how much the outside level has risen by then [m], and the time each stands for, adding up to 1. */
  readonly levels: Float64Array;
  readonly rises: Float64Array;
  readonly weights: Float64Array;
}

/**
 * Straightens the ridge that soundings leave between hole, height, area and delivery. Over a watch
 *
 *     share·ΔV = K·∫√(H − max(h, z)) dt − q·∫Q dt
 *
 * so the readings tell K·∫√… − q·∫Q − share·ΔV well and hardly K. The first coordinate stands for ln K less what this
 * makes of it, K₁ = (share·ΔV + q·∫Q)/∫√… with the levels as read; the others are themselves. A shear: volumes stay.
 */
export function straightenRidge(given: {
  readonly space: SoundedSpace;
  readonly prior: SoundingPrior;
  readonly readings: readonly Reading[];
  readonly pumping: readonly Pumped[];
}): Unbend {
  const { space, prior } = given;
  const balance = balanceOf(given);
  const typical = balance.doubt + balance.pumped + Math.abs(balance.gained);
  return (straight, at, plain) => {
    for (let i = 0; i < UNKNOWNS; i += 1) plain[at + i] = straight[at + i]!;
    const share = Math.exp(prior.areaLogSpread * straight[at + 1]!);
    const moved = share * balance.gained + deliveryShare(prior.delivery, straight[at + 2]!) * balance.pumped;
    const inflow = heldPositive(moved, balance.doubt);
    const outside = Math.max(0.02, space.outside + space.outsideDoubt * straight[at + 5]!);
    const root = rootOver(balance, outside, outside / (1 + Math.exp(-EVEN * straight[at + 3]!)));
    plain[at]! += Math.log(inflow / (typical * root)) / prior.holeArea.logSpread;
  };
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
    const sea = outside + rises[k]!;
    const head = (sea > hole ? sea : hole) - (levels[k]! > hole ? levels[k]! : hole);
    if (head > 0) sum += weights[k]! * Math.sqrt(head);
  }
  return Math.max(sum, 0.03);
}

/** Without the stretches where she is dry: there a pump moves less than it could. */
function balanceOf({ space, prior, readings, pumping }: Parameters<typeof straightenRidge>[0]): Balance {
  const dry = 2 * prior.noise;
  const weights = new Float64Array(readings.length);
  let [gained, pumped, time] = [0, 0, 0];
  for (let k = 0; k + 1 < readings.length; k += 1) {
    const [one, next] = [readings[k]!, readings[k + 1]!];
    if (one.level < dry && next.level < dry) continue;
    gained += volumeAt(space, next.level) - volumeAt(space, one.level);
    const span = next.at - one.at;
    pumped += volumePumped(pumping, one.at, next.at);
    weights[k]! += span / 2;
    weights[k + 1]! += span / 2;
    time += span;
  }
  if (time === 0) weights[0] = time = 1;
  const levels = Float64Array.from(readings, (one) => one.level);
  return {
    gained,
    pumped,
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
