/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { ReviewWords } from "#src/words/made/casualty/review.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { fr } from "@messageformat/runtime/lib/cardinals";
const words: ReviewWords = {
  left: (d) =>
    plural(d.count, 0, fr, {
      one: "encore " + strictNumber("fr", d.count, 0, "count") + " prévision à calculer",
      other: "encore " + strictNumber("fr", d.count, 0, "count") + " prévisions à calculer",
    }),
  outcome: () => "Prévision et suite",
  outcomeMore: () =>
    "Chacune est recalculée à partir de ce qui était connu à ce moment-là : si l'eau est plus basse à la sonde suivante, là où rien n'a été changé avant, et si un kit démarre. La chance est la moyenne sur sa plage telle qu'elle était dite alors, d'après les démarrages ou les sondes d'alors.",
  noneJudged: () => "Rien ici ne peut être jugé",
  noneJudgedMore: () =>
    "Il faut deux sondes d'un même compartiment sans rien changer entre les deux, ou un de nos kits que l'on a voulu démarrer.",
  when: () => "Quand",
  what: () => "Quoi",
  lower: () => "Eau plus basse à la sonde suivante",
  starts: () => "Démarre et donne de l'eau",
  startsOf: (d) => d.kit + " démarre et donne de l'eau",
  chanceTold: () => "Chance annoncée",
  came: () => "Arrivé",
  yes: () => "oui",
  no: () => "non",
  forecastsTitle: () => "Ce que valaient nos prévisions",
  forecastsEarly: () => "Toutes les lignes ne sont pas encore sur cet appareil",
  forecastsEarlyMore: () =>
    "Les démarrages, les exercices et les niveaux se comptent depuis toutes les lignes. La qualité des prévisions est dite une fois que toutes les lignes sont ici.",
  turnarounds: () => "Démarrages en remise en état",
  tableMore: () =>
    "Chaque ligne réunit des prévisions qui disaient à peu près la même chose. Si la chance annoncée est dans la dernière plage, rien ne parle contre elle.",
  turnaroundsMore: () =>
    "La chance qu'un kit démarre, annoncée d'après ce qui était connu avant, face à ce qui est arrivé. Les exercices sont laissés de côté : des pannes y étaient placées.",
  casualties: () => "Démarrages sur des détresses",
  casualtiesMore: () =>
    "La chance qu'un kit démarre quand un navire le demande : comme ci-dessus, avec ce qui a pu arriver sans être vu depuis le dernier essai.",
  levelsMore: () =>
    "La chance que l'eau soit plus basse à la sonde suivante, là où rien n'a été changé avant, face à ce qui est arrivé : sur chaque détresse close, telle qu'elle a été gardée là où elle a été revue.",
  drills: () => "Pannes placées trouvées en exercice",
  drillsMore: () =>
    "La chance qu'un contrôle trouve ce qui a été placé, annoncée d'après les exercices précédents, face à ce qui est arrivé.",
  toldMean: () => "Chance annoncée, en moyenne",
  ofThese: () => "Part arrivée",
  nineInTen: () => "Avec si peu, la vraie part se trouve, neuf fois sur dix, entre",
  range: (d) => "de " + d.low + " à " + d.high,
  forecasts: () => "Prévisions",
  goneThrough: () => "Revue",
  keptBy: (d) =>
    plural(d.count, 0, fr, {
      one: "Par " + d.person + " le " + d.at + ", " + strictNumber("fr", d.count, 0, "count") + " prévision gardée.",
      other:
        "Par " + d.person + " le " + d.at + ", " + strictNumber("fr", d.count, 0, "count") + " prévisions gardées.",
    }),
  notKept: () => "Pas gardée",
  computing: () => "Des prévisions sont encore en cours de calcul",
  keep: () => "Revue : garder ses prévisions",
  keeperSays: () => "Un responsable des kits dit quand elle a été revue.",
  pumps: () => "Pompes",
  noPumps: () => "Aucune pompe n'est notée sur sa fiche",
  seenOn: (d) => "Vu sur " + d.casualty + ".",
  raise: (d) => "Ouvrir un constat sur " + d.kit,
  notYet: () => "Rien à revoir pour l'instant",
  notClosed: () => "Sa fiche n'est pas close",
  noCasualty: () => "Cet appareil ne connaît aucune détresse à cette adresse",
  whenClosed: () => "Une détresse est revue une fois sa fiche close.",
  title: (d) => d.casualty + " : après coup",
  more: () => "Plus",
  timeline: () => "Chronologie, avec ce que la page a dit",
  notBack: () => "Pas encore de retour :",
  notBackMore: (d) =>
    d.label + " " + d.kits + ". Ce qu'ils ont subi, et ce que l'on y constate, vient avec leur retour.",
  wentWell: () => "A bien marché",
  wentBadly: () => "A mal marché",
  aKit: () => "Un kit",
  aLine: () => "Une ligne de la liste de remise en état",
  aPicture: () => "Une image de la fiche pour inconnus",
  peopleSaw: () => "Ce que les gens ont vu",
  told: (d) => d.about + ", " + d.person + ", " + d.at + " : " + d.note,
  about: () => "Au sujet de",
  lineNumber: () => "Numéro de la ligne dans la liste de remise en état, s'il y en a une",
  lineNumberHint: () => "Alors le propriétaire du modèle en est averti aussi.",
  noLine: (d) => "Aucune ligne de " + d.pattern + " n'a ce numéro.",
  pictureNumber: () => "Numéro de l'image sur la fiche pour inconnus, s'il y en a une",
  noPicture: (d) => "Aucune image de la fiche de " + d.pattern + " n'a ce numéro.",
  youSaw: () => "Ce que vous avez vu",
  whatOfLine: () => "Qu'est-ce qui ne va pas avec cette ligne ?",
  whatOfPicture: () => "Qu'est-ce qui ne va pas avec cette image ?",
  lineWrong: () => "Elle est fausse",
  lineImpossible: () => "Elle ne peut pas être faite",
  lineUnclear: () => "Elle n'est pas claire",
  notWritten: () => "Pas écrit",
  add: () => "Ajouter",
  pulls: (d) =>
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " traction pour démarrer.",
      other: strictNumber("fr", d.count, 0, "count") + " tractions pour démarrer.",
    }),
  noPulls: () => "Les tractions n'ont pas été notées.",
  prime: (d) => "De l'eau " + d.duration + " après le premier coup de pompe.",
  noPrime: () => "L'amorçage n'a pas été chronométré.",
  ran: (d) =>
    plural(d.refuels, 0, fr, {
      "0": "A tourné " + d.duration + " ; plein non refait.",
      "1": "A tourné " + d.duration + " ; plein refait une fois.",
      other: "A tourné " + d.duration + " ; plein refait " + strictNumber("fr", d.refuels, 0, "refuels") + " fois.",
    }),
  notStarted: () => "Elle n'a pas démarré.",
  notUsed: () => "Elle n'a pas servi.",
  water: (d) => "De l'eau " + d.sinceOpened + " après l'ouverture de la fiche.",
  waterAboard: (d) =>
    "De l'eau " +
    d.sinceOpened +
    " après l'ouverture de la fiche, " +
    d.sinceAboard +
    " après qu'elle a été notée à bord.",
  refusedFirst: (d) => "Elle a d'abord refusé. " + d.water,
  noDelivery: () => "Les sondes n'ont pas dit ce qu'elle débitait.",
  deliveryTooLittle: () => "Les sondes en disent trop peu sur son débit.",
  delivery: (d) => "Les sondes ont vu de " + d.low + " à " + d.high + " dixièmes de son débit annoncé.",
  tooFew: () => "Trop peu pour le dire",
  asSure: () => "À peu près aussi sûr qu'il le faut",
  tooSure: () => "Plus sûr qu'il ne le faut : prenez ses chances pour plus proches d'une sur deux",
  notSureEnough: () => "Moins sûr qu'il ne le pourrait",
  noneYet: () => "Aucune pour l'instant.",
  wanted: (d) =>
    d.verdict +
    " : il en faudrait environ " +
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " prévision",
      other: strictNumber("fr", d.count, 0, "count") + " prévisions",
    }) +
    " de plus",
  score: (d) =>
    d.verdict +
    ". Cela porte sur " +
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " prévision",
      other: strictNumber("fr", d.count, 0, "count") + " prévisions",
    }) +
    ", " +
    d.days +
    " : en moyenne elles disaient " +
    d.told +
    ", et " +
    d.came +
    " sur " +
    d.count +
    " sont arrivées.",
  fromTo: (d) => "du " + d.first + " au " + d.last,
  onDay: (d) => "le " + d.day,
  marks: (d) =>
    "Score de Brier " +
    d.brier +
    " (en annonçant toujours la part arrivée : " +
    d.plain +
    "), score logarithmique " +
    d.log +
    " ; le plus bas est le meilleur. Le niveau est noté par le CRPS, dans sa propre unité.",
  marksTitle: () => "En scores, pour comparer",
  off: (d) =>
    "D'après " +
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " prévision",
      other: strictNumber("fr", d.count, 0, "count") + " prévisions",
    }) +
    ", le niveau était faux de " +
    d.told +
    " en moyenne, largeur annoncée comprise ; en disant qu'il reste tel quel, de " +
    d.stayed +
    ". Le plus bas est le meilleur.",
  kitPage: (d) => d.kit + " : sa page",
  keepAnew: () => "Elles ont changé depuis ; les garder à nouveau",
  lineIs: (d) => "Cette ligne : " + d.line + " Alors le propriétaire du modèle en est averti aussi.",
};
export default words;
