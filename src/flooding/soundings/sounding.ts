import { firstOf, lastOf, nth, numberAt } from "#base";
import { answerFrom, type Sounding } from "../answer/answer.ts";
import { driftUnseen } from "./sounding-age.ts";
import type { ActionGains } from "./sounding-advice.ts";
import { lookForChange } from "./sounding-change.ts";
import type { ForecastOptions, Present } from "./sounding-forecast.ts";
import { measureMisfit, type Misfit } from "./sounding-misfit.ts";
import {
  casualtyAt,
  DELIVERY,
  flowAt,
  followLevel,
  HOLE,
  planSteps,
  START_LEVEL,
  STRENGTH,
  UNKNOWNS,
  type Plan,
  type Pumped,
  type Reading,
  type SoundingPrior,
} from "./sounding-model.ts";
import { pickEvenly } from "./sounding-picks.ts";
import { sampleBelief, type Posterior, type LogLikelihood, type Unbend } from "./sounding-sampler.ts";
import { evenPlaceOf, straightenRidge } from "./sounding-ridge.ts";
import type { SoundedSpace } from "./sounding-space.ts";

export interface SoundingCase {
  readonly space: SoundedSpace;
  /** In order of time. */
  readonly readings: readonly Reading[];
  readonly pumping: readonly Pumped[];
  readonly prior: SoundingPrior;
  /** When the forecast begins [s]. Default: the last reading. */
  readonly now?: number;
  readonly options?: Partial<ForecastOptions>;
  readonly gains?: Partial<ActionGains>;
}

/** Casualties are carried on unseen for so long and no longer [s]: by then nothing of her is known, stale or not. */
const MOST_CARRIED = 6 * 3600;
/** Casualties followed onward. */
const FOLLOWED = 1024;

/**
 * What timed soundings say of a flooding: hole, floodable area and delivery with their doubt, and what the level will
 * do.
 *
 * @param given - a valid case, SI units
 * @returns quantities, forecast, misfit and advice; the same for the same case, always
 * @range one space, one hole, constant between the times given; docs/methods/soundings.md, "What it cannot know"
 * @source DERIVED: docs/methods/soundings.md; calibration after Talts et al. 2018, arXiv 1804.06788
 * @example readSoundings({ space: uprightSpace({ area: 12, outside: 1.2, outsideDoubt: 0.05 }),
 *   readings: [{ at: 0, level: 0.3 }, { at: 300, level: 0.4 }], pumping: [], prior: likelyPrior(0.3) }).chances.losing > 0.9 // true
 */
export function readSoundings(given: SoundingCase): Sounding {
  const { readings, pumping, prior, options, gains } = given;
  const model = modelOf(given);
  const belief = beliefOf(model);
  const present = presentOf(given, belief);
  return answerFrom({
    present,
    pumped: flowAt(pumping, present.now),
    readings,
    pumping,
    noise: prior.noise,
    misfit: misfitOf(given, model, belief),
    effective: belief.effective,
    rounds: belief.rounds,
    ...(options && { options }),
    ...(gains && { gains }),
  });
}

function beliefOf({ likelihood, quickly, unbend, split }: Model): Posterior {
  return sampleBelief({ likelihood, quickly, unbend, split, dimensions: UNKNOWNS });
}

interface Model {
  readonly split: { readonly place: number; readonly at: number };
  readonly unbend: Unbend;
  readonly likelihood: LogLikelihood;
  readonly quickly: LogLikelihood;
  readonly residuals: (z: Float64Array, out: Float64Array) => void;
}

/** Longest steps: for an answer, and for the search that comes before it [s]; longer over long watches. */
const FINE = 75;
const COARSE = 150;

function stepsOf(given: SoundingCase, longest: number): Plan {
  const times = given.readings.map((reading) => reading.at);
  return planSteps(times, given.pumping, Math.max(longest, (lastOf(times) - firstOf(times)) / 40));
}

