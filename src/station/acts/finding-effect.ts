import type { Fault } from "#base";
import { EFFECTS_BY_WEIGHT, gravestEffect, type Effect, type Pattern } from "#kit";
import type { Entry } from "#log";
import type { Bodies } from "#readiness";
import { because } from "../judging/faults.ts";

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
  return judgeLeast(
    body.effect,
    gravestEffect(modes.map(({ effect }) => effect)),
    "Raise it as what the kit's pattern says it does.",
  );
}

/** An item that is not there fails in every way that it can: no milder than the gravest of its modes, or than its lapse. */
export function judgeTakenOut(
  body: Pick<Bodies["item-robbed"], "item" | "effect">,
  patterns: readonly Pattern[],
): readonly Fault[] {
  const least = gravestEffect(patterns.flatMap((pattern) => effectsOf(pattern, body.item)));
  return judgeLeast(body.effect, least, "Without it the kit is as if it had failed in the worst way that it can.");
}

/** What taking an item out does to its kit at the least, from the mildest on. */
export function effectsOfTaking(pattern: Pattern, item: string): readonly Effect[] {
  return EFFECTS_BY_WEIGHT.slice(
    Math.max(0, EFFECTS_BY_WEIGHT.indexOf(gravestEffect(effectsOf(pattern, item)) ?? "notes")),
  );
}

function effectsOf({ items, modes }: Pattern, item: string): readonly Effect[] {
  const lapses = items.filter(({ id, life }) => id === item && life.kind !== "none").map(({ lapse }) => lapse);
  return [...lapses, ...modes.filter((mode) => mode.item === item).map(({ effect }) => effect)];
}

function judgeLeast(effect: Effect, least: Effect | undefined, remedy: string): readonly Fault[] {
  const from = least === undefined ? 0 : EFFECTS_BY_WEIGHT.indexOf(least);
  if (EFFECTS_BY_WEIGHT.indexOf(effect) >= from) return [];
  const allowed = EFFECTS_BY_WEIGHT.slice(from)
    .map((one) => `"${one}"`)
    .join(" or ");
  return [because("SN-138", "body.effect", effect, allowed, remedy)];
}

/** True for a line that says to which pattern a kit is built. */
export function isBuilding({ kind }: Entry): boolean {
  return kind === "kit-enrolled" || kind === "kit-rebuilt";
}
