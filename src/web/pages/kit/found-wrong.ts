import { modeNamed, modesOf, type Effect, type Pattern } from "#kit";
import type { Words } from "#words";
import { OTHER, pickMode, sayEffect, type PickedMode } from "#web/act/finding-choice.ts";

/** A finding as far as it has been filled in; nothing is chosen beforehand. */
export interface FoundWrong {
  readonly item: string;
  /** A mode of the item, or {@link OTHER}. */
  readonly mode: string | undefined;
  /** For something the pattern does not know. */
  readonly effect: Effect | undefined;
  readonly limit: string;
}

export const NOTHING_FOUND: FoundWrong = { item: "", mode: undefined, effect: undefined, limit: "" };

/** What the way here has filled in, such as a fault just found; nothing where the pattern knows no such mode. */
export function foundAsked(pattern: Pattern, asked: URLSearchParams): FoundWrong {
  const mode = modeNamed(pattern, asked.get("mode") ?? "");
  return mode ? { ...NOTHING_FOUND, item: mode.item, mode: mode.id } : NOTHING_FOUND;
}

/** Where the way leads back once it is raised: to the sheet it came from, where this device knows it, else to the kit. */
export function backFrom(
  kit: { readonly id: string; readonly name: string },
  casualties: readonly { readonly id: string }[],
  asked: URLSearchParams,
  casualtyLabel: string,
): { readonly to: string; readonly label: string } {
  const casualty = casualties.find(({ id }) => id === asked.get("casualty"));
  if (casualty) return { to: `/casualty/${casualty.id}`, label: casualtyLabel };
  return { to: `/kit/${kit.id}`, label: kit.name };
}

/** The ways an item fails, each with what it means, then something else. */
export function modeOptions(
  pattern: Pattern,
  item: string,
  words: Words["kitLine"],
): readonly { readonly value: string; readonly label: string; readonly note?: string }[] {
  const known = modesOf(pattern, item).map((mode) => ({
    value: mode.id,
    label: mode.name,
    note: sayEffect(mode.effect, words, mode.limit),
  }));
  return [...known, { value: OTHER, label: words.otherMode() }];
}

/** The mode as a finding would carry it; undefined until enough is chosen. */
export function pickedMode(pattern: Pattern, { item, mode, effect, limit }: FoundWrong): PickedMode | undefined {
  if (item === "" || mode === undefined) return undefined;
  const known = modeNamed(pattern, mode);
  if (known) return pickMode(known);
  if (effect === undefined || (effect === "limits" && limit.trim() === "")) return undefined;
  return { item, mode, effect, ...(effect === "limits" && { limit: limit.trim() }) };
}
