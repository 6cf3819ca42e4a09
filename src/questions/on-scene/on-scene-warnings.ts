import { formatEstimate, formatQuantity } from "#base";
import type { Lying, Sounding, SoundingWarningKind } from "#flooding";
import { staleWarning } from "./on-scene-age.ts";
import { betweenWarning, type WatchedSpace } from "./on-scene-between.ts";
import type { OnSceneInput, OnSceneWarning, PumpOut, Word } from "./on-scene-fields.ts";
import { isLossTold, isNearlyDry, RISING_TAKES_HER } from "./on-scene-times.ts";
import { pumpWarnings } from "./on-scene-pumps.ts";

/** What warnings go by, besides what was given. */
export interface Scene {
  readonly input: OnSceneInput;
  readonly hull: { readonly length: number; readonly beam: number; readonly depth: number; readonly draught: number };
  readonly lying: Lying;
  readonly dryFreeboard: number;
  /** Where there is more than one, each with its soundings. */
  readonly spaces: readonly WatchedSpace[];
  readonly sounding?: Sounding;
  /** The last sounding is higher than her deck edge. */
  readonly isAboveDeck: boolean;
  /** The word at the top. */
  readonly word: Word;
  /** What each pump is thought to move. */
  readonly pumps: readonly PumpOut[];
}

/** Limits of judgement, for boats of this size [m], [rad]. */
const LITTLE_GM = 0.2;
const DOUBTFUL_GM = 0.35;
/** A list of so much is gone whatever is computed [rad]. */
const GREAT_LIST = (20 * Math.PI) / 180;
const LISTING = (3 * Math.PI) / 180;
const LITTLE_FREEBOARD = 0.15;
const LOW_FREEBOARD = 0.3;

/** What matters on scene, gravest first: what kills, then what would mislead. */
export function warnOf(scene: Scene): OnSceneWarning[] {
  const all = [
    fuelWarning(scene),
    aboveDeckWarning(scene),
    ...(scene.isAboveDeck ? [] : [...stabilityWarnings(scene), freeboardWarning(scene)]),
    staleWarning(scene.sounding),
    betweenWarning(scene.spaces),
    ...pumpWarnings(scene.input, scene.pumps),
    ...soundingWarnings(scene),
    unpumpedWarning(scene),
  ];
  const order = ["DANGER", "WARNING", "CAUTION", "NOTICE"] as const;
  return all
    .filter((one): one is OnSceneWarning => one !== undefined)
    .sort((one, other) => order.indexOf(one.signal) - order.indexOf(other.signal));
}

function fuelWarning({ input }: Scene): OnSceneWarning | undefined {
  if (input.fuelSmelt !== true) return undefined;
  return {
    kind: "fuel-smelt",
    signal: "DANGER",
    hazard: "Fuel smelt or seen",
    says: "Stop every pump and engine. No switches, no flame. Get people into open air. Pump again only when the person in charge has found it clear.",
  };
}

/** A guessed depth may be this far out [1]. */
const GUESSED_DEPTH = 1.3;

/** The last sounding is higher than she is deep: a slip of unit or figure until somebody has looked again. */
export function isAboveDeck({ input, hull }: Pick<Scene, "input" | "hull">): boolean {
  const level = input.readings.at(-1)?.level ?? 0;
  return level > hull.depth * (input.boat.depth === undefined ? GUESSED_DEPTH : 1);
}

function aboveDeckWarning(scene: Scene): OnSceneWarning | undefined {
  if (!scene.isAboveDeck) return undefined;
  const { input, hull } = scene;
  const level = input.readings.at(-1)!.level;
  const read = formatQuantity(level, "length", { digits: 2 });
  const deck = formatEstimate(hull.depth, "length");
  return {
    kind: "above-deck",
    signal: "WARNING",
    hazard: "Sounding above her deck",
    says: `The last sounding, ${read}, is higher than her deck edge, about ${deck} above the keel by what is known of her. Look at the figure and its unit, and sound again. If it is right, she is under: people off.`,
  };
}

function stabilityWarnings(scene: Scene): (OnSceneWarning | undefined)[] {
  const { input, lying } = scene;
  const isGone = input.righting === "stays" || Math.abs(input.list ?? 0) >= GREAT_LIST;
  const gm = lying.kind === "afloat" ? lying.gm : 0;
  const isLittle = gm < LITTLE_GM || input.righting === "slowly";
  const lists = Math.abs(input.list ?? 0) > LISTING;
  const isDoubtful = gm < DOUBTFUL_GM || (input.righting !== undefined && input.righting !== "comes-back");
  return [isGone ? GONE : isLittle ? LITTLE : undefined, lists && isPumped(input) && isDoubtful ? ONE_SIDE : undefined];
}

