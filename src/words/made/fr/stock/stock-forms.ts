/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { StockFormsWords } from "#src/words/made/stock/stock-forms.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { fr } from "@messageformat/runtime/lib/cardinals";
const words: StockFormsWords = {
  count: () => "Compter",
  somethingCame: () => "Quelque chose est arrivé",
  takeSome: () => "En prendre",
  moveSome: () => "En déplacer",
  scrapSome: () => "En mettre au rebut",
  orderSome: () => "En commander",
  leave: () => "Laisser",
  countPart: (d) => "Compter " + d.part,
  countAll: () => "Comptez tout, de vos propres yeux",
  countAllMore: () => "Dès lors, c'est ce qui se trouve là, quoi que donnent les lignes d'avant.",
  ofNoLotIn: (d) => "Sans lot marqué, en " + d.unit,
  ofLotIn: (d) => "Du lot " + d.lot + ", en " + d.unit,
  anotherLot: () => "Un autre lot se trouve là : sa marque",
  notCounted: () => "Pas compté",
  thisLiesThere: () => "C'est ce qui se trouve là",
  receivePart: (d) => "Recevoir " + d.part,
  stillToCome: (d) =>
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " de cette commande est encore attendu",
      other: strictNumber("fr", d.count, 0, "count") + " de cette commande sont encore attendus",
    }) + ". S’il en est venu moins, écrivez combien : le reste demeure attendu.",
  howManyCame: (d) => "Combien sont arrivés, en " + d.unit,
  lotIfMarked: () => "Lot, s'il est marqué",
  printedDate: () => "Date imprimée dessus",
  cameOtherDay: () => "C'est arrivé un autre jour",
  cameOn: () => "Arrivé le",
  notReceived: () => "Pas reçu",
  cameToday: () => "C'est arrivé aujourd'hui",
  cameThatDay: () => "C'est arrivé ce jour-là",
  whatFor: () => "Pour quoi",
  taken: () => "Pris sur l'étagère",
  moved: () => "Déplacé",
  whyNotUsed: () => "Pourquoi il ne peut pas servir",
  scrapped: () => "Mis au rebut",
  doneWith: (d) => d.done + " : " + d.part,
  howManyIn: (d) => "Combien, en " + d.unit,
  toShelfAt: () => "Vers l'étagère de",
  otherDay: () => "C'était un autre jour",
  doneOn: () => "Fait le",
  notWritten: () => "Pas écrit",
  ofWhichLot: () => "De quel lot",
  readMark: () => "Lisez la marque dessus, et choisissez",
  lot: (d) => "Lot " + d.lot,
  ofNoLot: () => "Sans lot marqué",
  orderOf: (d) => "Commande de " + d.part,
  orderedToday: (d) => d.part + " : commandé aujourd'hui, en " + d.unit,
  promisedFor: () => "Promis pour le",
  promisedHint: () => "Laissez vide pour compter sur le délai de livraison.",
  orderNote: () => "Numéro de commande ou note, s'il y en a",
  notNoted: () => "Pas noté",
  noteOrder: () => "Noter la commande",
  fewerThere: (d) => "Seulement " + d.there + " d'après le relevé",
  fewerThereMore: (d) =>
    "Vous avez écrit " +
    d.count +
    ". Regardez encore. Si c'est juste, touchez encore une fois : l'étagère est alors au-dessous de rien jusqu'à ce qu'on la compte.",
  allTheSame: (d) => d.done + " quand même",
};
export default words;
