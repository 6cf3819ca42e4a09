import { titleOfMode } from "#kit";
import type { Words } from "#words";
import { OTHER, pickMode, sayEffect, type FindingChoice, type PickedMode } from "./finding-choice.ts";

/** One mode as a line to tap. */
export interface ModeOption {
  readonly value: string;
  readonly label: string;
  readonly note?: string;
}

/** Modes that can be found here, then "something else". */
export function optionsOf(choices: readonly FindingChoice[], words: Words["kitLine"]): readonly ModeOption[] {
  const several = choices.filter((choice) => choice.modes.length > 0).length > 1;
  const known = choices.flatMap(({ item, modes }) =>
    modes.map((mode) => ({
      value: `${item.id}/${mode.id}`,
      label: several ? titleOfMode(item.name, mode.name) : mode.name,
      note: sayEffect(mode.effect, words, mode.limit),
    })),
  );
  return [...known, { value: OTHER, label: words.otherMode() }];
}

/** Key of the option that stands for a picked mode. */
export function pickedKey(picked: PickedMode): string {
  return picked.mode === OTHER ? OTHER : `${picked.item}/${picked.mode}`;
}

/** The mode an option stands for; something else begins as grounding its first item, until said otherwise. */
export function pickFrom(choices: readonly FindingChoice[], key: string): PickedMode {
  const mode = choices.flatMap((choice) => choice.modes).find((one) => `${one.item}/${one.id}` === key);
  return mode ? pickMode(mode) : { item: choices[0]?.item.id ?? "", mode: OTHER, effect: "grounds" };
}
