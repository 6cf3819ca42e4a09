import { itemNamed, modeNamed, modesOf, type CountedItem, type Mode, type Pattern } from "#kit";
import type { Words } from "#words";
import type { Bodies, CountedAs, FoundAtReturn } from "#readiness";
import { OTHER, pickMode, sayEffect } from "#web/act/finding-choice.ts";

/** What was said of one item. */
export interface SaidOf {
  readonly as: CountedAs["as"];
  /** For a damaged one: a mode of the item, or {@link OTHER}. */
  readonly mode?: string;
  /** What is wrong, where no mode of the pattern fits. */
  readonly note?: string;
  /** Of a missing item of which there are several: how many came back, where it was counted. */
  readonly back?: number;
}

/** What was said, by item id. */
export type Said = ReadonlyMap<string, SaidOf>;

/** Every item there, in one tap; those said already to be missing or damaged stay so. */
export function allThere(counted: readonly CountedItem[], said: Said): Said {
  return new Map(counted.map(({ item }) => [item, said.get(item) ?? { as: "there" }]));
}

/** Ways an item can be damaged: all of its own but that it is missing. */
export function damagesOf(pattern: Pattern, { item, missing }: CountedItem): readonly Mode[] {
  return modesOf(pattern, item).filter(({ id }) => id !== missing);
}

/** True once every item is told of, and what is wrong with each damaged one. */
export function isCounted(counted: readonly CountedItem[], said: Said): boolean {
  return counted.every(({ item }) => {
    const one = said.get(item);
    if (one === undefined) return false;
    if (one.as !== "damaged") return true;
    return one.mode === OTHER ? (one.note ?? "").trim() !== "" : one.mode !== undefined;
  });
}

/**
 * The count as the return tells it: each item, and a finding on each that is missing or damaged.
 *
 * @param newId - gives each finding its id
 */
export function countOf(
  pattern: Pattern,
  said: Said,
  newId: () => string,
): Required<Pick<Bodies["returned"], "counted" | "findings">> {
  const counted = pattern.afterUse?.counted ?? [];
  const told = counted.flatMap((one) => {
    const of = said.get(one.item);
    return of ? [{ one, of }] : [];
  });
  return {
    counted: told.map(({ one, of }) => ({ item: one.item, as: of.as, ...backOf(of) })),
    findings: told.flatMap(({ one, of }) => findingOf(pattern, one, of, newId)),
  };
}

function backOf({ as, back }: SaidOf): Pick<CountedAs, "back"> {
  return as === "missing" && back !== undefined ? { back } : {};
}

/** What is wrong in the person's words, or how many of several came back. */
function noteOf(pattern: Pattern, { item }: CountedItem, of: SaidOf): { readonly note?: string } {
  const { back } = backOf(of);
  if (back !== undefined) return { note: `${back} of ${itemNamed(pattern, item)?.quantity ?? 1} came back.` };
  return of.note?.trim() ? { note: of.note.trim() } : {};
}

function findingOf(pattern: Pattern, one: CountedItem, of: SaidOf, newId: () => string): readonly FoundAtReturn[] {
  if (of.as === "there") return [];
  const mode = modeNamed(pattern, of.as === "missing" ? one.missing : (of.mode ?? OTHER));
  const note = noteOf(pattern, one, of);
  if (mode) return [{ finding: newId(), ...pickMode(mode), ...note }];
  return [{ finding: newId(), item: one.item, mode: OTHER, effect: "grounds", ...note }];
}

/** What was said of an item means for the kit: "Grounds the kit"; nothing for one that is there. */
export function sayMeans(
  pattern: Pattern,
  one: CountedItem,
  of: SaidOf | undefined,
  words: Words["kitLine"],
): string | undefined {
  if (of === undefined || of.as === "there") return undefined;
  if (of.as === "damaged" && of.mode === undefined) return undefined;
  const mode = modeNamed(pattern, of.as === "missing" ? one.missing : of.mode!);
  return mode ? sayEffect(mode.effect, words, mode.limit) : sayEffect("grounds", words);
}

/** An item's name, with how many there should be where that is more than one. */
export function sayItem(pattern: Pattern, { item }: CountedItem): string {
  const found = itemNamed(pattern, item);
  if (!found) return item;
  return found.quantity > 1 ? `${found.name} (${found.quantity})` : found.name;
}
