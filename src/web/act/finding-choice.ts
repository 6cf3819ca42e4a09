import type { Check, Effect, Item, Mode, Pattern, Step } from "#kit";
import type { Words } from "#words";

/** What a found-wrong answer may be a finding of. The first mode is offered chosen. */
export interface FindingChoice {
  readonly item: Item;
  readonly modes: readonly Mode[];
}

/** Mode of a finding that the pattern does not know; its effect is given by the person. */
export const OTHER = "other";

/** A finding as picked, before it is written. */
export interface PickedMode {
  readonly item: string;
  readonly mode: string;
  readonly effect: Effect;
  readonly limit?: string;
}

/**
 * Items and modes a step can find, those of the check first.
 * A step with no check offers the items it stows or renews, with every mode they have.
 */
export function findingChoices(pattern: Pattern, step: Step, check?: Check): readonly FindingChoice[] {
  if (check)
    return group(
      pattern,
      pattern.modes.filter((mode) => check.finds.includes(mode.id)),
      [check.item],
    );
  const items = [...step.renews, ...step.stows];
  return group(
    pattern,
    pattern.modes.filter((mode) => items.includes(mode.item)),
    items,
  );
}

function group(pattern: Pattern, modes: readonly Mode[], first: readonly string[]): readonly FindingChoice[] {
  const wanted = new Set([...first, ...modes.map((mode) => mode.item)]);
  return [...wanted].flatMap((id) => {
    const item = pattern.items.find((one) => one.id === id);
    return item ? [{ item, modes: modes.filter((mode) => mode.item === id) }] : [];
  });
}

/** The mode as a finding would carry it. */
export function pickMode(mode: Mode): PickedMode {
  return {
    item: mode.item,
    mode: mode.id,
    effect: mode.effect,
    ...(mode.limit === undefined ? {} : { limit: mode.limit }),
  };
}

/** The choice offered chosen when the sheet opens: the first mode of the likely effect, else the first. */
export function preselect(choices: readonly FindingChoice[], likely?: Effect): PickedMode | undefined {
  const modes = choices.flatMap((choice) => choice.modes);
  const mode = modes.find(({ effect }) => effect === likely) ?? modes[0];
  return mode && pickMode(mode);
}

/** What an effect means for the kit, in words. */
export function sayEffect(effect: Effect, words: Words["kitLine"], limit?: string): string {
  return effect === "limits" && limit ? words.limitsTo({ limit }) : words[effect]();
}
