import type { OnSceneAnswer } from "../on-scene/on-scene-fields.ts";
import { sayWord } from "../on-scene/on-scene-word.ts";

const LEAVE: Readonly<Record<OnSceneAnswer["leave"]["kind"], string | undefined>> = {
  now: "Time to leave her",
  "be-ready": "Be ready to leave her",
  "no-sign": undefined,
};

/**
 * What the page said at one moment, as the log of a casualty tells it afterwards: the word with its certainty, and a call
 * to leave or to be ready. The call comes first where people saw the sign, as on the page.
 *
 * @param answer - to `on-scene`, of the lines known then
 * @returns "Losing: 97 in 100. 3 soundings over 8 min: 50 cm to 66 cm. Be ready to leave her."
 */
export function sayPage({ word, leave }: Pick<OnSceneAnswer, "word" | "leave">): string {
  const call = LEAVE[leave.kind];
  if (call === undefined) return sayWord(word);
  const isFirst = leave.kind === "now" && leave.seen;
  return isFirst ? `${call}. ${sayWord(word)}` : `${sayWord(word)} ${call}.`;
}