const GONE: OnSceneWarning = {
  kind: "stability-gone",
  signal: "DANGER",
  hazard: "She may roll over",
  says: "Stability is gone or nearly so. Nobody below. People to the high side, then off. Do not pump out one side.",
};
const LITTLE: OnSceneWarning = {
  kind: "stability-little",
  signal: "WARNING",
  hazard: "Little stability",
  says: "Loose water leaves her little to stay upright with. Clear high and loose water first. Keep people and gear low and still. Time her roll: longer means less.",
};
const ONE_SIDE: OnSceneWarning = {
  kind: "one-side",
  signal: "DANGER",
  hazard: "Pumping from one side",
  says: "She lists and her stability is in doubt: taking water out of one side may roll her over. Draw from the middle, or stop and find out why she lists.",
};

function freeboardWarning({ lying, dryFreeboard }: Scene): OnSceneWarning | undefined {
  if (lying.kind !== "afloat" || lying.freeboard >= LOW_FREEBOARD || lying.freeboard > 0.8 * dryFreeboard) {
    return undefined;
  }
  const left = formatEstimate(Math.max(0, lying.freeboard), "length");
  return {
    kind: "downflooding-near",
    signal: lying.freeboard < LITTLE_FREEBOARD ? "DANGER" : "WARNING",
    hazard: "Water near the deck edge",
    says: `About ${left} of freeboard is left by this estimate. Close hatches, doors and vents; move weight away from the low side and the low end.`,
  };
}

const SIGNALS: Readonly<Record<SoundingWarningKind, Pick<OnSceneWarning, "signal" | "hazard">>> = {
  "loss-possible": { signal: "WARNING", hazard: "She may be lost" },
  "does-not-fit": { signal: "WARNING", hazard: "Soundings do not fit" },
  "fall-has-slowed": { signal: "WARNING", hazard: "The fall has slowed" },
  "pump-will-suck-air": { signal: "NOTICE", hazard: "Pump near the bottom" },
  "slip-likely": { signal: "NOTICE", hazard: "A sounding looks wrong" },
  "few-readings": { signal: "NOTICE", hazard: "Few soundings" },
};

/** Water does not go by itself: somebody pumps who is not on the sheet, and every forecast is made without them. */
function unpumpedWarning({ input, word }: Scene): OnSceneWarning | undefined {
  if (word.kind !== "gaining" || isPumped(input)) return undefined;
  return {
    kind: "falls-unpumped",
    signal: "CAUTION",
    hazard: "It falls, and no pump is written down",
    says: "Something takes the water out, her own pump perhaps. Ask what it is and write it down. The forecast does not know it and stands too high: go by the soundings.",
  };
}

/** Soundings before the hole was changed say little of it now. */
const FEW_SINCE =
  "Fewer than four soundings since the hole was changed: the forecast is wide. Sound again at the same marked place.";

/** Where nothing steady fits no time can be told; that she may be lost still can. */
const LOSS_UNTIMED =
  "She may be lost; when cannot be said, since the soundings do not fit. Sound again at once. The person in charge decides when people leave.";

function soundingWarnings(scene: Scene): OnSceneWarning[] {
  const { sounding, word } = scene;
  if (sounding === undefined) return [];
  const isOfHer = (isLossTold(word.kind) || sounding.misfit.flagged) && !sounding.stale && !scene.isAboveDeck;
  const isTold = isOfHer && sounding.forecast.loss.chance >= RISING_TAKES_HER;
  const own = sounding.warnings.filter(({ kind }) => {
    if (kind === "pump-will-suck-air") return !sounding.stale;
    if (kind === "fall-has-slowed") return !isNearlyDry(sounding);
    return kind !== "loss-possible" || isTold;
  });
  return own.map(({ kind, says }) => ({ kind, says: wordsOf(scene, kind) ?? says, ...SIGNALS[kind] }));
}

function wordsOf({ input, sounding }: Scene, kind: SoundingWarningKind): string | undefined {
  if (kind === "few-readings" && input.readings.length >= 4) return FEW_SINCE;
  return kind === "loss-possible" && sounding?.misfit.flagged ? LOSS_UNTIMED : undefined;
}

function isPumped({ pumping }: OnSceneInput): boolean {
  return pumping.some(({ to, flow }) => to === undefined && flow > 0);
}
