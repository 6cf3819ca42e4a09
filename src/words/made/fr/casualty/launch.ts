/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { LaunchWords } from "#src/words/made/casualty/launch.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { fr } from "@messageformat/runtime/lib/cardinals";
const words: LaunchWords = {
  title: () => "Avant de partir : combien de kits ?",
  readsOnly: () => "Votre rôle lit les fiches et ne les ouvre pas.",
  again: () => "Un autre bateau : recommencer",
  againAsk: () => "Recommencer pour un autre bateau ?",
  againDo: () => "Recommencer",
  againKeep: () => "Garder ce qui a été dit",
  againMore: () => "Ce qui a été dit de celui-ci est alors perdu, sauf si une fiche a été ouverte pour lui.",
  boat: () => "Le bateau",
  whatIsShe: () => "Quel bateau est-ce ?",
  howLong: () => "Quelle longueur ?",
  howFar: () => "À quelle distance ?",
  whatIsKnown: () => "Ce qu'on sait",
  leaveOut: () => "laissez ce que personne ne sait",
  holeAcross: () => "Brèche, largeur",
  holeBelow: () => "Brèche, sous la flottaison",
  waterInside: () => "Eau à l'intérieur",
  rising: () => "Monte ou baisse, à un seul repère",
  answer: () => "Réponse",
  computing: () => "Calcul en cours…",
  distanceFirst: () => "La distance donne la première réponse.",
  noAnswer: () => "Pas de réponse",
  inflow: (d) => "Entrée d'eau d'environ " + d.flow + ". " + d.arrival,
  riseBeyond: () =>
    "La montée indiquée dépasse ce que la brèche indiquée peut donner : il y en a une plus grande, ou une autre. Redemandez.",
  kitsHead: () => "Kits",
  hold: () => "Tenir",
  gain: () => "Gagner",
  holdHalved: () => "Tenir, brèche réduite de moitié",
  orders: () => "À lire à son patron, dans cet ordre",
  ask: () => "À demander au patron, dans cet ordre",
  chances: () => "Chances selon le nombre de kits",
  cautions: () => "Avertissements à transmettre",
  inOrder: () => "À prendre, dans cet ordre",
  thenTake: (d) => "Ensuite : " + d.kits,
  noneUsable: () => "Aucun kit de cette station ne peut servir sur ce bateau cette nuit.",
  stay: (d) =>
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " kit reste, et pourquoi",
      other: strictNumber("fr", d.count, 0, "count") + " kits restent, et pourquoi",
    }),
  stays: (d) => d.kit + " : " + d.why,
  kitAt: (d) => d.kit + ", " + d.place + " : environ " + d.flow + " (" + d.low + " à " + d.high + ") ; " + d.starts,
  kitAlone: (d) => d.kit + " : environ " + d.flow + " (" + d.low + " à " + d.high + ") ; " + d.starts,
  starts: (d) => "démarre et donne de l'eau " + d.chance + " (" + d.low + " à " + d.high + "), d'après " + d.rests,
  inHundred: (d) =>
    plural(d.count, 0, fr, {
      "0": "moins de 1 fois sur 100",
      "100": "plus de 99 fois sur 100",
      other: strictNumber("fr", d.count, 0, "count") + " fois sur 100",
    }),
  startsBy: (d) =>
    d.good +
    " de ses " +
    plural(d.of, 0, fr, {
      one: strictNumber("fr", d.of, 0, "of") + " démarrage",
      other: strictNumber("fr", d.of, 0, "of") + " démarrages",
    }) +
    " au journal, à côté de dix habituels",
  startsUsual: () => "aucun démarrage à lui : comme le font d'habitude les kits",
  chancesAre: () =>
    "Ce qui a été dit d'elle, et tout ce qui ne l'a pas été, donnent beaucoup de bateaux qui peuvent être le sien : une chance dit dans combien de 100 d'entre eux il en va ainsi. Rien n'en a été vu, et chaque chose dite de plus la déplace. Chacune est dite par ce entre quoi elle se tient neuf fois sur dix, selon que les kits démarrent plus ou moins sûrement et que la route dure plus ou moins longtemps.",
  primedIn: (d) => " ; amorcé en " + d.duration,
  proved: (d) => " ; éprouvé à " + d.share + " de l'annoncé " + d.at,
  notProved: () => " ; non éprouvé",
  whoGoes: () => "Qui y va",
  whichFirst: () => "Quel bateau part en premier ?",
  sooner: (d) =>
    "Avec " +
    d.boat +
    ", la première pompe peut pomper plus tôt : dans environ " +
    d.duration +
    ", et non " +
    d.chosen +
    ".",
  soonerOnly: (d) =>
    "Le bateau choisi n'a aucun kit à prendre. Avec " +
    d.boat +
    ", la première pompe peut pomper dans environ " +
    d.duration +
    ".",
  chooseBoat: (d) => "Choisir " + d.boat,
  anotherBoat: () => "Un autre bateau",
  keepFigures: () => "Garder ces chiffres",
  otherFigures: () => "D'autres chiffres pour cet appel",
  light: () => "Lumière jusqu'au pompage",
  lightNotKnown: () => "Inconnue : comme de nuit",
  byDay: () => "De jour",
  dark: () => "De nuit",
  torch: () => "De nuit, une lampe avec chaque kit",
  mains: () => "Du courant à bord, pour un kit électrique ?",
  mainsYes: () => "Oui, au-dessus de l'eau",
  mainsNo: () => "Non, ou inconnu",
  speed: () => "Vitesse, en charge",
  untilWay: () => "De maintenant à l'appareillage",
  untilWater: () => "De l'accostage à l'eau par-dessus bord",
  carries: () => "Kits qu'il emporte et remet",
  speedFault: () => "Plus de 0 et au plus 116 kn.",
  timeFault: (d) => "Au plus " + d.minutes + " min.",
  way: (d) =>
    plural(d.count, 0, fr, {
      one:
        d.speed +
        ", " +
        d.launch +
        " pour partir, " +
        d.setUp +
        " de l'accostage à l'eau, emporte " +
        strictNumber("fr", d.count, 0, "count") +
        " kit",
      other:
        d.speed +
        ", " +
        d.launch +
        " pour partir, " +
        d.setUp +
        " de l'accostage à l'eau, emporte " +
        strictNumber("fr", d.count, 0, "count") +
        " kits",
    }),
  wayOf: (d) => d.boat + " : " + d.way + ". " + d.change,
  wayOfGuessed: (d) => d.boat + " : " + d.way + " (à l'estime : personne ne l'a réglé). " + d.change,
  wayIs: (d) => d.way + ".",
  wayIsGuessed: (d) => d.way + " (à l'estime : personne ne l'a réglé).",
  change: () => "Changer",
  noPattern: () => "son modèle n'est pas ici",
  keptBack: (d) => d.standing + " : " + d.reason,
  grounded: () => "immobilisé",
  open: () => "ouvert",
  away: () => "sorti",
  notJudged: () => "non jugé ici",
  lightUnknown: (d) => "lumière inconnue, comptée comme la nuit ; " + d.limit,
  needsMains: () => "demande du courant que l'eau ne peut atteindre",
  typedRefused: (d) => "Saisi, mais non compté, car impossible : " + d.what + ". Voyez à son champ ce qui est permis.",
};
export default words;
