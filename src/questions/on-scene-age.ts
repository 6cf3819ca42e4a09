import { formatQuantity } from "#base";
import type { Sounding } from "#flooding";
import type { OnSceneInput, OnSceneWarning } from "./on-scene-fields.ts";

/**
 * As she was at the last sounding: the question that would have been asked then. What was written of a later instant is
 * not in it: no patch, no pump started or stopped, no sounding of a further space.
 *
 * @param input - as asked now
 * @returns the same up to the last sounding of the first space; as of `input.now` where there is none
 * @example asLastSounded(input).now // input.readings.at(-1).at
 */
export function asLastSounded(input: OnSceneInput): OnSceneInput {
  const now = input.readings.at(-1)?.at ?? input.now;
  return {
    ...input,
    now,
    patches: (input.patches ?? []).filter(({ at }) => at <= now),
    pumping: pumpedUntil(input.pumping, now),
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
 * The one line.
 *
 * @param input - with its soundings
 * @param sounding - what they say now
 * @returns "Gaining: 87 in 100."; "Should be gaining: 87 in 100. ..." where a pump or the hole was changed since; "One
 *   sounding: sound again." after the first; where the last is too old, "Not known: last sounding 47 min ago. Sound now."
 */
export function sayReading(input: OnSceneInput, sounding: Sounding): string {
  if (sounding.stale) return `Not known: last sounding ${sayAge(sounding.age)} ago. Sound now.`;
  if (isLone(input)) return "One sounding: sound again.";
  const isExpected = changedUnsounded(input) !== undefined && !sounding.misfit.flagged;
  return isExpected ? sayExpected(sounding) : sayState(sounding);
}

function sayExpected({ verdict: { kind, chance } }: Sounding): string {
  const expected = `Should be ${kind}: ${Math.min(99, Math.round(100 * chance))} in 100.`;
  return `${expected} Not sounded since the pumping or the hole was changed.`;
}

/**
 * How she was at the last sounding, in words.
 *
 * @param input - with its soundings
 * @param then - what they said then
 * @param age - since then [s]
 */
export function sayLastKnown(input: OnSceneInput, then: Sounding, age: number): string {
  const level = formatQuantity(then.quantities.levelNow.p50, "length", { unit: "cm", digits: 1 });
  const state = isLone(input) ? "one sounding, which shows neither rise nor fall." : sayState(then);
  return `When last sounded, ${sayAge(age)} ago, with ${level} in her: ${state}`;
}

/** Where no steady hole and pump fit, the last soundings are all there is to go by. */
function sayState({ verdict: { kind, chance }, misfit, trend }: Sounding): string {
  if (misfit.flagged) {
    return trend === undefined || trend.kind === "unclear"
      ? `${MISFIT}.`
      : `${MISFIT}; the last ones are ${trend.kind}.`;
  }
  return `${kind.charAt(0).toUpperCase()}${kind.slice(1)}: ${Math.min(99, Math.round(100 * chance))} in 100.`;
}

const MISFIT = "The soundings do not fit: sound again";

/**
 * An age: counted, not estimated, so in full minutes.
 *
 * @param seconds - [s]
 * @example sayAge(7500) // "2 h 5 min"
 */
export function sayAge(seconds: number): string {
  const minutes = Math.floor(seconds / 60);
  if (minutes < 120) return `${minutes} min`;
  const rest = minutes % 60;
  return rest === 0 ? `${minutes / 60} h` : `${Math.floor(minutes / 60)} h ${rest} min`;
}

/** That what is said rests on an old sounding. */
export function staleWarning(sounding: Sounding | undefined): OnSceneWarning | undefined {
  if (!sounding?.stale) return undefined;
  return {
    kind: "stale",
    signal: "WARNING",
    hazard: "Old sounding",
    says: `The last sounding is ${sayAge(sounding.age)} old. What is said of her now is carried on from it, and anything may have changed since. Sound now.`,
  };
}
