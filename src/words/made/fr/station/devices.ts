/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { DevicesWords } from "#src/words/made/station/devices.ts";

const words: DevicesWords = {
  listTitle: () => "Appareils de la station",
  shutOut: () => "Exclure",
  areShutOut: () => "Exclus",
  device: () => "Appareil",
  thisDevice: (d) => d.device + " (cet appareil)",
  joined: () => "Entré",
  lastLine: () => "Dernière ligne",
  lost: () => "Perdu ou volé",
  notKnown: () => "pas connu ici",
  writtenBy: (d) => d.at + " par " + d.who,
  signOutInstead: () => "Pour quitter cet appareil, déconnectez-vous dans Réglages",
  shutOutNamed: (d) => "Exclure " + d.device,
  shutOutAsk: (d) => "Exclure " + d.device + " ?",
  shutOutDo: () => "L'exclure",
  joinedLine: (d) => "Entré le " + d.line + ".",
  joinedNotKnown: () => "Entrée pas connue ici.",
  shutOutMore: () =>
    "Tous ceux qui y sont connectés sont déconnectés, et il ne peut plus se connecter. Les lignes non envoyées y restent.",
  why: () => "Pourquoi",
  whyHint: () => "Par exemple tombé à la mer.",
  notShutOut: () => "Pas exclu",
};
export default words;
