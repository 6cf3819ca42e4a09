import { sumLaw } from "#numerics";
import { jeffreys, type Interval } from "../chance/share-intervals.ts";

/** A chance that was told, and whether it came. */
export interface ToldChance {
  /** 0 to 1 [1] */
  readonly chance: number;
  readonly came: boolean;
}

/** Forecasts of about the same chance. */
export interface ScoreBin {
  readonly from: number;
  readonly to: number;
  readonly count: number;
  /** Mean chance told [1]. */
  readonly told: number;
  /** Share that came [1]. */
  readonly came: number;
  /** What the share lies between nine times in ten [1]. */
  readonly range: Interval;
}

export interface ForecastScore {
  /** Whether what was told is as sure as it should be; `too-few` where that cannot be said. */
  readonly kind: "too-few" | "as-sure" | "too-sure" | "not-sure-enough";
  readonly count: number;
  /** Forecasts that it takes to say more; 0 where there are enough. */
  readonly wanted: number;
  /** Mean of (chance − came)²; 0 is best, 0.25 is a coin; 0 where there are none. */
  readonly brier: number;
  /** The Brier score of always telling the share that came: what a forecast must undercut to be worth telling. */
  readonly plain: number;
  /** Mean of −ln of the chance told for what came; 0 is best, ln 2 is a coin. Chances are held off 0 and 1 by 10⁻⁶. */
  readonly logScore: number;
  /** Spiegelhalter's z: 0 to be expected, above 1.96 too sure, below −1.96 not sure enough. */
  readonly z: number;
  readonly bins: readonly ScoreBin[];
}

/** Fewest forecasts, and fewest that came and that did not, from which calibration is told (judgement). */
const LEAST = 20;
const LEAST_EACH = 5;
const CLEAR = 1.96;
const HELD_OFF = 1e-6;

/**
 * How good forecasts were, and whether they were as sure as they should be.
 *
 * Brier Σ(p − x)²/n; log score −Σ ln p(x)/n; z = Σ (x − p)(1 − 2p) / √Σ (1 − 2p)² p(1 − p)
 *
 * @param forecasts - chances told and what came
 * @returns scores, bins of a fifth each, and a verdict
 * @range verdict from 20 forecasts with 5 of each outcome by z, which is normal for many; with fewer of one outcome only where
 *   the exact law of their number is clear
 * @source Brier, Monthly Weather Review 78 (1950) 1-3; Good (1952); Spiegelhalter, Statistics in Medicine 5 (1986) 421-433 (FROM MEMORY)
 * @example scoreForecasts([{ chance: 0.7, came: true }, { chance: 0.2, came: false }]).brier // 0.065
 */
export function scoreForecasts(forecasts: readonly ToldChance[]): ForecastScore {
  const count = forecasts.length;
  const mean = (of: (one: ToldChance) => number) =>
    count === 0 ? 0 : forecasts.reduce((sum, one) => sum + of(one), 0) / count;
  const share = mean(({ came }) => Number(came));
  const z = zOf(forecasts);
  const off = offAtLarge(forecasts);
  const wanted = off === undefined ? wantedOf(count, share * count) : 0;
  const told = z > CLEAR ? "too-sure" : z < -CLEAR ? "not-sure-enough" : "as-sure";
  return {
    kind: off ?? (wanted > 0 ? "too-few" : told),
    count,
    wanted,
    brier: mean(({ chance, came }) => (chance - Number(came)) ** 2),
    plain: share * (1 - share),
    logScore: mean(({ chance, came }) => -Math.log(heldOff(came ? chance : 1 - chance))),
    z,
    bins: binsOf(forecasts),
  };
}

function wantedOf(count: number, came: number): number {
  const rarer = Math.min(came, count - came);
  if (count < LEAST) return LEAST - count;
  if (rarer >= LEAST_EACH - 1e-9) return 0;
  return Math.ceil((count * (LEAST_EACH - rarer)) / Math.max(1, rarer));
}

/** Clear on one side [1]: both sides together are missed once in twenty where all is well. */
const CLEAR_TAIL = 0.025;

/**
 * What was told beside how often it came, where one of the two outcomes is rare and z tells nothing: exact, by the law of
 * a sum of trials with chances of their own.
 *
 * @returns undefined where it is not clearly off, or where there are fewer than {@link LEAST}
 * @source DERIVED: Poisson's binomial law, summed up to the rarer outcome
 */
function offAtLarge(forecasts: readonly ToldChance[]): "too-sure" | "not-sure-enough" | undefined {
  const came = forecasts.filter((one) => one.came).length;
  const isRareToCome = 2 * came < forecasts.length;
  const rare = isRareToCome ? came : forecasts.length - came;
  if (forecasts.length < LEAST || rare >= LEAST_EACH) return undefined;
  const chances = forecasts.map(({ chance }) => (isRareToCome ? chance : 1 - chance));
  const law = sumLaw(chances, rare);
  const upTo = law.reduce((sum, one) => sum + one, 0);
  const expected = chances.reduce((sum, one) => sum + one, 0);
  if (upTo < CLEAR_TAIL) return 2 * expected > chances.length ? "too-sure" : "not-sure-enough";
  return 1 - upTo + law[rare]! < CLEAR_TAIL ? "too-sure" : undefined;
}

function zOf(forecasts: readonly ToldChance[]): number {
  let [over, variance] = [0, 0];
  for (const { chance, came } of forecasts) {
    over += (Number(came) - chance) * (1 - 2 * chance);
    variance += (1 - 2 * chance) ** 2 * chance * (1 - chance);
  }
  return variance === 0 ? 0 : over / Math.sqrt(variance);
}

function heldOff(chance: number): number {
  return Math.min(1 - HELD_OFF, Math.max(HELD_OFF, chance));
}

const BINS = 5;

function binsOf(forecasts: readonly ToldChance[]): readonly ScoreBin[] {
  return Array.from({ length: BINS }, (_, i) => i).flatMap((i) => {
    const own = forecasts.filter(({ chance }) => Math.min(BINS - 1, Math.floor(chance * BINS)) === i);
    if (own.length === 0) return [];
    const came = own.filter((one) => one.came).length;
    const told = own.reduce((sum, { chance }) => sum + chance, 0) / own.length;
    const range = jeffreys(came, own.length, 0.9);
    return [{ from: i / BINS, to: (i + 1) / BINS, count: own.length, told, came: came / own.length, range }];
  });
}
