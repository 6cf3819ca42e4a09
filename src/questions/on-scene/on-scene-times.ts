import type { Sounding } from "#flooding";
import type { Word } from "./on-scene-fields.ts";

/** From this chance within four hours on that she is lost, a rise urges people, and a loss is warned of. */
export const RISING_TAKES_HER = 0.1;

/** She is dry or nearly so where the last estimate of the level is no more than this [m]. */
export const NEARLY_DRY = 0.05;

/** A time is told of so many of the ways looked at, and no fewer: a handful has no spread that means anything. */
const FEWEST_WAYS = 10;

/** A time to dry rests on so many soundings since the last change: of two, one may be a slosh. */
const FEWEST_TO_DRY = 3;

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

/** What times go by. */
export interface Timed {
  readonly forecast: Pick<Sounding["forecast"], "dry" | "loss" | "losses">;
  readonly misfit: Pick<Sounding["misfit"], "flagged">;
  readonly quantities: { readonly levelNow: Pick<Sounding["quantities"]["levelNow"], "p50"> };
}

/**
 * The times that the word allows: to dry only where the level has been seen to fall, or she is dry; to loss only where
 * the word says something of her and the soundings fit.
 *
 * @param word - at the top
 * @param sounding - what is thought of her
 */
export function timesOf(word: Word, sounding: Timed) {
  const { forecast, misfit } = sounding;
  const isDry = isLossTold(word.kind) && isNearlyDry(sounding);
  const isFallShown = word.kind === "gaining" && word.soundings >= FEWEST_TO_DRY;
  const isDryTold = (isFallShown || isDry) && !misfit.flagged;
  return {
    ...(isDryTold && { dry: forecast.dry }),
    ...(isLossTold(word.kind) && !misfit.flagged && { loss: timedByEnough(forecast) }),
  };
}

/** The chance of a loss; its time only where enough of the ways looked at come to one. */
function timedByEnough({ loss: { time, ...loss }, losses }: Timed["forecast"]): Timed["forecast"]["loss"] {
  return losses.times.length < FEWEST_WAYS || time === undefined ? loss : { ...loss, time };
}

/** True where she holds no more than a pump leaves. */
export function isNearlyDry({ quantities }: Pick<Timed, "quantities">): boolean {
  return quantities.levelNow.p50 <= NEARLY_DRY;
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
