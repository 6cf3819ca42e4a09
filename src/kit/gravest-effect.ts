import type { Effect } from "./pattern.ts";

/** What something found does to a kit, from the mildest to what grounds it. */
export const EFFECTS_BY_WEIGHT: readonly Effect[] = ["notes", "limits", "grounds"];

/** The gravest of some effects; undefined where there are none. */
export function gravestEffect(effects: readonly Effect[]): Effect | undefined {
  return EFFECTS_BY_WEIGHT.findLast((effect) => effects.includes(effect));
}
