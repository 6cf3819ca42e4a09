import type { Words } from "#words";
import type { Light } from "./usable-kits.ts";

/** What can be told of the light; of what is not known it counts as dark. */
export const LIGHT_PICKS = ["not-known", "daylight", "dark", "torch"] as const;

type LightPick = (typeof LIGHT_PICKS)[number];

const WORDS = {
  "not-known": "lightNotKnown",
  daylight: "byDay",
  dark: "dark",
  torch: "torch",
} as const satisfies Readonly<Record<LightPick, keyof Words["launch"]>>;

/** The picks, in order. */
export function lightPicks(words: Words["launch"]): readonly { readonly id: LightPick; readonly words: string }[] {
  return LIGHT_PICKS.map((id) => ({ id, words: words[WORDS[id]]() }));
}

/** What is told by a pick; nothing where it is not known. */
export function lightOf(pick: LightPick): Light | undefined {
  return pick === "not-known" ? undefined : pick;
}
