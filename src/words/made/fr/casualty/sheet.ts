/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { SheetWords } from "#src/words/made/casualty/sheet.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { fr } from "@messageformat/runtime/lib/cardinals";
const words: SheetWords = {
  fuelHazard: () => "Carburant senti ou vu",
  fuelStop: () => "Arrêtez toutes les pompes et tous les moteurs maintenant.",
  fuelStopMore: (d) =>
    d.first +
    " Pas d'interrupteur, pas de flamme, pas de cigarette. Le journal dit toutes les pompes arrêtées à partir de " +
    d.at +
    ", par " +
    d.person +
    ".",
  fuelPeople: () => "Tout le monde à l'air libre,",
  fuelPeopleMore: (d) =>
    d.first +
    " au vent des panneaux, gilets de sauvetage mis, prêt à quitter le bateau. Personne en bas, pas même pour une sonde. Quelqu'un compte les gens et appelle à l'aide.",
  fuelWind: () => "Laissez le vent l'aérer :",
  fuelWindMore: (d) =>
    d.first +
    " ouvrez panneaux et portes à la main. La vapeur d'essence est plus lourde que l'air et reste en bas. Pas de ventilateur électrique ; ne pompez pas le carburant par-dessus bord.",
  nothingStarts: () => "Rien ne redémarre tant que la personne qui dirige n'a pas constaté que c'est sain.",
  clearBy: () => "Constaté sain : par qui, et comment on le sait",
  wroteClear: () => "constaté sans carburant",
  foundClear: () => "Constaté sain",
  aboutPeople: () => "Personnes",
  aboutBoat: () => "Le bateau",
  aboutOther: () => "Autre",
  notes: () => "Personnes et notes",
  noteLine: (d) => d.at + " " + d.person + " : " + d.note,
  about: () => "Au sujet de",
  note: () => "Note",
  noteHint: () => "Personnes à bord, blessées, débarquées ; ce que dit le patron.",
  wroteNote: () => "note",
  writeNote: () => "Écrire la note",
  goingToHer: () => "En route vers le bateau",
  herName: () => "Son nom, ou comment l'appeler",
  leftOut: () => "Peut rester vide.",
  notOpened: () => "Pas ouverte",
  openSheet: () => "Ouvrir sa fiche",
  timeline: () => "Chronologie",
  goThrough: () => "La revoir après coup",
  timelinePdf: () => "Chronologie en PDF",
  card: () => "Carte pour un inconnu",
  goesDark: () =>
    "Cet écran peut s'éteindre : les horloges continuent, mais aucune alarme ne sonnera. Réglez aussi une montre.",
  entries: () => "Lignes",
  linesNewest: (d) =>
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " ligne, la plus récente d'abord",
      other: strictNumber("fr", d.count, 0, "count") + " lignes, la plus récente d'abord",
    }),
  allLines: () => "Toutes les lignes",
  entriesNewest: () => "Lignes, la plus récente d'abord",
  what: () => "Quoi",
  when: () => "Quand",
  who: () => "Par",
  strike: () => "Rayer",
  strikeLine: (d) => "Rayer : " + d.kind + ", " + d.at,
  entryTold: (d) => d.kind + " : " + d.told,
  struck: (d) => "rayée : " + d.reason,
  notWritten: () => "Pas noté",
  wrote: (d) => "Noté : " + d.what + ".",
  undo: () => "Annuler",
  undone: () => "Annulé aussitôt.",
};
export default words;
