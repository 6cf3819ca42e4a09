import { useWords } from "#web/language/index.ts";
import type { LivesWords } from "./lives-words.ts";

/** All that the pages of lives speak from. */
export function useLivesWords(): LivesWords {
  return { lives: useWords("patternLives"), law: useWords("patternLaw"), interval: useWords("patternInterval") };
}
