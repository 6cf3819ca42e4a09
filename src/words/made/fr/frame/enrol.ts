/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { EnrolWords } from "#src/words/made/frame/enrol.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { fr } from "@messageformat/runtime/lib/cardinals";
const words: EnrolWords = {
  title: () => "Prendre un kit en charge",
  board: () => "Tableau",
  tables: () => "Listes",
  several: () => "Plusieurs kits d'un même modèle",
  notYou: () => "Un responsable des kits ou un administrateur prend les kits en charge",
  pattern: () => "Construit selon le modèle",
  version: (d) => d.name + ", version " + d.version,
  keptAt: () => "Gardé à",
  name: () => "Nom",
  nameHint: () => "Comme on l'appelle : Pompe 4.",
  serial: () => "Numéro de série",
  serialHint: () => "Comme sur sa plaque.",
  seal: () => "Numéro du scellé posé",
  sealHint: () => "Lu sur le conteneur. Laissez vide s'il n'y en a pas.",
  datesMissing: (d) =>
    plural(d.count, 0, fr, {
      one:
        strictNumber("fr", d.count, 0, "count") +
        " date pas encore lue : elle est demandée à sa première remise en état.",
      other:
        strictNumber("fr", d.count, 0, "count") +
        " dates pas encore lues : chacune est demandée à sa première remise en état.",
    }),
  afterFirst: () => "Un kit neuf est prêt après sa première remise en état entière ici. Seul ce qui a été lu est noté.",
  notEnrolled: () => "Pas pris en charge",
  enrolIt: () => "Le prendre en charge",
  addPlace: () => "Ajouter d'abord un autre lieu",
  datesNow: (d) =>
    plural(d.count, 0, fr, {
      one: "Dates lisibles maintenant, de " + strictNumber("fr", d.count, 0, "count") + " article",
      other: "Dates lisibles maintenant, de " + strictNumber("fr", d.count, 0, "count") + " articles",
    }),
  datesMore: () =>
    "Notez seulement ce que vous lisez. Chaque date laissée ici est demandée à la ligne de la première remise en état où l'article est dans votre main.",
  lifeAt: (d) => d.place + " ; " + d.life,
  whatDate: (d) => "Que dit la date de " + d.item + " ?",
  lastGoodOn: (d) => "Dernier jour bon sur " + d.item,
  fittedOn: (d) => d.item + " : posé le",
  madeOn: (d) => d.item + " : fabriqué le",
  manyTitle: () => "Prendre plusieurs kits en charge",
  manyPattern: () => "Tous construits selon le modèle",
  manyMore: () =>
    "Dates et contenu attendent la première remise en état de chacun, où les articles sont dans votre main. Entrée, dans la dernière ligne, ajoute une ligne. Ce que vous écrivez est gardé sur cet appareil.",
  addRow: () => "Ajouter une ligne",
  rowsWrong: (d) =>
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " ligne à corriger ; aucun kit n'est encore pris en charge",
      other: strictNumber("fr", d.count, 0, "count") + " lignes à corriger ; aucun kit n'est encore pris en charge",
    }),
  enrolMany: (d) =>
    plural(d.count, 0, fr, {
      one: "Prendre " + strictNumber("fr", d.count, 0, "count") + " kit en charge",
      other: "Prendre " + strictNumber("fr", d.count, 0, "count") + " kits en charge",
    }),
  nextRow: () => "Ligne suivante",
  kitNumber: (d) => "Kit " + d.number,
  sealIfAny: () => "Scellé, s'il y en a un",
  takeOutRow: (d) => "Retirer la ligne " + d.number,
  takeOut: () => "Retirer",
  place: () => "Lieu",
  choosePlace: () => "Choisir un lieu",
  rowHasIt: (d) => "La ligne " + d.row + " l'a aussi.",
  wanted: (d) => "Attendu : " + d.allowed + ". " + d.remedy,
};
export default words;
