import { isCalledFor, type Check, type Item, type Met, type Mode, type Pattern, type StageId, type Step } from "#kit";

/** A pattern with its parts by id, for rules that look many of them up. */
export interface Lookup {
  readonly pattern: Pattern;
  readonly items: ReadonlyMap<string, Item>;
  readonly modes: ReadonlyMap<string, Mode>;
  readonly checks: ReadonlyMap<string, Check>;
  readonly steps: ReadonlyMap<string, PlacedStep>;
}

export type PlacedStep = Step & { readonly stage: StageId };

/**
 * Puts a pattern's parts in reach by id. A step that belongs to what the kit has not met may be left out, and so counts as
 * optional.
 *
 * @param met - what the kit met in use since it was last sealed
 */
export function lookUp(pattern: Pattern, met: readonly Met[] = []): Lookup {
  return {
    pattern,
    items: byId(pattern.items),
    modes: byId(pattern.modes),
    checks: byId(pattern.checks),
    steps: byId(pattern.stages.flatMap((stage) => stage.steps.map((step) => placed(step, stage.id, met)))),
  };
}

function placed(step: Step, stage: StageId, met: readonly Met[]): PlacedStep {
  return { ...step, stage, optional: step.optional || !isCalledFor(step, met) };
}

/** Ids of the steps that renew an item, or that stow it where none does. */
export function stepsForItem({ steps }: Lookup, item: string): readonly string[] {
  const renewing = [...steps.values()].filter((step) => step.renews.includes(item));
  const chosen = renewing.length > 0 ? renewing : [...steps.values()].filter((step) => step.stows.includes(item));
  return chosen.map((step) => step.id);
}

/** Ids of the steps at which any of these checks is made. */
export function stepsForChecks({ steps }: Lookup, checks: readonly string[]): readonly string[] {
  return [...steps.values()].filter((step) => step.checks.some((check) => checks.includes(check))).map(({ id }) => id);
}

/** Ids of the steps of these stages that are not optional. */
export function stepsOfStages({ steps }: Lookup, stages: readonly StageId[]): readonly string[] {
  return [...steps.values()].filter((step) => !step.optional && stages.includes(step.stage)).map(({ id }) => id);
}

/** An item's name, or its id where the pattern has none. */
export function nameOfItem({ items }: Lookup, id: string): string {
  return items.get(id)?.name ?? id;
}

/** A mode in words: "Fuel hose: chafed". */
export function nameOfMode(lookup: Lookup, item: string, mode: string): string {
  const name = lookup.modes.get(mode)?.name;
  return name === undefined ? nameOfItem(lookup, item) : `${nameOfItem(lookup, item)}: ${name}`;
}

function byId<Part extends { readonly id: string }>(parts: readonly Part[]): ReadonlyMap<string, Part> {
  return new Map(parts.map((part) => [part.id, part]));
}
