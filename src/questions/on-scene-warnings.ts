import { formatEstimate, formatQuantity } from "#base";
import { gmFromRollPeriod, type Lying, type Sounding, type SoundingWarningKind } from "#flooding";
import { isLone, staleWarning } from "./on-scene-age.ts";
import { betweenWarning, type WatchedSpace } from "./on-scene-between.ts";
import type { OnSceneInput, OnSceneWarning } from "./on-scene-fields.ts";
import { weakPumpWarning } from "./on-scene-pumps.ts";

/** What warnings go by, besides what was given. */
export interface Scene {
  readonly input: OnSceneInput;
  readonly hull: { readonly length: number; readonly beam: number; readonly depth: number; readonly draught: number };
  readonly lying: Lying;
  readonly dryFreeboard: number;
  /** Where there is more than one, each with its soundings. */
  readonly spaces: readonly WatchedSpace[];
  readonly sounding?: Sounding;
}

/** Limits of judgement, for boats of this size [m], [rad]. */
const LITTLE_GM = 0.2;
const DOUBTFUL_GM = 0.35;
const LISTING = (3 * Math.PI) / 180;
const LITTLE_FREEBOARD = 0.15;
const LOW_FREEBOARD = 0.3;
/** Loss this near is a matter of minutes [s]. */
const SOON = 20 * 60;

