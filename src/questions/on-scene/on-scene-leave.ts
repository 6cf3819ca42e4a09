import { sayChance } from "#words";
import { gmFromRollPeriod } from "#flooding";
import { lossWithin, RISING_TAKES_HER } from "./on-scene-times.ts";
import type { Scene } from "./on-scene-warnings.ts";
import { isEarned, lastEarned } from "./on-scene-word.ts";

/** Signs that people should leave her. */
export interface Leave {
  readonly kind: "now" | "be-ready" | "no-sign";
  readonly because: string[];
  /** What people saw or said decides it, not a figure. */
  readonly seen: boolean;
}

const DEGREE = Math.PI / 180;
/** A list of so much is a sign to leave her by, of so much to be ready [rad]. */
const GREAT_LIST = 20 * DEGREE;
const SOME_LIST = 7 * DEGREE;
/** Metacentric height by a timed roll, at most: to leave her by, to be ready by [m]. */
const NO_GM = 0.1;
const LITTLE_GM = 0.25;
/** Deck edge this near the water by the list and trim seen [m]. */
const AT_WATER = 0.05;
const LITTLE_FREEBOARD = 0.15;
/**
 * The rule for a call by figures. A loss within ten minutes [s] is likelier than not, and it is so many times likelier than
 * that she is still afloat after half an hour [s]: people who are ready lose a minute by a late call, and may lose their
 * lives by leaving her for nothing.
 */
const AT_ONCE = 10 * 60;
const NEAR = 30 * 60;
const EVEN = 0.5;
const ODDS = 8;
/** It rests on so many soundings since the last told change, none older than this [s]. */
const FEWEST = 3;
const FRESH = 360;
/** She may be lost within the hour at this chance, or by a rise that is shown at `RISING_TAKES_HER`: be ready. */
const HOUR = 3600;
const POSSIBLE = 0.2;

/**
 * Signs that people should leave her. What is seen or said outranks every figure and stands at once; a computed loss
 * says "now" only where fresh soundings agree that the water rises, and by the odds of `ODDS`.
 *
 * @param scene - the sheet and what is computed of it
 * @source this program's judgement; docs/methods/soundings.md, "Leaving"; false and missed ones measured there
 */
export function signsToLeave(scene: Scene): Leave {
  const seen = seenNow(scene);
  if (seen.length > 0) return { kind: "now", because: [...seen, ...computedNow(scene)], seen: true };
  const computed = computedNow(scene);
  if (computed.length > 0) return { kind: "now", because: computed, seen: false };
  const [seenSoon, soon] = [seenReady(scene), computedReady(scene)];
  const because = [...seenSoon, ...soon];
  if (because.length > 0) return { kind: "be-ready", because, seen: seenSoon.length > 0 };
  return { kind: "no-sign", because: [], seen: false };
}

function kept(signs: readonly (string | false)[]): string[] {
  return signs.filter((one): one is string => one !== false);
}

function seenNow(scene: Scene): string[] {
  const { input } = scene;
  const list = Math.abs(input.list ?? 0);
  return kept([
    input.leaving === true && "Her own skipper says leave.",
    input.righting === "stays" && "The list no longer comes back.",
    list >= GREAT_LIST && `A list of ${Math.round(list / DEGREE)}° was seen.`,
    input.deckEdge === "under" && "The deck edge is under.",
    input.deckEdge === "awash" && "The deck edge is awash.",
    input.overSill === true && "Water comes in over a sill.",
    greatestGm(scene) < NO_GM && "She rolls very slowly: next to no stability is left.",
    isLowBySeen(scene) && "By the list and trim seen, the deck edge is at the water.",
  ]);
}

/** Largest that a timed roll leaves room for [m]; endless where none was timed. */
function greatestGm({ input, hull }: Scene): number {
  if (input.rollPeriod === undefined) return Number.POSITIVE_INFINITY;
  return gmFromRollPeriod({ ...hull, period: input.rollPeriod }).atMost;
}

function isLowBySeen({ input, lying, isAboveDeck }: Scene): boolean {
  const isTilted = Math.abs(input.list ?? 0) >= SOME_LIST || Math.abs(input.trimSeen ?? 0) >= SOME_LIST;
  if (!isTilted || input.deckEdge === "clear" || isAboveDeck || lying.kind !== "afloat") return false;
  return lying.freeboard <= AT_WATER;
}

/** By figures alone: a rise that fresh soundings have shown, and a loss that is near by all that is thought of her. */
function computedNow({ sounding, word, isAboveDeck }: Scene): string[] {
  if (sounding === undefined || isAboveDeck || sounding.misfit.flagged) return [];
  if (word.kind !== "losing" || word.soundings < FEWEST || sounding.age > FRESH) return [];
  const [atOnce, later] = [lossWithin(sounding, AT_ONCE), 1 - lossWithin(sounding, NEAR)];
  if (atOnce < EVEN || atOnce < ODDS * later) return [];
  return [sayCall(word.soundings, atOnce, later)];
}

