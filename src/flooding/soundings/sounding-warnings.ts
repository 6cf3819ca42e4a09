import { sayDuration } from "#words";
import { firstOf, nth } from "#base";
import type { Forecast } from "./sounding-forecast.ts";
import type { Misfit } from "./sounding-misfit.ts";
import { flowAt, type Pumped, type Reading } from "./sounding-model.ts";

export type SoundingWarningKind =
  "few-readings" | "slip-likely" | "does-not-fit" | "fall-has-slowed" | "pump-will-suck-air" | "loss-possible";

export interface SoundingWarning {
  readonly kind: SoundingWarningKind;
  /** In the person's words: what it may mean and what to look at. */
  readonly says: string;
}

/** What a person on scene should look at, gravest first. */
export function warningsOf(
  given: {
    readonly readings: readonly Reading[];
    readonly pumping: readonly Pumped[];
    readonly prior: { readonly noise: number };
    /** Soundings that say something of the hole as it is; all of them where left out. */
    readonly telling?: number;
    /** Number of a sounding, not the last, that is likelier a slip than not. */
    readonly slip?: number;
  },
  forecast: Forecast,
  misfit: Misfit,
): SoundingWarning[] {
  const odd = misfit.flagged ? misfit.worst.reading : undefined;
  const believed = given.readings.filter((_, k) => k !== given.slip && k !== odd);
  const warnings: (SoundingWarning | false)[] = [
    lossWarning(forecast),
    misfit.flagged && doesNotFit(given.readings, misfit),
    given.slip !== undefined && looksWrong(given.readings, given.slip),
    hasSlowed(believed, given.pumping, given.prior.noise) && SLOWED,
    forecast.dry.chance > 0.5 && (forecast.dry.time?.p05 ?? Infinity) < 600 && SUCKS_AIR,
    (given.telling ?? given.readings.length) < 4 && FEW,
  ];
  return warnings.filter((one): one is SoundingWarning => one !== false);
}

const SLOWED: SoundingWarning = {
  kind: "fall-has-slowed",
  says: "The level fell and now falls less or not at all. Look at the strainer and the suction first, then for water coming in somewhere new.",
};
const SUCKS_AIR: SoundingWarning = {
  kind: "pump-will-suck-air",
  says: "The pump may reach the bottom within ten minutes. Throttle back or stop before it sucks air; sound again after.",
};
const FEW: SoundingWarning = {
  kind: "few-readings",
  says: "Fewer than four soundings: the forecast is wide. Sound again at the same marked place.",
};

function lossWarning(forecast: Forecast): SoundingWarning | false {
  const { chance, time } = forecast.loss;
  if (chance < 0.05 || time === undefined) return false;
  return {
    kind: "loss-possible",
    says: `She may be lost. If she is: in ${sayDuration(time.p05, "estimate")} at the earliest, in about ${sayDuration(time.p50, "estimate")} by the middle of this estimate. The person in charge decides when people leave.`,
  };
}

function doesNotFit(readings: readonly Reading[], misfit: Misfit): SoundingWarning {
  return {
    kind: "does-not-fit",
    says: `The soundings do not fit one steady hole and the stated pumping; ${sayWhich(readings, misfit.worst.reading)}, is farthest off. ${suspect(misfit)} Do not trust the forecast: sound again, look at the strainer, look for water elsewhere.`,
  };
}

/** A sounding by its level and time. */
function sayWhich(readings: readonly Reading[], reading: number): string {
  const { at, level } = nth(readings, reading);
  const minute = Math.round((at - firstOf(readings).at) / 60);
  const read = `${Math.round(100 * level)}\u00a0cm`;
  return `${read}, ${reading === 0 ? "the first one" : `${minute} min after the first`}`;
}

function looksWrong(readings: readonly Reading[], reading: number): SoundingWarning {
  return {
    kind: "slip-likely",
    says: `The sounding of ${sayWhich(readings, reading)}, does not go with the others: look at the figure, strike it if it was a slip.`,
  };
}

function suspect(misfit: Misfit): string {
  if (misfit.change === undefined)
    return "A wrong sounding, a new or larger inflow, or a pump that moves less than before.";
  const { kind, factor } = misfit.change;
  if (kind === "delivery" && factor < 1)
    return "It looks as if the pump moves less since then: strainer, suction, hoses.";
  if (kind === "inflow" && factor > 1) return "It looks as if more comes in since then: a new or larger hole.";
  return "Something has changed on the way, in the hole or in the pump.";
}

interface Fall {
  /** Of the level, under pumping [m/s]. */
  readonly pace: number;
  readonly flow: number;
  /** When it began [s], and from which level [m]. */
  readonly at: number;
  readonly from: number;
  /** Of the pace, by the soundings' error [m/s]. */
  readonly doubt: number;
}

const NO_FALL: Fall = { pace: 0, flow: 0, at: 0, from: 0, doubt: 0 };

/**
 * True where an earlier fall under pumping has lost more than half its pace, beyond what the soundings' error explains,
 * with no less pumped now. The fall was seen twice running, and two soundings stood lower than where it fell from: one
 * high or low slip of the stick is no fall.
 */
function hasSlowed(readings: readonly Reading[], pumping: readonly Pumped[], noise: number): boolean {
  const falls = readings.slice(1).map((reading, i) => fallBetween(nth(readings, i), reading, pumping, noise));
  const last = falls.at(-1);
  const seenTwice = falls.slice(1, -1).map((one, i) => lesserOf(nth(falls, i), one));
  const most = seenTwice.reduce((best, one) => (one.pace > best.pace ? one : best), NO_FALL);
  if (last === undefined || most.pace <= 0 || most.pace < 3 * most.doubt || last.flow < most.flow) return false;
  const lower = readings.filter(({ at, level }) => at > most.at && most.from - level > 3 * Math.SQRT2 * noise);
  if (lower.length < 2) return false;
  return last.pace < most.pace / 2 && most.pace - last.pace > 3 * Math.hypot(most.doubt, last.doubt);
}

function fallBetween(before: Reading, after: Reading, pumping: readonly Pumped[], noise: number): Fall {
  const span = after.at - before.at;
  const flow = flowAt(pumping, (after.at + before.at) / 2);
  const pace = flow > 0 ? (before.level - after.level) / span : 0;
  return { pace, flow, at: before.at, from: before.level, doubt: (Math.SQRT2 * noise) / span };
}

function lesserOf(one: Fall, other: Fall): Fall {
  return other.pace < one.pace ? other : one;
}
