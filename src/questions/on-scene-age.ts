import { formatQuantity } from "#base";
import type { Sounding } from "#flooding";
import type { OnSceneInput, OnSceneWarning } from "./on-scene-fields.ts";

/** As she was at the last sounding: the question that would have been asked then. */
export function asLastSounded(input: OnSceneInput): OnSceneInput {
  const now = input.readings.at(-1)!.at;
  return { ...input, now, patches: (input.patches ?? []).filter(({ at }) => at <= now) };
}

/**
 * The one line.
 *
 * @param sounding - what the soundings say now
 * @returns "Gaining: 87 in 100." or, where the last sounding is too old, "Not known: last sounding 47 min ago. Sound now."
 */
export function sayReading(sounding: Sounding): string {
  return sounding.stale ? `Not known: last sounding ${sayAge(sounding.age)} ago. Sound now.` : sayState(sounding);
}

/**
 * How she was at the last sounding, in words.
 *
 * @param then - what the soundings said then
 * @param age - since then [s]
 */
export function sayLastKnown(then: Sounding, age: number): string {
  const level = formatQuantity(then.quantities.levelNow.p50, "length", { unit: "cm", digits: 1 });
  return `When last sounded, ${sayAge(age)} ago, with ${level} in her: ${sayState(then)}`;
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

/** Counted, not estimated: in full minutes. */
function sayAge(seconds: number): string {
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
