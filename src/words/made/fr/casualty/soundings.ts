/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { SoundingsWords } from "#src/words/made/casualty/soundings.ts";

const words: SoundingsWords = {
  levelIn: (d) => "Niveau en " + d.unit,
  lowerBy: (d) => "Plus bas de " + d.amount + " " + d.unit,
  higherBy: (d) => "Plus haut de " + d.amount + " " + d.unit,
  unitKeys: () => "Unité du nombre tapé",
  levelFault: (d) =>
    "Un niveau est ici un nombre de " +
    d.low +
    " à " +
    d.high +
    " " +
    d.unit +
    ", par exemple " +
    d.example +
    " ; ou avec son unité : 2 ft 6 1/2 in.",
  sounding: () => "Sonde",
  sounded: () => "sondé",
  soundedNowDo: () => "Sondé maintenant",
  levelWhen: (d) => d.level + " : " + d.when,
  wrongLevel: (d) => "De " + d.allowed + ". " + d.remedy,
  written: (d) => d.level + " " + d.when,
  last: (d) => "Dernière " + d.level + ", " + d.at,
  fromLowest: () => "Depuis le point le plus bas, à un seul repère : marquez la jauge au ruban.",
  nowAfterAll: () => "Finalement maintenant",
  earlier: () => "Plus tôt ?",
  same: () => "Pareil",
  soundings: () => "Sondes",
  soundingsAhead: () => "Sondes et ce qui peut venir",
  chart: () => "Sondes de l'eau à l'intérieur au fil du temps. Les chiffres sont dans les tableaux ci-dessous.",
  chartAhead: () =>
    "Sondes de l'eau à l'intérieur au fil du temps, et prévision pour une heure. Les chiffres sont dans les tableaux ci-dessous.",
  tooOld: () => "Rien n'est prévu à partir d'une sonde aussi ancienne que la dernière.",
  toCheck: () => "Rien n'est prévu à partir d'une dernière sonde qu'il faut d'abord vérifier.",
  noFit: () => "Rien n'est prévu à partir de sondes incohérentes.",
  figures: () => "Les chiffres",
  newestFirst: () => "Sondes, la plus récente d'abord",
  forecast: () => "Prévision",
  at: () => "À",
  level: () => "Niveau",
  likeliest: () => "Le plus probable",
  nineInTen: () => "9 sur 10",
  range: (d) => "de " + d.low + " à " + d.high,
  spaceLooked: () => "Compartiment regardé",
  whenRead: () => "Quand a-t-elle été lue ?",
  orAt: () => "Ou à cette heure",
  now: () => "Maintenant",
  beforeOpened: (d) => "C'est " + d.duration + " avant l'ouverture de cette fiche. A-t-elle été lue alors ?",
  yesReadAt: (d) => "Oui, lue à " + d.time,
  yesReadYesterday: (d) => "Oui, lue hier à " + d.time,
  clockForm: () => "Heures et minutes, par exemple 16:40.",
  clockAhead: (d) =>
    "C'est dans " +
    d.ahead +
    " : il est " +
    d.now +
    " à cet appareil. Entrez l'heure de lecture, au plus tard maintenant.",
  ago: (d) => "il y a " + d.duration,
  soundedNow: () => "sondé maintenant",
  soundedAgo: (d) => "sondé il y a " + d.duration,
  soundedAt: (d) => "sondé à " + d.time,
  soundedYesterday: (d) => "sondé hier à " + d.time,
  levelAxis: (d) => "Niveau, " + d.unit,
  bandGoesOn: (d) => "La bande va jusqu'à " + d.level,
  nowMark: () => "maintenant",
  soundedMark: () => "Sondé",
  pumping: () => "Pompage",
  oneInTwo: () => "1 sur 2",
};
export default words;
