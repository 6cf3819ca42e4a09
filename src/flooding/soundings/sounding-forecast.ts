import { evenQuantiles } from "#numerics";
import { followLevel, planSteps, STRAINER, type Casualty, type Plan } from "./sounding-model.ts";
import type { SoundedSpace } from "./sounding-space.ts";

/** Five quantiles of a quantity. */
export interface FiveQuantiles {
  readonly p05: number;
  readonly p25: number;
  readonly p50: number;
  readonly p75: number;
  readonly p95: number;
}

/** What the level may do from now on while pumping goes on as it is. */
export interface Forecast {
  /** Level fan: [s] from the first reading's clock, [m] above the floor. */
  readonly fan: readonly ({ readonly at: number } & FiveQuantiles)[];
  readonly chances: Chances;
  /** Time from now until dry, and until she is lost, where it comes to that. */
  readonly dry: Drying;
  readonly loss: Arrival;
  /** Times of those casualties that are lost [s], rising, out of so many looked at. */
  readonly losses: { readonly times: readonly number[]; readonly of: number };
}

export interface Chances {
  readonly gaining: number;
  readonly holding: number;
  readonly losing: number;
}

/** Whether something happens within the time looked at, and when if it does. */
export interface Arrival {
  readonly chance: number;
  readonly within: number;
  /** [s] from now, over the cases where it happens. */
  readonly time?: FiveQuantiles;
}

/** Dry is down to the strainer: what stands below it stays. */
export interface Drying extends Arrival {
  /** Level at which she counts as dry, over the cases where she comes to it, in the middle [m]. */
  readonly left?: number;
}

/** Casualties with the level each has now. */
export interface Present {
  readonly space: SoundedSpace;
  readonly casualties: readonly Casualty[];
  readonly levels: Float64Array;
  readonly now: number;
  /** Level at which each is lost [m], where that is not the same for all. */
  readonly lossLevels?: Float64Array;
  /** What one more pump would move of what is stated of it, by casualty; as the others do where left out. */
  readonly newShares?: Float64Array;
}

export interface ForecastOptions {
  /** [s] */
  readonly horizon: number;
  /** A level moved less than this has been held [m]. */
  readonly held: number;
  /** A level this low is dry [m]. */
  readonly dry: number;
  /** How far ahead dryness and loss are looked for [s]. */
  readonly outlook: number;
}

/** The 5th and the 95th percentile of a normal lie so many standard deviations from its middle. */
export const NINETY = 1.645;

const FAN_STEPS = 24;
const ARRIVALS = 256;
const LONGEST = 120;

/** Five quantiles of equally weighted values. */
export function spreadOf(values: ArrayLike<number>): FiveQuantiles {
  const [p05, p25, p50, p75, p95] = evenQuantiles(values, [0.05, 0.25, 0.5, 0.75, 0.95]);
  return { p05: p05!, p25: p25!, p50: p50!, p75: p75!, p95: p95! };
}

/** Follows every casualty onward with so much pumped. */
export function forecastLevels(present: Present, pumped: number, options: ForecastOptions): Forecast {
  const { dry, lefts, losses } = arrivalsOf(present, pumped, options);
  const levels = fanLevels(present, pumped, options);
  const fan = levels.map((row, k) => ({ at: present.now + (k * options.horizon) / FAN_STEPS, ...spreadOf(row) }));
  return {
    fan,
    chances: chancesOf(present.levels, levels[FAN_STEPS]!, options),
    dry: { ...arrivalOf(dry, options.outlook), ...(lefts.length > 0 && { left: spreadOf(lefts).p50 }) },
    loss: arrivalOf(losses, options.outlook),
    losses: { times: losses.times.toSorted((a, b) => a - b), of: losses.of },
  };
}

/** Down to the strainer is as dry as it gets [m]. */
function dryAt({ casualties }: Present, n: number): number {
  const casualty = casualties[n]!;
  return casualty.length > STRAINER ? casualty[STRAINER]! + DOWN_TO : 0;
}

const DOWN_TO = 0.005;