function modelOf(given: SoundingCase): Model {
  const { space, prior, readings } = given;
  const residualsAlong = (plan: Plan): ((z: Float64Array, at: number, out: Float64Array) => void) => {
    const casualty = new Float64Array(UNKNOWNS);
    return (z, at, out) => {
      casualtyAt(space, prior, z, at, casualty);
      out[0] = numberAt(casualty, START_LEVEL);
      followLevel(space, casualty, plan, out[0], out);
      for (let k = 0; k < out.length; k += 1) out[k] = (nth(readings, k).level - numberAt(out, k)) / prior.noise;
    };
  };
  const finely = residualsAlong(stepsOf(given, FINE));
  return {
    split: { place: HOLE, at: evenPlaceOf(prior.startLevel.median / space.outside) },
    unbend: straightenRidge(given),
    likelihood: likelihoodOf(finely, readings.length),
    quickly: likelihoodOf(residualsAlong(stepsOf(given, COARSE)), readings.length),
    residuals: (z, out) => finely(z, 0, out),
  };
}

function likelihoodOf(
  residuals: (z: Float64Array, at: number, out: Float64Array) => void,
  count: number,
): LogLikelihood {
  const row = new Float64Array(count);
  return (z, at) => {
    residuals(z, at, row);
    let sum = 0;
    for (let k = 0; k < count; k += 1) sum += numberAt(row, k) ** 2;
    return -sum / 2;
  };
}

function misfitOf(given: SoundingCase, model: Model, belief: Posterior): Misfit {
  const likeliest = belief.points.slice(belief.best * UNKNOWNS, (belief.best + 1) * UNKNOWNS);
  return lookForChange(given, measureMisfit(model.residuals, likeliest, given.readings.length));
}

/**
 * How well a steady casualty fits the readings; `readSoundings` without the forecast.
 *
 * @param given - the case
 * @returns the misfit
 * @source DERIVED: docs/methods/soundings.md, "Does the model fit"
 */
export function checkFit(given: SoundingCase): Misfit {
  const model = modelOf(given);
  return misfitOf(given, model, beliefOf(model));
}

/**
 * Casualties, equally likely, that the readings leave; each followed to the last reading or to `now`.
 *
 * @param given - the case
 * @returns weighted points, and the casualties picked from them
 * @source DERIVED: docs/methods/soundings.md
 */
export function believeCasualties(given: SoundingCase): { readonly belief: Posterior; readonly present: Present } {
  const belief = beliefOf(modelOf(given));
  return { belief, present: presentOf(given, belief) };
}

/** How long after the last reading the forecast begins [s]. */
function ageOf({ readings, now }: SoundingCase): number {
  return Math.max(0, (now ?? Number.NEGATIVE_INFINITY) - lastOf(readings).at);
}

function presentOf(given: SoundingCase, belief: Posterior): Present {
  const { space, readings, prior } = given;
  const last = lastOf(readings).at;
  const age = ageOf(given);
  const seen = Array.from(pickEvenly(belief, FOLLOWED, [STRENGTH, DELIVERY]), (pick) => {
    const casualty = new Float64Array(UNKNOWNS);
    casualtyAt(space, prior, belief.points, pick * UNKNOWNS, casualty);
    return casualty;
  });
  const carried = Math.min(age, MOST_CARRIED);
  const casualties = driftUnseen(seen, carried);
  const watched = stepsOf(given, FINE);
  const unseen = planSteps([last, last + carried], given.pumping, Math.max(FINE, carried / 60));
  const out = new Float64Array(readings.length);
  const levels = Float64Array.from(seen, (one, n) => {
    const level = followLevel(space, one, watched, numberAt(one, START_LEVEL), out);
    return age > 0 ? followLevel(space, nth(casualties, n), unseen, level, out) : level;
  });
  return { space, casualties, levels, now: last + age };
}

/**
 * What is thought of a hole, a space and a pump before any sounding. The spreads are this program's judgement.
 *
 * @param firstLevel - first reading [m]
 * @returns a prior: hole of 20 mm, from about 2 to 170 mm across (90 %), since water may also stand and not rise; area
 *   within a quarter; delivery 0.85 of what is stated, from 0.29 to 1.12 of it (90 %); soundings good to 15 mm
 * @source this program's judgement; docs/methods/soundings.md, "Before any sounding"
 */
export function likelyPrior(firstLevel: number): SoundingPrior {
  return {
    holeArea: { median: (Math.PI / 4) * 0.02 ** 2, logSpread: 2.6 },
    areaLogSpread: 0.15,
    delivery: { median: 0.85, logSpread: 0.08, lowSpread: 0.75 },
    startLevel: { median: firstLevel, spread: 0.1 },
    noise: 0.015,
  };
}
