/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { SheetWordWords } from "#src/words/made/casualty/sheet-word.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { fr } from "@messageformat/runtime/lib/cardinals";
const words: SheetWordWords = {
  gaining: () => "ON GAGNE",
  holding: () => "ON TIENT",
  losing: () => "ON PERD",
  shouldBeGaining: () => "ON DEVRAIT GAGNER",
  shouldBeHolding: () => "ON DEVRAIT TENIR",
  shouldBeLosing: () => "ON DEVRAIT PERDRE",
  tooSoon: () => "TROP TÔT POUR LE DIRE",
  oneSounding: () => "UNE SEULE SONDE",
  doesNotFit: () => "SONDES INCOHÉRENTES",
  notKnown: () => "INCONNU",
  noSounding: () => "PAS ENCORE DE SONDE",
  fuelSmelt: () => "ODEUR DE CARBURANT",
  checkSounding: () => "VÉRIFIER LA SONDE",
  timeToLeave: () => "IL EST TEMPS DE LE QUITTER",
  notComputedWord: () => "NON CALCULÉ",
  soundAgain: () => "sondez à nouveau",
  lookAround: () => "sondez à nouveau, voyez crépine et brèche",
  soundNow: () => "sondez maintenant",
  soundFirst: () => "sondez l'eau à un seul repère",
  allOff: () => "tout arrêter, pompes et moteurs ; tous à l'air libre",
  aboveDeck: () => "plus haut que son livet : regardez encore",
  notSeen: () => "pas encore vu : sondez à nouveau",
  nearlyAtStrainer: () => "à la crépine ou presque : sondez, réduisez la pompe",
  strainerIn: (d) => "à la crépine dans " + d.duration + " environ",
  falling: () => "baisse, lentement",
  noChange: () => "ni montée ni baisse qu'une jauge montre",
  offIn: (d) => "quitter sous " + d.duration + " selon cette estimation",
  offUnlessPatch: (d) => "quitter sous " + d.duration + ", sauf brèche réduite de moitié",
  offUnlessPump: (d) => "quitter sous " + d.duration + ", sauf un kit de plus",
  offUnlessThrottle: (d) => "quitter sous " + d.duration + ", sauf à mettre les gaz",
  offUnlessLower: (d) => "quitter sous " + d.duration + ", sauf pompe plus bas",
  offPumpTooLittle: (d) => "quitter sous " + d.duration + " : une pompe de plus ne suffit pas",
  risingOff: () => "monte : évacuez d'abord",
  risingSlow: () => "monte : réduisez la brèche, ajoutez une pompe",
  strainerBetween: (d) => "Jusqu'à la crépine dans " + d.from + " à " + d.to + ", neuf fois sur dix.",
  strainerBetweenLeft: (d) =>
    "Jusqu'à la crépine dans " +
    d.from +
    " à " +
    d.to +
    ", neuf fois sur dix, en laissant environ " +
    d.left +
    " dessous.",
  lostBetween: (d) => "Perdu dans " + d.from + " à " + d.to + ", neuf fois sur dix.",
  trendRising: (d) =>
    "Tendance seule : monte, d'après " +
    plural(d.count, 0, fr, {
      one: "la dernière sonde",
      other: "les " + strictNumber("fr", d.count, 0, "count") + " dernières sondes",
    }) +
    ".",
  trendFalling: (d) =>
    "Tendance seule : baisse, d'après " +
    plural(d.count, 0, fr, {
      one: "la dernière sonde",
      other: "les " + strictNumber("fr", d.count, 0, "count") + " dernières sondes",
    }) +
    ".",
  trendUnclear: (d) =>
    "Tendance seule : ni montée ni baisse nettes, d'après " +
    plural(d.count, 0, fr, {
      one: "la dernière sonde",
      other: "les " + strictNumber("fr", d.count, 0, "count") + " dernières sondes",
    }) +
    ".",
  trendAhead: (d) =>
    "Si cela continue ainsi : " +
    d.level +
    " (" +
    d.low +
    " à " +
    d.high +
    ") " +
    d.duration +
    " après la dernière sonde. Ni brèche, ni pompe, ni livet n'est compté.",
  seenOutranks: () => "ce qui est vu prime sur la jauge",
  goBySight: () => "continuez à sonder ; fiez-vous à ce que vous voyez",
  lastAgo: (d) => "dernière sonde il y a " + d.duration + ". Sondez maintenant",
  herDeckEdge: () => "son livet",
  loneUpTo: (d) =>
    "Une seule sonde ne montre ni montée ni baisse : dans une heure, tout est possible jusqu'à " + d.high + ".",
  loneBetween: (d) =>
    "Une seule sonde ne montre ni montée ni baisse : dans une heure, tout est possible de " +
    d.low +
    " à " +
    d.high +
    ".",
  changeMost: () => "Ce qui changerait le plus",
  startFirst: (d) => "D'abord : démarrez " + d.pumps + ", à bord et à l'arrêt.",
  noFitNoChances: () =>
    "Les sondes sont incohérentes : aucune chance ne peut être donnée. Ce qui aide le plus souvent, le meilleur d'abord :",
  loneNoChances: () =>
    "Il n'y a qu'une sonde : aucune chance ne peut être donnée. Ce qui aide le plus souvent, le meilleur d'abord :",
  inAnHour: (d) => d.level + " dans une heure",
  under: () => "sous l'eau dans l'heure",
  asItGoes: (d) => "À ce train : " + d.chance + " de tenir ou mieux, " + d.level + ".",
  asItGoesEnough: (d) =>
    "À ce train : " +
    d.chance +
    " de tenir ou mieux, " +
    d.level +
    ". Assez probable ainsi ; gardez un kit de plus sous la main, et continuez à sonder.",
  withAction: (d) => d.chance + " de tenir ou mieux, " + d.level + ".",
  anEstimateHead: () => "Une estimation",
  estimateMore: () =>
    "La personne qui dirige sur place décide. Comparez avec ce que vous voyez ; le manuel du matériel et les règles locales priment.",
  granted: () => "Ce qu'elle suppose",
  measuredHull: () => "Coque telle que mesurée ; GM estimée d'après son type : fiez-vous à son roulis.",
  guessedToo: (d) => d.guessed + ", GM aussi.",
  guessedEnter: (d) =>
    d.guessed + ", GM aussi. Entrez largeur, creux et franc-bord pour améliorer l'image et les durées.",
  enterMeasures: () => "Entrer ses mesures",
  leftOut: () => "Laissé hors du calcul",
  soundingWrong: (d) => "La sonde de " + d.level + " à " + d.time + " est impossible.",
  soundingWrongMore: (d) =>
    "Un niveau va de " + d.allowed + ". Annulez-la si c'est une erreur ; si elle est juste, corrigez son creux.",
  takeBack: (d) => "Annuler " + d.level,
  aboveCoaming: () => "Impossible : au-dessus de son hiloire.",
  beamWrong: (d) => "Sa largeur de " + d.got + " est impossible.",
  depthWrong: (d) => "Son creux, de la quille au livet, de " + d.got + " est impossible.",
  draughtWrong: (d) => "Son tirant d'eau de " + d.got + " est impossible.",
  otherWrong: (d) => "Sa mesure " + d.field + " de " + d.got + " est impossible.",
  guessedInstead: (d) => "Elle va de " + d.allowed + ". Elle est estimée à la place.",
  takenOut: () => "mesures impossibles, retirées",
  leaveGuessed: () => "La laisser estimée",
  correctMeasures: () => "Corriger ses mesures",
  leaveNowMore: () =>
    "Des signes qu'il faut en débarquer tout le monde maintenant. La personne qui dirige sur place décide, et n'attend pas un chiffre.",
};
export default words;
