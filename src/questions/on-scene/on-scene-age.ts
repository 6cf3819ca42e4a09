import { formatQuantity } from "#base";
import type { Sounding } from "#flooding";
import type { OnSceneInput, OnSceneWarning } from "./on-scene-fields.ts";
import { sayDuration } from "#words";
import { sayWord, wordByStick } from "./on-scene-word.ts";

/**
 * As she was at the last sounding: the question that would have been asked then. What was written of a later instant is
 * not in it: no patch, no pump started or stopped, no sounding of a further space.
 *
 * @param input - as asked now
 * @returns the same up to the last sounding of the first space; as of `input.now` where there is none
 * @example asLastSounded({ now: 900, readings: [{ at: 300, level: 0.4 }], pumping: [], spaces: [] }).now // 300
 */
export function asLastSounded(input: OnSceneInput): OnSceneInput {
  const now = input.readings.at(-1)?.at ?? input.now;
  return {
    ...input,
    now,
    patches: (input.patches ?? []).filter(({ at }) => at <= now),
    pumping: pumpedUntil(input.pumping, now),
    ...(input.pumpSeen && { pumpSeen: input.pumpSeen.filter(({ at }) => at <= now) }),
    spaces: input.spaces.map((space) => spaceAsOf(space, now)),
  };
}

type Pumping = OnSceneInput["pumping"];
type Space = OnSceneInput["spaces"][number];

/** What was stopped later was still running then. */
function pumpedUntil(pumping: Pumping, now: number): Pumping {
  return pumping
    .filter(({ from }) => from <= now)
    .map(({ to, ...run }) => (to === undefined || to > now ? run : { ...run, to }));
}

/** A further space at the level it was last sounded with by then. */
function spaceAsOf({ readings = [], pumping = [], level, ...space }: Space, now: number): Space {
  const seen = readings.filter(({ at }) => at <= now);
  const then = seen.length < readings.length ? seen.at(-1)?.level : level;
  return { ...space, readings: seen, pumping: pumpedUntil(pumping, now), level: then };
}

/** True with one sounding: it shows neither rise nor fall, and what is computed from it is what is thought of any hole. */
export function isLone({ readings }: Pick<OnSceneInput, "readings">): boolean {
  return readings.length === 1;
}

/** Soundings longer than this before the last say nothing of her now [s]. */
const WATCHED_FOR = 6 * 3600;

/** The question without soundings so old that another casualty might have been theirs. */
export function watchedLately(input: OnSceneInput): OnSceneInput {
  const last = input.readings.at(-1)?.at ?? input.now;
  return { ...input, readings: input.readings.filter(({ at }) => at >= last - WATCHED_FOR) };
}

/**
 * When a pump or the hole was last changed after the last sounding of the first space, by now: what follows from it is
 * to be expected, and nobody has seen it.
 *
 * @param input - with at least one sounding
 * @returns on the readings' clock [s]; undefined where the last sounding is newer than every change
 */
export function changedUnsounded({ readings, pumping, patches = [], now }: OnSceneInput): number | undefined {
  const last = readings.at(-1)!.at;
  const changes = [...pumping.flatMap(({ from, to }) => [from, to ?? from]), ...patches.map(({ at }) => at)];
  const since = changes.filter((at) => at > last && at <= now);
  return since.length === 0 ? undefined : Math.max(...since);
}

/**
 * How she was at the last sounding, in words: what the stick had shown by then, and nothing carried on.
 *
 * @param input - with its soundings
 * @param level - in her then [m]
 * @param age - since then [s]
 */
export function sayLastKnown(input: OnSceneInput, level: number, age: number): string {
  const said = formatQuantity(level, "length", { unit: "cm", digits: 2 });
  const state = isLone(input) ? "one sounding, which shows neither rise nor fall." : sayWord(wordByStick(input));
  return `When last sounded, ${sayDuration(age, "elapsed")} ago, with ${said} in her: ${state}`;
}

/** That what is said rests on an old sounding. */
export function staleWarning(sounding: Sounding | undefined): OnSceneWarning | undefined {
  if (!sounding?.stale) return undefined;
  return {
    kind: "stale",
    signal: "WARNING",
    hazard: "Old sounding",
    says: `The last sounding is ${sayDuration(sounding.age, "elapsed")} old. What is said of her now is carried on from it, and anything may have changed since. Sound now.`,
  };
}
