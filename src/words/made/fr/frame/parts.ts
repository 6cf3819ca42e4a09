/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { PartsWords } from "#src/words/made/frame/parts.ts";

const words: PartsWords = {
  ready: () => "Prêt",
  readyWithLimits: () => "Prêt avec limites",
  grounded: () => "Immobilisé",
  open: () => "Ouvert",
  away: () => "Absent",
};
export default words;
