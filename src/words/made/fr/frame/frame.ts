/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { FrameWords } from "#src/words/made/frame/frame.ts";
import { number, plural, strictNumber } from "#src/words/cases.ts";
import { fr } from "@messageformat/runtime/lib/cardinals";
const words: FrameWords = {
  skip: () => "Aller à la page",
  night: () => "Nuit",
  day: () => "Jour",
  colours: () => "couleurs",
  pages: () => "Station",
  board: () => "Tableau",
  work: () => "À faire",
  findings: () => "Constats",
  casualty: () => "Détresse",
  stock: () => "Pièces",
  people: () => "Personnes",
  tables: () => "Listes",
  devices: () => "Appareils",
  settings: () => "Réglages",
  open: (d) => d.count + " en cours",
  allSent: () => "Tout est envoyé",
  refused: (d) =>
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " ligne refusée",
      other: strictNumber("fr", d.count, 0, "count") + " lignes refusées",
    }),
  refusedShort: (d) => d.count + " refusées",
  linesNotSent: (d) =>
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " ligne non envoyée depuis " + d.since,
      other: strictNumber("fr", d.count, 0, "count") + " lignes non envoyées depuis " + d.since,
    }),
  photosNotSent: (d) =>
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " photo non envoyée depuis " + d.since,
      other: strictNumber("fr", d.count, 0, "count") + " photos non envoyées depuis " + d.since,
    }),
  notSentShort: (d) => d.count + " à envoyer",
  signedOut: () => "Cet appareil est déconnecté. Ce que vous écrivez reste ici et n'est pas envoyé.",
  signInAgain: () => "Se connecter à nouveau",
  clockOff: () => "L'horloge de cet appareil est fausse.",
  clockOffMore: () =>
    "Réglez sa date, son heure et son fuseau horaire sur automatique. Les lignes datées en avance sur l'horloge de la station sont refusées.",
  refusedNews: (d) =>
    plural(d.count, 0, fr, {
      one: "La station a refusé " + strictNumber("fr", d.count, 0, "count") + " ligne de cet appareil",
      other: "La station a refusé " + strictNumber("fr", d.count, 0, "count") + " lignes de cet appareil",
    }),
  refusedMore: () => "Ce qui a été écrit ne se voit que sur cet appareil.",
  refusedLink: () => "Voir pourquoi, et que faire",
  newer: () => "Une version plus récente de l'application est sur cet appareil",
  newerMore: () => "Elle prend le relais quand vous le dites. Ce que vous avez écrit reste tel quel.",
  newerUse: () => "Prendre la version récente",
  early: () => "Ceci est le résumé de la station. Son journal arrive encore.",
  earlyMade: (d) => "Fait par la station le " + d.at + ", et pas encore vérifié sur cet appareil.",
  earlyCounts: (d) => number("fr", d.here, 0) + " lignes sur " + number("fr", d.of, 0) + " sont ici.",
  earlyMore: () =>
    "Tant que toutes n'y sont pas, les historiques, les procès-verbaux, les tendances et les anciennes détresses ne sont pas entiers, et ce que d'autres écrivent peut tarder. Ce que vous écrivez est gardé et envoyé comme toujours.",
  received: () => "Reçue",
  clockAhead: (d) => "L'horloge de cet appareil avance de " + d.span + " sur celle de la station.",
  clockBehind: (d) => "L'horloge de cet appareil retarde de " + d.span + " sur celle de la station.",
  clockWasAhead: (d) => "L'horloge de cet appareil avançait de " + d.span + " sur celle de la station.",
  clockWasBehind: (d) => "L'horloge de cet appareil retardait de " + d.span + " sur celle de la station.",
};
export default words;
