import { flowAt, type Sounding } from "#flooding";
import { omitMissing } from "./casualty-input.ts";
import type { OnSceneInput, OnSceneWarning } from "./on-scene-fields.ts";

/** A pump surely below this share of what is stated is worth a look. */
const WEAK = 0.7;
/** Soundings from which a weak pump can be told from a larger hole. */
const ENOUGH = 4;

/**
 * Warns of running pumps that surely move less than 0.7 of what is stated: the upper end, not exceeded nineteen times in
 * twenty, lies below it. Said from four soundings on, and where one steady hole and pump fit them.
 *
 * @param input - with its pumping
 * @param sounding - what the soundings say
 * @source this program's judgement, docs/methods/soundings.md
 */
export function weakPumpWarning(input: OnSceneInput, sounding: Sounding | undefined): OnSceneWarning | undefined {
  if (sounding === undefined || sounding.misfit.flagged || input.readings.length < ENOUGH) return undefined;
  const stated = statedNow(input);
  if (stated <= 0) return undefined;
  const { p05, p50, p95 } = sounding.quantities.pumpDelivery;
  if (p95 / stated >= WEAK) return undefined;
  const [low, middle, high] = [p05, p50, p95].map((moved) => sayFives(moved / stated));
  return {
    kind: "pump-weak",
    signal: "CAUTION",
    hazard: "Pumps move little",
    says: `The pumps seem to move about ${middle} % of what was stated (${low} to ${high} %). Look at strainer, kinks in the hose, throttle and lift.`,
  };
}

function statedNow({ pumping, now }: OnSceneInput): number {
  return flowAt(
    pumping.map((run) => omitMissing(run)),
    now,
  );
}

/** No finer than it is known: in steps of five in a hundred. */
function sayFives(share: number): number {
  return 5 * Math.round(20 * share);
}
