/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { PartsWords } from "#src/words/made/frame/parts.ts";

const words: PartsWords = {
  ready: () => "Ready",
  readyWithLimits: () => "Ready with limits",
  grounded: () => "Grounded",
  open: () => "Open",
  away: () => "Away",
};
export default words;