/** What matters on scene, gravest first: what kills, then what would mislead. */
export function warnOf(scene: Scene): OnSceneWarning[] {
  const all = [
    fuelWarning(scene),
    aboveDeckWarning(scene),
    ...(isAboveDeck(scene) ? [] : [...stabilityWarnings(scene), freeboardWarning(scene)]),
    staleWarning(scene.sounding),
    betweenWarning(scene.spaces),
    weakPumpWarning(scene.input, scene.sounding),
    ...soundingWarnings(scene),
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
function isAboveDeck({ input, hull }: Scene): boolean {
  const level = input.readings.at(-1)?.level ?? 0;
  return level > hull.depth * (input.boat.depth === undefined ? GUESSED_DEPTH : 1);
}

function aboveDeckWarning(scene: Scene): OnSceneWarning | undefined {
  if (!isAboveDeck(scene)) return undefined;
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
  const isGone = input.righting === "stays" || lying.kind !== "afloat" || lying.gm <= 0;
  const gm = leastGm(scene);
  const isLittle = gm < LITTLE_GM || input.righting === "slowly";
  const lists = Math.abs(input.list ?? 0) > LISTING;
  const isDoubtful = gm < DOUBTFUL_GM || (input.righting !== undefined && input.righting !== "comes-back");
  return [isGone ? GONE : isLittle ? LITTLE : undefined, lists && isPumped(input) && isDoubtful ? ONE_SIDE : undefined];
}

/** The lower of what the water leaves by this model and what the roll says. */
function leastGm({ input, hull, lying }: Scene): number {
  const modelled = lying.kind === "afloat" ? lying.gm : 0;
  if (input.rollPeriod === undefined) return modelled;
  return Math.min(modelled, gmFromRollPeriod({ ...hull, period: input.rollPeriod }).atLeast);
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
  "few-readings": { signal: "NOTICE", hazard: "Few soundings" },
};

/** Soundings before the hole was changed say little of it now. */
const FEW_SINCE =
  "Fewer than four soundings since the hole was changed: the forecast is wide. Sound again at the same marked place.";

/** Where nothing steady fits no time can be told; that she may be lost still can. */
const LOSS_UNTIMED =
  "She may be lost; when cannot be said, since the soundings do not fit. Sound again at once. The person in charge decides when people leave.";

function soundingWarnings(scene: Scene): OnSceneWarning[] {
  const { sounding } = scene;
  if (sounding === undefined) return [];
  const isSoon = isLossWithin(sounding, SOON) && !sounding.misfit.flagged;
  const own = sounding.warnings.filter(({ kind }) => kind !== "loss-possible" || !isBlind(scene));
  return own.map(({ kind, says }) => ({
    kind,
    says: wordsOf(scene, kind) ?? says,
    ...SIGNALS[kind],
    ...(kind === "loss-possible" && isSoon && { signal: "DANGER" as const }),
  }));
}

function wordsOf({ input, sounding }: Scene, kind: SoundingWarningKind): string | undefined {
  if (kind === "few-readings" && input.readings.length >= 4) return FEW_SINCE;
  return kind === "loss-possible" && sounding?.misfit.flagged ? LOSS_UNTIMED : undefined;
}

/**
 * One sounding and no hole told: a loss would be that of any boat with any hole. A sounding above her deck: a loss would
 * be that of a slip of the pen.
 */
function isBlind(scene: Scene): boolean {
  const { input } = scene;
  return isAboveDeck(scene) || (isLone(input) && input.hole?.diameter === undefined);
}

/** True where there is a real chance that she is lost within so many seconds. */
function isLossWithin({ forecast: { loss } }: Sounding, seconds: number): boolean {
  return loss.chance >= 0.05 && (loss.time?.p05 ?? Number.POSITIVE_INFINITY) <= seconds;
}

/** Signs that people should leave her: what experience says, whatever the forecast. */
export function signsToLeave(scene: Scene): { kind: "now" | "be-ready" | "no-sign"; because: string[] } {
  const now = grave(scene);
  if (now.length > 0) return { kind: "now", because: now };
  const soon = growing(scene);
  return soon.length > 0 ? { kind: "be-ready", because: soon } : { kind: "no-sign", because: [] };
}

function grave(scene: Scene): string[] {
  const { input, lying } = scene;
  const isRead = !isAboveDeck(scene);
  const signs: (string | false)[] = [
    input.righting === "stays" && "The list no longer comes back.",
    isRead && lying.kind !== "afloat" && "By this estimate she does not stay afloat and upright with the water in her.",
    isRead && lying.kind === "afloat" && lying.freeboard <= 0.05 && "The deck edge is at the water.",
    mayBeLost(scene, 600) && "She may be lost within ten minutes.",
  ];
  return signs.filter((one) => one !== false);
}

/** By a forecast that can be trusted: neither from one sounding alone nor from soundings that do not fit. */
function mayBeLost(scene: Scene, within: number): boolean {
  const { sounding } = scene;
  return sounding !== undefined && !sounding.misfit.flagged && !isBlind(scene) && isLossWithin(sounding, within);
}

function growing(scene: Scene): string[] {
  const { input, lying, sounding } = scene;
  const signs: (string | false)[] = [
    isAboveDeck(scene) && "By the last sounding she is under: look at the figure and sound again.",
    !isAboveDeck(scene) &&
      sounding?.misfit.flagged === true &&
      sounding.trend?.kind === "rising" &&
      "The water rises, and the soundings do not fit.",
    isLosing(scene) && (isPumped(input) ? "The water gains on the pumps." : "The water rises, and no pump runs."),
    mayBeLost(scene, 3600) && "She may be lost within the hour.",
    input.righting === "slowly" && "She comes back slowly.",
    !isAboveDeck(scene) && lying.kind === "afloat" && lying.freeboard < LITTLE_FREEBOARD && "Little freeboard is left.",
    input.fuelSmelt === true && "Fuel was smelt and the pumps are off.",
  ];
  return signs.filter((one) => one !== false);
}

function isLosing(scene: Scene): boolean {
  const { input, sounding } = scene;
  if (sounding === undefined || sounding.misfit.flagged || isLone(input) || isAboveDeck(scene)) return false;
  return sounding.verdict.kind === "losing";
}

function isPumped({ pumping }: OnSceneInput): boolean {
  return pumping.some(({ to, flow }) => to === undefined && flow > 0);
}
