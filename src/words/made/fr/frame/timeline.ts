/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { TimelineWords } from "#src/words/made/frame/timeline.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { fr } from "@messageformat/runtime/lib/cardinals";
const words: TimelineWords = {
  noCasualty: () => "Détresse inconnue",
  noCasualtyNews: () => "Cet appareil ne connaît aucune détresse à cette adresse",
  title: (d) => d.casualty + " : chronologie",
  pdf: () => "Chronologie en PDF",
  lines: () => "Ligne par ligne",
  linesMore: () =>
    "Ce que la page a dit à une ligne est recalculé à partir des lignes que l'appareil de son auteur avait à ce moment-là.",
  opened: () => "Ouverte",
  closed: () => "Close",
  by: (d) => d.at + " par " + d.person,
  notClosed: () => "non close",
  position: () => "Position",
  notTold: () => "non indiquée",
  writtenBy: () => "Écrite par",
  linesBy: (d) =>
    plural(d.count, 0, fr, {
      one: d.person + ", " + strictNumber("fr", d.count, 0, "count") + " ligne",
      other: d.person + ", " + strictNumber("fr", d.count, 0, "count") + " lignes",
    }),
  running: () => "en marche d'après le journal",
  neverRan: () => "n'a jamais tourné",
  ran: (d) => "a tourné " + d.duration + " en tout",
  left: (d) =>
    plural(d.count, 0, fr, {
      one: "encore " + strictNumber("fr", d.count, 0, "count") + " moment à calculer",
      other: "encore " + strictNumber("fr", d.count, 0, "count") + " moments à calculer",
    }),
  when: () => "Quand",
  what: () => "Quoi",
  who: () => "Par",
  said: () => "La page a dit",
  computing: () => "en cours de calcul",
  nothingNew: () => "rien de nouveau",
  notComputed: () => "Non calculé",
};
export default words;
