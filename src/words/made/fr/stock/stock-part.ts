/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { StockPartWords } from "#src/words/made/stock/stock-part.ts";
import { plural, select, strictNumber } from "#src/words/cases.ts";
import { fr } from "@messageformat/runtime/lib/cardinals";
const words: StockPartWords = {
  noPart: () => "Pièce inconnue",
  noPartNews: () => "Cet appareil ne connaît pas cette pièce",
  offList: (d) => "N'est plus sur la liste : " + d.reason,
  lotRecalled: (d) => "Le lot " + d.lot + " est rappelé",
  holders: () => "Ce qui le contient",
  shelfAt: () => "Étagère de",
  onShelf: () => "Sur l'étagère",
  madeSo: () => "Ce qui a mené là",
  thePart: () => "La pièce",
  thereIn: (d) => d.there + ", en " + d.unit + ".",
  countShelf: () => "Comptez l'étagère : ce qui s'y trouve est la vérité.",
  neverCounted: () => "Jamais compté.",
  notHereYet: () => "Pas encore ici.",
  countedOn: (d) => "Compté le " + d.day + ".",
  lotThere: (d) => select(d.hasLot, { yes: "Lot " + d.lot, other: "D'aucun lot qui ait été lu" }) + " : " + d.there,
  lotGoodTo: (d) =>
    select(d.hasLot, { yes: "Lot " + d.lot, other: "D'aucun lot qui ait été lu" }) +
    " : " +
    d.there +
    ", bon jusqu'au " +
    d.day,
  pastDay: () => "périmé",
  recalledDoNotFit: () => "rappelé : ne le montez pas",
  changePart: () => "Modifier la pièce",
  aLotRecalled: () => "Un lot est rappelé",
  ownNumber: () => "Numéro interne",
  supplier: () => "Fournisseur",
  costOfOne: () => "Prix unitaire",
  leadTime: () => "Délai de livraison",
  leadSupposed: () => "non noté : 7 jours sont supposés",
  keeps: () => "Se conserve",
  keepsPrinted: () => "jusqu'à la date imprimée dessus",
  toBeKept: () => "À garder",
  leastAt: (d) => d.least + " à " + d.place,
  fittedAs: () => "Monté comme",
  notOnRecord: () => "non noté",
  neverWritten: () => "Rien n'a jamais été écrit de cette étagère",
  lines: () => "Lignes de cette étagère, les plus récentes d'abord",
  day: () => "Jour",
  what: () => "Quoi",
  by: () => "Par",
  counts: () => "Compte",
  inCount: () => "déjà dans le comptage",
  strike: () => "Rayer",
  onKitPage: () => "sur la page du kit",
  countedNone: () => "compté : aucun",
  countedSome: (d) => "compté : " + d.lots,
  countOfLot: (d) => d.count + " du lot " + d.lot,
  received: (d) =>
    d.count +
    " " +
    plural(d.count, 0, fr, { one: "reçu", other: "reçus" }) +
    select(d.hasLot, { yes: ", lot " + d.lot, other: "" }),
  movedFrom: (d) =>
    d.count +
    " " +
    plural(d.count, 0, fr, { one: "déplacé", other: "déplacés" }) +
    " depuis " +
    d.place +
    select(d.hasLot, { yes: ", lot " + d.lot, other: "" }),
  movedTo: (d) =>
    d.count +
    " " +
    plural(d.count, 0, fr, { one: "déplacé", other: "déplacés" }) +
    " vers " +
    d.place +
    select(d.hasLot, { yes: ", lot " + d.lot, other: "" }),
  fittedIn: (d) =>
    d.count +
    " " +
    plural(d.count, 0, fr, { one: "monté", other: "montés" }) +
    select(d.hasLot, { yes: ", lot " + d.lot, other: "" }) +
    ", dans " +
    d.kit,
  used: (d) =>
    d.count +
    " " +
    plural(d.count, 0, fr, { one: "utilisé", other: "utilisés" }) +
    select(d.hasLot, { yes: ", lot " + d.lot, other: "" }) +
    " : " +
    d.because,
  scrapped: (d) =>
    d.count +
    " " +
    plural(d.count, 0, fr, { one: "mis au rebut", other: "mis au rebut" }) +
    select(d.hasLot, { yes: ", lot " + d.lot, other: "" }) +
    " : " +
    d.because,
  changeNamed: (d) => "Modifier " + d.part,
  newPart: () => "Une pièce pour la liste",
  name: () => "Nom",
  number: () => "Numéro propre à la station",
  countedIn: () => "Compté en",
  supplierIfKnown: () => "Fournisseur, si connu",
  supplierNumber: () => "Numéro du fournisseur, si connu",
  costIfKnown: () => "Prix unitaire, si connu",
  orderToShelf: () => "De la commande à l'étagère, si connu",
  weeksHint: () => "Par exemple « 6 weeks » pour 6 semaines.",
  supposedIfEmpty: () =>
    "Personne n’a dit combien de temps il faut de la commande à l’étagère. Écrivez-le, ou enregistrez encore une fois sans : 7 jours sont alors supposés, et la liste de commandes le dit.",
  howLongKeeps: () => "Combien de temps se conserve-t-elle sur l'étagère ?",
  keepsLong: () => "Sans limite",
  keepsToPrinted: () => "Jusqu'à la date imprimée sur chacune",
  keepsLife: () => "Telle durée depuis le jour de l'arrivée",
  howLong: () => "Combien de temps",
  monthsHint: () => "Par exemple « 24 months » pour 24 mois.",
  leastKeptAt: (d) => "Minimum à garder à " + d.place,
  isFittedAs: () => "Elle se monte comme",
  chooseItem: () => "Choisir un élément d'un modèle",
  takeOut: () => "Retirer",
  takeNamedOut: (d) => "Retirer " + d.item,
  notSaved: () => "Pas enregistré",
  savePart: () => "Enregistrer la pièce",
  takeOffList: () => "Retirer de la liste",
  because: () => "Parce que",
  notTakenOff: () => "Pas retirée",
  recallTitle: (d) => "Un lot de " + d.part + " est rappelé",
  lotAsMarked: () => "Lot, tel qu'il est marqué",
  recalledBecause: (d) => "Rappelé : " + d.reason,
  whyRecalled: () => "Pourquoi il est rappelé, et par qui",
  effectOnKit: () => "Qu'est-ce que cela signifie pour un kit qui le contient ?",
  limit: () => "La limite, telle qu'un navire doit l'entendre",
  notRaised: () => "Pas signalé",
  allRaised: () => "Chaque kit qui le contient a son constat",
  recallLot: () => "Rappeler le lot",
  recallRaise: (d) =>
    "Rappeler le lot : ouvrir un constat sur " +
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " élément",
      other: strictNumber("fr", d.count, 0, "count") + " éléments",
    }),
  noHolders: () => "Aucun kit ni aucune étagère ne contient ce lot, d'après ce qui a été écrit.",
  holderAway: (d) => ", parti avec " + d.who,
  findingClosed: () => ": corrigé et prouvé",
  findingRaised: () => ": constat ouvert",
  shelfHolds: (d) => "Étagère de " + d.place + " : " + d.there,
};
export default words;