/** The rule, with its figures: what the call rests on. */
function sayCall(soundings: number, atOnce: number, later: number): string {
  return `The water rises by ${soundings} soundings since the last change. By the estimate she is lost within 10 min with ${sayChance(atOnce)}, and afloat after 30 min with ${sayChance(later)}.`;
}

function seenReady(scene: Scene): string[] {
  const { input } = scene;
  const list = Math.abs(input.list ?? 0);
  return kept([
    list >= SOME_LIST && list < GREAT_LIST && `A list of ${Math.round(list / DEGREE)}° was seen.`,
    input.righting === "slowly" && "She comes back slowly.",
    greatestGm(scene) < LITTLE_GM && "She rolls slowly.",
    Math.abs(input.trimSeen ?? 0) >= SOME_LIST && "She is well down by one end.",
    input.fuelSmelt === true && "Fuel was smelt and the pumps are off.",
  ]);
}

function computedReady(scene: Scene): string[] {
  const { lying, isAboveDeck } = scene;
  if (isAboveDeck) return ["By the last sounding she is under: look at the figure and sound again."];
  const isAfloat = lying.kind === "afloat";
  return kept([
    !isAfloat && "By this estimate she may not stay afloat and upright with the water in her.",
    isAfloat &&
      lying.freeboard < LITTLE_FREEBOARD &&
      !isSeenToHold(scene) &&
      !isRefuted(scene) &&
      "Little freeboard is left.",
    wasLosing(scene) &&
      (scene.sounding!.stale
        ? "She was losing when last sounded, and nobody has sounded since."
        : "She was losing by the stick, and no sounding has shown better since."),
    isRisingUnfitted(scene) && "The water rises, and the soundings do not fit.",
    isLosing(scene) && (isPumped(scene) ? "The water gains on the pumps." : "The water rises, and no pump runs."),
    mayBeLost(scene) &&
      (scene.sounding!.misfit.flagged ? "She may be lost: when cannot be said." : "She may be lost within the hour."),
  ]);
}

/** Her deck edge is seen clear, or the stick has shown that she does not sink further: then a guessed freeboard urges nobody. */
function isSeenToHold({ input, sounding, word }: Scene): boolean {
  if (input.deckEdge === "clear") return true;
  const isShown = word.kind === "gaining" || word.kind === "holding";
  return isShown && sounding !== undefined && sounding.forecast.loss.chance < RISING_TAKES_HER;
}

/**
 * A guessed hull has her deck edge under, and she is sounded: then the guess is wrong of her. The chance of a loss counts
 * no such hull, so where it is small and no rise is shown or expected, the guess urges nobody.
 */
function isRefuted({ lying, sounding, word }: Scene): boolean {
  if (lying.kind !== "afloat" || lying.freeboard >= 0 || sounding === undefined || sounding.stale) return false;
  if (sounding.misfit.flagged || word.kind === "losing" || word.kind === "should-be-losing") return false;
  return sounding.forecast.loss.chance < RISING_TAKES_HER;
}

/** Whatever the word, while soundings are fresh: of one sounding only where the hole was told. */
function mayBeLost({ input, sounding, word }: Scene): boolean {
  if (sounding === undefined || sounding.stale) return false;
  const isBlind = word.kind === "one-sounding" && input.hole?.diameter === undefined;
  return !isBlind && lossWithin(sounding, HOUR) >= POSSIBLE;
}

/**
 * A rise was the last that the stick has shown, and she may be lost by it. Neither what a pump or a patch should do, nor
 * one sounding that shows nothing, nor nobody looking is a sign that it got better.
 */
function wasLosing({ input, sounding, word }: Scene): boolean {
  if (sounding === undefined || isEarned(word.kind) || lastEarned(input) !== "losing") return false;
  return sounding.stale || sounding.forecast.loss.chance >= RISING_TAKES_HER;
}

function isRisingUnfitted({ sounding, word }: Scene): boolean {
  return sounding?.misfit.flagged === true && (word.kind === "losing" || sounding.trend?.kind === "rising");
}

/** A rise that cannot well take her is told by the word, and is no sign to leave her by. */
function isLosing({ sounding, word }: Scene): boolean {
  if (sounding === undefined || sounding.misfit.flagged) return false;
  const isRising = word.kind === "losing" || word.kind === "should-be-losing";
  return isRising && sounding.forecast.loss.chance >= RISING_TAKES_HER;
}

function isPumped({ input }: Scene): boolean {
  return input.pumping.some(({ to, flow }) => to === undefined && flow > 0);
}
