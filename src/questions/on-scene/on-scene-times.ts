import type { Sounding } from "#flooding";
import type { Word } from "./on-scene-fields.ts";

/** She is dry or nearly so where the last estimate of the level is no more than this [m]. */
const NEARLY_DRY = 0.05;

/** Words that say something of how she is, so that a loss may be told. */
const OF_HER: readonly Word["kind"][] = [
  "gaining",
  "holding",
  "losing",
  "should-be-gaining",
  "should-be-holding",
  "should-be-losing",
];

/** True where the word says something of how she is. */
export function isLossTold(kind: Word["kind"]): boolean {
  return OF_HER.includes(kind);
}

/**
 * The times that the word allows: to dry only where the level has been seen to fall, or she is dry; to loss only where
 * the word says something of her and the soundings fit.
 *
 * @param word - at the top
 * @param sounding - what is thought of her
 */
export function timesOf(word: Word, { forecast, misfit, quantities }: Sounding) {
  const isDry = isLossTold(word.kind) && quantities.levelNow.p50 <= NEARLY_DRY;
  const isDryTold = (word.kind === "gaining" || isDry) && !misfit.flagged;
  return {
    ...(isDryTold && { dry: forecast.dry }),
    ...(isLossTold(word.kind) && !misfit.flagged && { loss: forecast.loss }),
  };
}

/**
 * Chance that she is lost within so many seconds.
 *
 * @param sounding - what is thought of her
 * @param seconds - from now [s], at most the time looked at
 */
export function lossWithin({ forecast: { losses } }: Sounding, seconds: number): number {
  return losses.times.filter((time) => time <= seconds).length / losses.of;
}
