/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { BoardWords } from "#src/words/made/station/board.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { fr } from "@messageformat/runtime/lib/cardinals";
const words: BoardWords = {
  title: () => "Tableau",
  find: () => "Chercher un kit par nom ou numéro de série",
  foundNone: () => "Aucun kit ici n'a cela dans son nom ou son numéro",
  year: () => "L'année à venir, si personne ne fait rien",
  readLabel: () => "Lire une étiquette",
  enrol: () => "Prendre un kit en charge",
  place: (d) => d.place + " : " + d.notReady + " pas prêts, " + d.ready + " prêts",
  retired: (d) =>
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " kit réformé",
      other: strictNumber("fr", d.count, 0, "count") + " kits réformés",
    }),
  noKits: () => "Aucun kit n'est encore en charge",
  placesSoFar: (d) =>
    "Les lieux de la station jusqu'ici : " +
    d.places +
    ". Ajoutez d'abord les autres, chacun avec le nombre de kits prêts qu'il doit tenir ; prenez ensuite les kits en charge.",
  keeperTakes: () => "Un responsable des kits prend le premier kit en charge.",
  places: () => "Lieux de la station",
  strengths: () => "Effectif par lieu",
  endsFirst: () => "Finit en premier :",
  endsAfter: (d) => ", après le " + d.day + " : " + d.what + ".",
  strengthHolds: (d) => "L'effectif tient partout jusqu'au " + d.day + ".",
  fallsShort: () => "Insuffisant, si personne ne fait rien :",
  moreChanges: (d) =>
    plural(d.count, 0, fr, {
      one: "et " + strictNumber("fr", d.count, 0, "count") + " autre changement dans l'année",
      other: "et " + strictNumber("fr", d.count, 0, "count") + " autres changements dans l'année",
    }),
  placesShown: () => "Lieux montrés",
  allPlaces: () => "Tous les lieux",
  noKitsHere: () => "Pas encore de kits ici",
  notReady: (d) => "Pas prêts, " + d.count,
  ready: (d) => "Prêts, " + d.count + ", le premier à finir en haut",
  musterPlace: (d) => "Inventaire de " + d.place,
  showMore: (d) =>
    plural(d.count, 0, fr, {
      one: "Montrer " + strictNumber("fr", d.count, 0, "count") + " kit de plus",
      other: "Montrer " + strictNumber("fr", d.count, 0, "count") + " kits de plus",
    }),
  drawMore: (d) =>
    plural(d.count, 0, fr, {
      one: "Dessiner " + strictNumber("fr", d.count, 0, "count") + " kit de plus",
      other: "Dessiner " + strictNumber("fr", d.count, 0, "count") + " kits de plus",
    }),
  reasonsMore: (d) => "Et " + d.count + " de plus.",
  nothingEnds: () => "Aucune date n'y mettra fin.",
  toRestore: (d) => "Pour rétablir : " + d.what,
  toWatch: (d) => "À surveiller : " + d.what,
  yearOf: (d) =>
    "État des kits à " + d.place + " du " + d.from + " au " + d.to + " ; la même chose dans le tableau ci-dessous.",
  asTable: (d) => d.place + " en tableau",
  yearAt: (d) => "L'année à venir à " + d.place,
  kit: () => "Kit",
  from: () => "Du",
  to: () => "Au",
  standing: () => "État",
  because: () => "Parce que",
  ofReady: (d) => "Des kits prêts, " + d.enough + ".",
  shareNothing: () => "Ils n'ont en commun ni livraison de carburant, ni lot, ni mains que le journal connaisse.",
  sharedStrikes: () =>
    "Ce qui est commun est supposé frapper tous ceux qui le partagent dans une panne sur dix : c'est un jugement, pas le journal.",
};
export default words;
