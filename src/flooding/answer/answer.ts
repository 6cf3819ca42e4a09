import { lastOf, numberAt } from "#base";
import { rankActions, type Action, type ActionGains } from "../soundings/sounding-advice.ts";
import { STALE_AFTER } from "../soundings/sounding-age.ts";
import {
  forecastLevels,
  spreadOf,
  type Chances,
  type Forecast,
  type ForecastOptions,
  type Present,
  type FiveQuantiles,
} from "../soundings/sounding-forecast.ts";
import type { Misfit } from "../soundings/sounding-misfit.ts";
import {
  AREA_SHARE,
  DELIVERY,
  HOLE,
  holeAreaOf,
  inflowAt,
  START_LEVEL,
  STRENGTH,
  type Casualty,
  type Pumped,
  type Reading,
} from "../soundings/sounding-model.ts";
import { areaAt } from "../soundings/sounding-space.ts";
import { trendOf, type LevelTrend } from "../soundings/sounding-trend.ts";
import { warningsOf, type SoundingWarning } from "../soundings/sounding-warnings.ts";

export interface Sounding {
  /** The likeliest of the three, and its chance. */
  readonly verdict: { readonly kind: keyof Chances; readonly chance: number };
  /** Chance that the pumps at least hold. */
  readonly holding: number;
  readonly chances: Chances;
  readonly quantities: Readonly<Record<QuantityName, FiveQuantiles>>;
  readonly forecast: Forecast;
  readonly effectiveSamples: number;
  readonly rounds: number;
  readonly misfit: Misfit;
  /** What would change it most, best first. */
  readonly advice: readonly Action[];
  readonly warnings: readonly SoundingWarning[];
  /** Only where the readings do not fit: where the last of them point, and no estimate. */
  readonly trend?: LevelTrend;
  /** How old the last reading is when the forecast begins [s], and whether that is older than {@link STALE_AFTER}. */
  readonly age: number;
  readonly stale: boolean;
  /** Seconds until the next sounding is due. */
  readonly nextSounding: number;
}

export type QuantityName =
  | "holeArea"
  | "holeHeight"
  | "floodableArea"
  | "pumpDelivery"
  | "startLevel"
  | "inflow"
  | "levelNow"
  | "levelAtHorizon";

/** How far ahead, and what counts as held and dry. */
export const FORECAST: ForecastOptions = { horizon: 3600, held: 0.03, dry: 0.03, outlook: 4 * 3600 };

/** What an answer is made of, whoever found it. */
export interface Believed {
  /** Ways she may be now, equally likely. */
  readonly present: Present;
  /** Stated of the pumps that run now [m³/s]. */
  readonly pumped: number;
  readonly readings: readonly Reading[];
  readonly pumping: readonly Pumped[];
  /** Error of a sounding, for what the last ones show by themselves [m]. */
  readonly noise: number;
  readonly misfit: Misfit;
  readonly effective: number;
  readonly rounds: number;
  readonly options?: Partial<ForecastOptions>;
  readonly gains?: Partial<ActionGains>;
  /** Soundings that say something of the hole as it is, and one that is likelier a slip than not. */
  readonly telling?: number;
  readonly slip?: number;
}

/**
 * What is said of a space, from ways she may be: the forecast, what would change it, what to look at.
 *
 * @param believed - by soundings alone or by a whole sheet
 * @returns the answer
 * @range see `forecastLevels`
 * @source DERIVED: docs/methods/soundings.md
 */
export function answerFrom(believed: Believed): Sounding {
  const { present, pumped, readings, misfit } = believed;
  const options = { ...FORECAST, ...believed.options };
  const forecast = forecastLevels(present, pumped, options);
  const watched = { readings, pumping: believed.pumping, prior: { noise: believed.noise } };
  const trend = misfit.flagged ? trendOf(watched, misfit) : undefined;
  const age = Math.max(0, present.now - lastOf(readings).at);
  return {
    verdict: verdictOf(forecast.chances),
    holding: 1 - forecast.chances.losing,
    chances: forecast.chances,
    quantities: quantitiesOf(present, pumped, forecast),
    forecast,
    effectiveSamples: believed.effective,
    rounds: believed.rounds,
    misfit,
    advice: rankActions(present, pumped, options, believed.gains ?? {}),
    warnings: warningsOf({ ...watched, ...looksOf(believed) }, forecast, misfit),
    ...(trend && { trend }),
    age,
    stale: age > STALE_AFTER,
    nextSounding: nextSounding(readings, forecast, misfit),
  };
}

function looksOf({ telling, slip }: Believed): { readonly telling?: number; readonly slip?: number } {
  return { ...(telling !== undefined && { telling }), ...(slip !== undefined && { slip }) };
}

/** Spreads of what the casualties followed have in common. */
function quantitiesOf(present: Present, pumped: number, forecast: Forecast): Record<QuantityName, FiveQuantiles> {
  const { casualties, levels, space } = present;
  const of = (value: (one: Casualty, n: number) => number): FiveQuantiles => spreadOf(casualties.map(value));
  const { at: _at, ...levelAtHorizon } = lastOf(forecast.fan);
  return {
    holeArea: of((one) => holeAreaOf(numberAt(one, STRENGTH))),
    holeHeight: of((one) => numberAt(one, HOLE)),
    floodableArea: of((one, n) => numberAt(one, AREA_SHARE) * areaAt(space, numberAt(levels, n))),
    pumpDelivery: of((one) => numberAt(one, DELIVERY) * pumped),
    startLevel: of((one) => numberAt(one, START_LEVEL)),
    inflow: of((one, n) => inflowAt(space, one, numberAt(levels, n))),
    levelNow: spreadOf(levels),
    levelAtHorizon,
  };
}

/** The likeliest of the three. */
function verdictOf(chances: Chances): Sounding["verdict"] {
  const kinds = ["losing", "holding", "gaining"] as const;
  const kind = kinds.reduce((best, one) => (chances[one] > chances[best] ? one : best));
  return { kind, chance: chances[kind] };
}

/** Every five minutes; every two while little is known, the readings do not fit, or she may be lost within the hour. */
function nextSounding(readings: readonly Reading[], { loss }: Forecast, misfit: Misfit): number {
  const isSoon = loss.time !== undefined && loss.chance >= POSSIBLE && loss.time.p05 < 3600;
  return readings.length < 4 || misfit.flagged || isSoon ? 120 : 300;
}

/** A loss less likely than this calls for no sounding sooner. */
const POSSIBLE = 0.05;
