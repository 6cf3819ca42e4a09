import type { OnSceneInput } from "./on-scene-fields.ts";

type Pumping = OnSceneInput["pumping"];

/**
 * When pumping or hole were changed, as told: a pump started or stopped, its flow, throttle or lift, a patch.
 *
 * @param input - a sheet
 * @returns in order of time, none after `now` [s]; a run that goes on unchanged under a new line is no change
 */
export function changesOf({ pumping, patches = [], now }: Pick<OnSceneInput, "pumping" | "patches" | "now">): number[] {
  const instants = [...new Set(pumping.flatMap(({ from, to }) => (to === undefined ? [from] : [from, to])))];
  const turned = instants.filter((at) => runningAt(pumping, at, false) !== runningAt(pumping, at, true));
  const all = [...turned, ...patches.map(({ at }) => at)].filter((at) => at <= now);
  return [...new Set(all)].toSorted((a, b) => a - b);
}

/** The last of them; undefined where nothing was changed. */
export function lastChangeOf(input: Parameters<typeof changesOf>[0]): number | undefined {
  return changesOf(input).at(-1);
}

/** All that runs just before or just after an instant, as one text. */
function runningAt(pumping: Pumping, at: number, isAfter: boolean): string {
  return pumping
    .filter(({ from, to = Infinity, flow }) => flow > 0 && (isAfter ? from <= at && to > at : from < at && to >= at))
    .map(({ pump, flow, throttle, lift }) => [pump, flow, throttle, lift].join())
    .toSorted()
    .join(";");
}
