import { likelyPrior, NINETY, readSoundings, type SoundedSpace, type Sounding, type SoundingPrior } from "#flooding";
import { omitMissing } from "./casualty-input.ts";
import type { OnSceneInput } from "./on-scene-fields.ts";

/** Soundings between two changes of the hole, with the share of it then open. */
interface Watch {
  readonly readings: OnSceneInput["readings"];
  /** Share open against the watch before. */
  readonly share: number;
  /** When the hole was changed again; never, for the last. */
  readonly until: number;
}

/** Spread of a patch's worth: it is judged by eye [1]. */
const PATCH_LOG_SPREAD = 0.5;
/** Spread of the area of a hole that somebody has told of: seldom seen whole, often half blocked [1]. */
const TOLD_LOG_SPREAD = 1.2;
/** Watches read; the ones before them say little of the hole now. */
const MOST_WATCHES = 3;

/**
 * What the soundings say, the hole having been changed on the way: each stretch between two changes is read by itself,
 * and what it says of the hole is what is thought of it before the next, times the share still open.
 *
 * @param input - at least one reading
 * @param space - being sounded
 */
export function readWatches(input: OnSceneInput, space: SoundedSpace): Sounding {
  const last = latestWatches(input).at(-1)!;
  return readWatch(input, space, { ...last, until: input.now }, thoughtBefore(input, space));
}

/**
 * What is thought of her before the last watch: what the watches before it said, each at its own end. The time that has
 * gone by since changes nothing of it.
 *
 * @param input - at least one reading
 * @param space - being sounded
 */
export function thoughtBefore(input: OnSceneInput, space: SoundedSpace): SoundingPrior {
  const watches = latestWatches(input);
  return watches
    .slice(1)
    .reduce(
      (prior, watch, i) => nextPrior(prior, readWatch(input, space, watches[i]!, prior), watch),
      firstPrior(input, watches[0]!.readings[0]!.level),
    );
}

function latestWatches(input: OnSceneInput): readonly Watch[] {
  return watchesOf(input).slice(-MOST_WATCHES);
}

function readWatch(input: OnSceneInput, space: SoundedSpace, watch: Watch, prior: SoundingPrior): Sounding {
  return readSoundings({
    space,
    readings: watch.readings,
    pumping: input.pumping.filter(({ from, to }) => to === undefined || to > from).map((one) => omitMissing(one)),
    prior,
    now: watch.until,
    gains: omitMissing({ secondPump: input.secondPump }),
  });
}

/** A stretch with no sounding of its own begins at the last one before it. */
function watchesOf({ readings, patches = [] }: OnSceneInput): readonly Watch[] {
  const ends = [...patches.map(({ at }) => at), Number.POSITIVE_INFINITY];
  const watches: Watch[] = [];
  let open = 1;
  let pending = 1;
  ends.forEach((end, i) => {
    const start = i === 0 ? Number.NEGATIVE_INFINITY : ends[i - 1]!;
    const own = readings.filter(({ at }) => at >= start && at < end);
    const isLast = i === ends.length - 1;
    const borrowed = own.length === 0 && isLast && pending !== 1 ? readings.slice(-1) : own;
    if (borrowed.length > 0) {
      watches.push({ readings: borrowed, share: watches.length === 0 ? 1 : pending, until: end });
      pending = 1;
    }
    const next = patches[i]?.open ?? open;
    pending *= shareOf(next, open);
    open = next;
  });
  return watches;
}

/** A hole stopped altogether still weeps: a fiftieth is left of it. */
function shareOf(next: number, before: number): number {
  return Math.max(0.02, next) / Math.max(0.02, before);
}

function firstPrior(input: OnSceneInput, level: number): SoundingPrior {
  const usual = likelyPrior(level);
  const diameter = input.hole?.diameter;
  const isMeasured = input.boat.beam !== undefined;
  return {
    ...usual,
    areaLogSpread: isMeasured ? 0.25 : 0.4,
    noise: 0.02,
    ...(diameter !== undefined && { holeArea: { median: (Math.PI / 4) * diameter ** 2, logSpread: TOLD_LOG_SPREAD } }),
  };
}

function nextPrior(prior: SoundingPrior, sounding: Sounding, { readings, share }: Watch): SoundingPrior {
  const { holeArea } = sounding.quantities;
  const known = Math.log(holeArea.p95 / holeArea.p05) / (2 * NINETY);
  return {
    ...prior,
    holeArea: { median: holeArea.p50 * share, logSpread: Math.hypot(known, PATCH_LOG_SPREAD) },
    startLevel: { median: readings[0]!.level, spread: 0.1 },
  };
}
