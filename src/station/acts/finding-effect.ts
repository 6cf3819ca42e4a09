import type { Fault } from "#base";
import type { Effect, Pattern } from "#kit";
import type { Entry } from "#log";
import type { Bodies } from "#readiness";
import { because } from "../judging/faults.ts";

/** From the mildest to what grounds a kit. */
const BY_WEIGHT: readonly Effect[] = ["notes", "limits", "grounds"];

/**
 * Names of the patterns by which a line about a kit is judged: the one it names, if the kit was ever built to it, else
 * every one that might be meant, since a line may name what it likes.
 *
 * @param builtTo - "id@version" of every pattern the kit was enrolled with or rebuilt to
 */
export function patternsToJudgeBy({ pattern }: Entry, builtTo: readonly string[]): readonly string[] {
  if (pattern === undefined) return builtTo;
  return builtTo.includes(pattern) ? [pattern] : [...builtTo, pattern];
}

/** What a mode does to its kit is for the pattern to say: a finding may weigh more, never less. */
export function judgeEffect(
  body: Pick<Bodies["finding-raised"], "mode" | "effect">,
  patterns: readonly Pattern[],
): readonly Fault[] {
  const modes = patterns.flatMap((pattern) => pattern.modes.filter(({ id }) => id === body.mode));
  const least = Math.max(-1, ...modes.map(({ effect }) => BY_WEIGHT.indexOf(effect)));
  if (BY_WEIGHT.indexOf(body.effect) >= least) return [];
  const allowed = BY_WEIGHT.slice(least)
    .map((effect) => `"${effect}"`)
    .join(" or ");
  return [because("SN-138", "body.effect", body.effect, allowed, "Raise it as what the kit's pattern says it does.")];
}

/** True for a line that says to which pattern a kit is built. */
export function isBuilding({ kind }: Entry): boolean {
  return kind === "kit-enrolled" || kind === "kit-rebuilt";
}