function fanLevels(present: Present, pumped: number, options: ForecastOptions): Float64Array[] {
  const times = Array.from({ length: FAN_STEPS + 1 }, (_, k) => (k * options.horizon) / FAN_STEPS);
  const plan = planSteps(times, [{ from: -1, flow: pumped }], options.horizon / FAN_STEPS);
  const rows = times.map(() => new Float64Array(present.casualties.length));
  const out = new Float64Array(FAN_STEPS + 1);
  present.casualties.forEach((casualty, n) => {
    out[0] = present.levels[n]!;
    followLevel(present.space, casualty, plan, out[0], out);
    for (let k = 0; k <= FAN_STEPS; k += 1) rows[k]![n] = out[k]!;
  });
  return rows;
}

/** Chances at the horizon, for casualties with so much pumped; cheaper than a whole forecast. */
export function chancesWith(present: Present, pumped: number, options: ForecastOptions): Chances & { level: number } {
  const plan = planSteps([0, options.horizon], [{ from: -1, flow: pumped }], LONGEST);
  const out = new Float64Array(2);
  const later = Float64Array.from(present.casualties, (casualty, n) =>
    followLevel(present.space, casualty, plan, present.levels[n]!, out),
  );
  return { ...chancesOf(present.levels, later, options), level: spreadOf(later).p50 };
}

function chancesOf(now: Float64Array, later: Float64Array, options: ForecastOptions): Chances {
  let [gaining, losing] = [0, 0];
  now.forEach((level, n) => {
    const rise = later[n]! - level;
    if (rise < -options.held || (later[n]! <= options.dry && level <= options.dry + options.held)) gaining += 1;
    else if (rise > options.held) losing += 1;
  });
  const count = now.length;
  return { gaining: gaining / count, losing: losing / count, holding: (count - gaining - losing) / count };
}

interface Arrivals {
  readonly times: readonly number[];
  readonly of: number;
}

function arrivalOf({ times, of }: Arrivals, within: number): Arrival {
  return { chance: times.length / of, within, ...(times.length === 0 ? {} : { time: spreadOf(times) }) };
}

/** When ways are dry and when they are lost, each followed once; one that is lost is not dry later. */
function arrivalsOf(
  present: Present,
  pumped: number,
  { outlook, dry }: ForecastOptions,
): { readonly dry: Arrivals; readonly lefts: readonly number[]; readonly losses: Arrivals } {
  const plan = planSteps([0, LONGEST], [{ from: -1, flow: pumped }], LONGEST);
  const stride = Math.max(1, Math.floor(present.casualties.length / ARRIVALS));
  const [dries, lefts, losses]: [number[], number[], number[]] = [[], [], []];
  let of = 0;
  for (let n = 0; n < present.casualties.length; n += stride) {
    of += 1;
    const left = Math.max(dry, dryAt(present, n));
    const came = followOut(present, n, { plan, outlook, dry: left });
    if (came.dry !== undefined) {
      dries.push(came.dry);
      lefts.push(left);
    }
    if (came.loss !== undefined) losses.push(came.loss);
  }
  return { dry: { times: dries, of }, lefts, losses: { times: losses, of } };
}

interface Outward {
  readonly plan: Plan;
  readonly outlook: number;
  /** Dry at this level [m]. */
  readonly dry: number;
}

/** Follows one way until it is lost, stands still, or is no longer looked at. */
function followOut(present: Present, n: number, { plan, outlook, dry }: Outward): { dry?: number; loss?: number } {
  const { space, lossLevels, casualties, levels } = present;
  const lost = lossLevels?.[n] ?? space.lossLevel ?? Number.POSITIVE_INFINITY;
  const out = new Float64Array(2);
  let level = levels[n]!;
  let dried = level <= dry ? 0 : undefined;
  const came = (loss?: number) => ({ ...(dried !== undefined && { dry: dried }), ...(loss !== undefined && { loss }) });
  if (level >= lost) return came(0);
  for (let t = 0; t < outlook; t += LONGEST) {
    const next = followLevel(space, casualties[n]!, plan, level, out);
    if (next <= dry) dried ??= t + LONGEST / 2;
    if (next >= lost) return came(t + LONGEST / 2);
    if (Math.abs(next - level) < 1e-5) return came();
    level = next;
  }
  return came();
}
