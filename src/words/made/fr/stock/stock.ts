/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { StockWords } from "#src/words/made/stock/stock.ts";
import { fr } from "@messageformat/runtime/lib/cardinals";
import { plural } from "#src/words/cases.ts";
const words: StockWords = {
  title: () => "Pièces et stock",
  early: () => "Toutes les lignes ne sont pas encore sur cet appareil",
  earlyMore: () => "Ce qui est sur une étagère sera juste quand elles y seront.",
  noParts: () => "Aucune pièce n'est encore sur la liste",
  noPartsMore: () =>
    "Un responsable des kits met une pièce sur la liste une fois, puis la reçoit et la compte. Les modèles en nomment quelques-unes, ci-dessous.",
  shelvesAt: () => "Étagères de",
  putOnList: () => "Mettre une pièce sur la liste",
  labels: () => "Étiquettes et étagères",
  find: () => "Chercher une pièce par numéro ou par nom",
  shelves: () => "Étagères",
  spareMore: () =>
    "Le minimum est ce qu'il faut tenir dans toute la station, non dans chaque lieu. Il est compté sur les délais de la commande à l'étagère : avec autant en réserve, personne n'attend une pièce dans 95 de ces délais sur 100. Il repose sur ce que le journal dit avoir été utilisé en un an dans tous les lieux. Une estimation ; ce qui a été compté est à côté.",
  spareLots: (d) =>
    plural(d.parts, 0, fr, {
      "0": "Chaque usage a été compté une pièce à la fois.",
      other:
        "Comptées comme demandées à plusieurs à la fois, d'après ce qui est entré dans un kit en une fois : " +
        d.names +
        ". Tout le reste a été compté une pièce à la fois.",
    }),
  part: () => "Pièce",
  onShelf: () => "Sur l'étagère",
  keep: () => "À garder",
  spare: () => "Minimum de la station pour 95 %",
  spareIs: (d) => d.count + " (" + d.perYear + " par an)",
  notKnown: () => "pas connu",
  counted: () => "Compté",
  never: () => "jamais",
  notHereYet: () => "pas encore ici",
  ofTheseFit: (d) => d.count + ", dont " + d.usable + " en état de servir",
  low: (d) => d.count + " : bas",
  lowOfThese: (d) => d.count + ", dont " + d.usable + " en état de servir : bas",
  unlisted: () => "Nommées par les modèles, pas sur la liste",
  toOrder: () => "À commander",
  nothingShort: () => "Rien ne manquera d'ici six mois, avec ce qui est sur les étagères et en commande.",
  listCsv: () => "La liste en CSV",
  listPdf: () => "La liste en PDF",
  for: () => "Pour",
  howMany: () => "Combien",
  orderBy: () => "À commander avant le",
  orderNow: () => "Maintenant",
  why: () => "Pourquoi",
  order: () => "Commande",
  ordered: () => "Commandé",
  orderedPart: (d) => "Commandé : " + d.part,
  fitToUse: (d) => d.usable + " en état de servir",
  fitAndOnOrder: (d) => d.usable + " en état de servir, " + d.onOrder + " en commande",
  keepLeast: (d) => "en garder " + d.least,
  needOf: (d) => d.item + " de " + d.kit + " avant le " + d.day,
  needOfMore: (d) => d.item + " de " + d.kit + " avant le " + d.day + " et " + d.more + " de plus",
  wantedBy: (d) => "nécessaire avant le " + d.day,
  leadSupposed: () => "délai de 7 jours supposé : aucun n’est donné",
  comesIn: (d) => "arrive en " + d.span,
  reasonsBetween: () => " ; ",
  orMove: () => "Ou déplacez ce dont un autre lieu peut se passer :",
  moveProposed: (d) => d.part + " : " + d.count + " de " + d.from + " à " + d.to + ".",
  fillMove: () => "Remplir ce déplacement",
  fillMoveOf: (d) => "Remplir ce déplacement : " + d.part + ", " + d.count + " de " + d.from + " à " + d.to,
  onOrder: () => "En commande",
  toCome: () => "À venir",
  outstanding: (d) => d.count + " sur " + d.ordered,
  orderedOn: () => "Commandé le",
  countedOn: () => "Attendu le",
  supposedDay: (d) => d.day + ", 7 jours supposés : aucun délai donné",
  outcome: () => "Ce qu'il en est",
  came: () => "C'est arrivé",
  partCame: (d) => "C'est arrivé : " + d.part,
  waitNoLonger: () => "N'est plus attendu",
  partWaitNoLonger: (d) => "N'est plus attendu : " + d.part,
  late: (d) => d.day + " : en retard",
  orderOf: (d) => "Commande de " + d.part,
  restWillNotCome: (d) => "Le reste de la commande de " + d.part + " ne viendra pas, parce que",
  notClosed: () => "Pas clos",
  stopWaiting: () => "Ne plus l'attendre",
  buys: () => "Meilleurs achats pour une somme",
  buysTooLittle: () => "Trop peu pour le dire : aucune pièce n'a son prix, son délai et 90 jours d'usage notés.",
  mayBeSpent: () => "Ce qui peut être dépensé",
  inCurrency: (d) => "En " + d.currency + ".",
  ownMoney: () => "Dans la monnaie de la station : sa devise se nomme dans les réglages.",
  nothingOrdered: () => "Rien n'est commandé par là.",
  notTold: () => "Pas de réponse",
  bestBuys: () => "Meilleurs achats",
  fitNow: () => "Utilisables maintenant",
  buy: () => "Acheter",
  cost: () => "Coût",
  emptyAYear: () => "Étagère vide au besoin, par an",
  nowThen: (d) => d.now + " maintenant, puis " + d.after,
  price: () => "prix",
  timeToCome: () => "délai de livraison",
  daysOfUse: () => "90 jours d'usage",
  leftOut: (d) => "Laissées de côté, faute de ce qui est entre parenthèses : " + d.parts + ".",
  wantedFirst: () =>
    "Ce qui est nécessaire aujourd'hui se trouve sous À commander et n'est pas compté ici : prenez cela d'abord. Toutes les étagères de la station comptent comme une seule.",
  emptyBefore: (d) =>
    "Avec ce qui est sur les étagères et en commande, une pièce est nécessaire et absente environ " +
    d.now +
    " fois par an, et un kit attend ou un autre en est dépouillé.",
  buysNothing: () => "Cette somme n'achète rien qui y changerait quelque chose.",
  emptyAfter: (d) =>
    d.spent +
    " dépensés pour ce qui est listé ramènent cela à environ " +
    d.after +
    " fois : " +
    d.fewer +
    " de moins, selon l'usage noté.",
  heldAndComing: (d) => d.usable + ", " + d.onOrder + " en commande",
  maybeBetter: (d) =>
    "Trop de choix pour les essayer tous : un autre est peut-être meilleur, d'au plus " +
    d.gap +
    " pièce attendue à tout moment.",
  enoughIs: () =>
    "Une pièce n'est plus achetée dès que son étagère n'est vide au moment voulu qu'une fois en vingt ans au plus, quelle que soit la somme.",
  emptyNever: () =>
    "Avec ce qui est sur les étagères et en commande, une pièce est nécessaire et absente moins d'une fois en cent ans.",
  emptyNoMore: (d) =>
    d.spent + " dépensés pour ce qui est listé ramènent cela à moins d'une fois en cent ans, selon l'usage noté.",
  nothingShortListed: (d) =>
    plural(d.count, 0, fr, {
      one:
        "Trop peu pour dire si quelque chose manquera : " +
        d.count +
        " pièce que les modèles nomment n'est pas sur la liste. De celles qui y sont, rien ne manque d'ici six mois.",
      other:
        "Trop peu pour dire si quelque chose manquera : " +
        d.count +
        " pièces que les modèles nomment ne sont pas sur la liste. De celles qui y sont, rien ne manque d'ici six mois.",
    }),
};
export default words;
