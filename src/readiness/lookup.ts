import {
  cameUnsealed,
  stepsAsked,
  titleOfMode,
  type Begun,
  type Check,
  type Item,
  type Mode,
  type Pattern,
  type StageId,
  type Step,
} from "#kit";
import type { Finding } from "./state.ts";

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
 * Puts a pattern's parts in reach by id. A step that a turnaround begun so does not ask may be left out, and so counts as
 * optional.
 */
export function lookUp(pattern: Pattern, begun: Begun = {}): Lookup {
  const isAsked = stepsAsked(pattern, begun);
  return {
    pattern,
    items: byId(pattern.items),
    modes: byId(pattern.modes),
    checks: byId(pattern.checks),
    steps: byId(pattern.stages.flatMap((stage) => stage.steps.map((step) => placed(step, stage.id, isAsked)))),
  };
}

/** Patterns with their parts in reach, each read once for turnarounds that ask the same steps. */
export class Lookups {
  readonly #known = new Map<Pattern, Map<string, Lookup>>();

  of(pattern: Pattern, begun: Begun): Lookup {
    const ofPattern = this.#known.get(pattern) ?? new Map<string, Lookup>();
    this.#known.set(pattern, ofPattern);
    const key = [...(begun.met ?? []), cameUnsealed(begun)].join(" ");
    const lookup = ofPattern.get(key) ?? lookUp(pattern, begun);
    ofPattern.set(key, lookup);
    return lookup;
  }
}

function placed(step: Step, stage: StageId, isAsked: (step: Step) => boolean): PlacedStep {
  return { ...step, stage, optional: step.optional || !isAsked(step) };
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

/** A mode in words, its item named once: "Fuel hose: chafed", "Torch does not light". */
export function nameOfMode(lookup: Lookup, item: string, mode: string): string {
  const name = lookup.modes.get(mode)?.name;
  return name === undefined ? nameOfItem(lookup, item) : titleOfMode(nameOfItem(lookup, item), name);
}

/** Longest text of a person's own beside an item's name [characters]; more stands at the finding itself. */
const MOST_OF_NOTE = 120;

/** What a finding is about, in words: its mode; where the pattern has none for it, its item and what was written. */
export function nameOfFinding(lookup: Lookup, { item, mode, note }: Named): string {
  if (lookup.modes.has(mode) || note === undefined) return nameOfMode(lookup, item, mode);
  const told = note.length > MOST_OF_NOTE ? `${note.slice(0, MOST_OF_NOTE)}\u2026` : note;
  return `${nameOfItem(lookup, item)}: ${told.replace(/\.$/, "")}`;
}

type Named = Pick<Finding, "item" | "mode" | "note">;

function byId<Part extends { readonly id: string }>(parts: readonly Part[]): ReadonlyMap<string, Part> {
  return new Map(parts.map((part) => [part.id, part]));
}
