import { firstOf, lastOf, nth, numberAt } from "#base";
import { closestFit, type SoundingChange, type Misfit, type ResidualsAt } from "./sounding-misfit.ts";
import {
  casualtyAt,
  DELIVERY,
  followLevel,
  planSteps,
  START_LEVEL,
  STRENGTH,
  UNKNOWNS,
  type Plan,
  type Pumped,
  type Reading,
  type SoundingPrior,
} from "./sounding-model.ts";
import type { SoundedSpace } from "./sounding-space.ts";

/** Log spread of a change's factor before any sounding. */
const CHANGE_SPREAD = 2;
/** A change counts from this gain in distance on: false alarms are measured in docs/methods/soundings.md. */
export const CHANGE_COUNTS = 6.5;
const POLISHINGS = 8;

interface Watch {
  readonly space: SoundedSpace;
  readonly prior: SoundingPrior;
  readonly readings: readonly Reading[];
  readonly pumping: readonly Pumped[];
}

/**
 * Looks for one change on the way: a hole that grew or a second one, or a pump that moved less (or more) from some
 * reading on. The readings' distance from the best such casualty is compared with that from the best steady one.
 *
 * @param watch - the case
 * @param misfit - of the steady casualty, with its best point
 * @returns the misfit, flagged also where a change gains much
 * @source DERIVED: a likelihood ratio over the place of the change; docs/methods/soundings.md, "Does the model fit"
 */
export function lookForChange(watch: Watch, misfit: Misfit & { readonly z: Float64Array }): Misfit {
  const { z, ...rest } = misfit;
  let best: SoundingChange | undefined;
  for (const kind of ["inflow", "delivery"] as const) {
    for (let after = 1; after < watch.readings.length - 1; after += 1) {
      const change = tryChange(watch, { kind, after, z, distance: misfit.distance });
      if (best === undefined || change.gain > best.gain) best = change;
    }
  }
  if (best === undefined || best.gain < CHANGE_COUNTS) return rest;
  return { ...rest, flagged: true, change: best };
}

interface Trial {
  readonly kind: SoundingChange["kind"];
  readonly after: number;
  readonly z: Float64Array;
  readonly distance: number;
}

/** Where the search for the factor begins, as standard normals: a hole twice as large; a pump at a quarter, a tenth. */
const BEGINNINGS = { inflow: [0.35], delivery: [-0.7, -1.15] } as const;

function tryChange(watch: Watch, trial: Trial): SoundingChange {
  const residuals = residualsWith(watch, trial);
  const fits = BEGINNINGS[trial.kind].map((factor) =>
    closestFit(residuals, Float64Array.of(...trial.z, factor), watch.readings.length, POLISHINGS),
  );
  const fit = fits.reduce((best, one) => (one.distance < best.distance ? one : best));
  return {
    kind: trial.kind,
    after: trial.after,
    factor: Math.exp(CHANGE_SPREAD * numberAt(fit.z, UNKNOWNS)),
    gain: trial.distance - fit.distance,
  };
}

function residualsWith(watch: Watch, trial: Trial): ResidualsAt {
  const { space, prior, readings } = watch;
  const [before, later] = plansAround(watch, trial.after);
  const place = trial.kind === "inflow" ? STRENGTH : DELIVERY;
  const casualty = new Float64Array(UNKNOWNS);
  const levels = new Float64Array(readings.length);
  const rest = levels.subarray(trial.after);
  return (z, out) => {
    casualtyAt(space, prior, z, 0, casualty);
    levels[0] = numberAt(casualty, START_LEVEL);
    const level = followLevel(space, casualty, before, levels[0], levels);
    casualty[place] = numberAt(casualty, place) * Math.exp(CHANGE_SPREAD * numberAt(z, UNKNOWNS));
    followLevel(space, casualty, later, level, rest);
    for (let k = 0; k < levels.length; k += 1) out[k] = (nth(readings, k).level - numberAt(levels, k)) / prior.noise;
  };
}

function plansAround(watch: Watch, after: number): readonly [Plan, Plan] {
  const times = watch.readings.map((reading) => reading.at);
  const longest = Math.max(75, (lastOf(times) - firstOf(times)) / 40);
  const plan = (part: readonly number[]): Plan => planSteps(part, watch.pumping, longest);
  return [plan(times.slice(0, after + 1)), plan(times.slice(after))];
}
