/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { YearWords } from "#src/words/made/station/year.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { fr } from "@messageformat/runtime/lib/cardinals";
const words: YearWords = {
  title: () => "L'année planifiée",
  plan: () => "Plan",
  weeks: (d) =>
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " semaine",
      other: strictNumber("fr", d.count, 0, "count") + " semaines",
    }),
  planYear: () => "Planifier l'année",
  planAgain: () => "Planifier à nouveau",
  notPlanned: () => "Pas planifié",
  howOften: () => "Combien de fois ouvrir",
  shortIn: (d) =>
    plural(d.count, 0, fr, {
      one: "Manque dans " + strictNumber("fr", d.count, 0, "count") + " semaine",
      other: "Manque dans " + strictNumber("fr", d.count, 0, "count") + " semaines",
    }),
  shortAt: (d) => d.place + ", semaine du " + d.day + " : il en manque " + d.count,
  andMore: (d) => "et " + d.count + " de plus",
  quickPlan: () =>
    "Ceci est le plan rapide de cet appareil. Il n'y a pas de réseau. Avec un réseau, la station en cherche un meilleur.",
  standsAccepted: () => "Ce plan est accepté.",
  notAllWritten: () => "Tout n'a pas été inscrit",
  accept: () => "Accepter ce plan",
  noPlan: () => "Aucun plan n'est encore accepté",
  acceptedPlan: () => "Le plan accepté",
  acceptedBy: (d) => "Accepté en dernier par " + d.person + ", " + d.at + ".",
  planned: () => "Ouvertures planifiées",
  weekOf: () => "Semaine du",
  kit: () => "Kit",
  renewed: () => "Renouvelé ou fait",
  by: () => "Par",
  compared: () => "Comparaison",
  comparedTable: () => "Le plan, à côté de chaque chose faite à son dernier jour",
  wholeTime: () => "Sur toute la durée",
  lastDay: () => "Chacune à son dernier jour",
  thisPlan: () => "Ce plan",
  openings: () => "Ouvertures",
  worstWeek: () => "Heures de la pire semaine",
  hours: (d) => d.hours + " h",
  weeksShort: () => "Semaines où il en manque, chaque lieu compté",
  lifeLost: () => "Durée de vie perdue",
  days: (d) =>
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " jour",
      other: strictNumber("fr", d.count, 0, "count") + " jours",
    }),
  best: () => "Aucun plan n'a moins de kits manquants, moins de semaines échues ni moins d'ouvertures.",
  notProvedBest: (d) =>
    "Pas prouvé le meilleur : ce qui n'a pas pu être ramené au minimum peut s'en écarter de " +
    d.percent +
    " % au plus.",
  openingsOfPlan: () => "Ouvertures de ce plan",
  weekAndKit: (d) => "Semaine du " + d.day + " : " + d.kit,
  openingFree: (d) => d.week + ". " + d.renews + ". Par " + d.people + ".",
  openingFixed: (d) => d.week + " (fixée). " + d.renews + ". Par " + d.people + ".",
  earlier: () => "Plus tôt",
  kitEarlier: (d) => "Une semaine plus tôt : " + d.kit,
  later: () => "Plus tard",
  kitLater: (d) => "Une semaine plus tard : " + d.kit,
  letMove: () => "La laisser libre",
  keepThere: () => "La garder là",
  beside: (d) => "À leurs côtés, pour voir faire ou pour soulever : " + d.people + ".",
  handsLacking: (d) =>
    plural(d.count, 0, fr, {
      one: "Il manque " + strictNumber("fr", d.count, 0, "count") + " personne parmi celles qu'il faut en même temps.",
      other:
        "Il manque " + strictNumber("fr", d.count, 0, "count") + " personnes parmi celles qu'il faut en même temps.",
    }),
  kitLetMove: (d) => "La laisser libre : " + d.kit,
  kitKeepThere: (d) => "La garder là : " + d.kit,
  notProved: () => "Pas prouvé le meilleur, et l'écart au meilleur n'est pas connu.",
  planning: () => "Un plan rapide se calcule sur cet appareil.",
  askingStation: () =>
    "Le plan rapide est ci-dessous. La station en cherche un meilleur ; cela peut prendre une minute.",
  fixedNow: () => "Fixées, à libérer une par une :",
  flushFirst: () => "Rincer d'abord. Cela n'attend aucun plan.",
  quickSoFar: () => "Ceci est le plan rapide de cet appareil.",
  quickNoTime: () =>
    "Ceci est le plan rapide de cet appareil. Le temps a manqué à la station pour en trouver un meilleur. Planifier à nouveau quand elle a moins à faire.",
  quickRefused: (d) =>
    "Ceci est le plan rapide de cet appareil. La station n'en a pas donné de meilleur : " + d.because,
  opensNothing: () => "Ce plan n'ouvre rien.",
  worseShort: (d) =>
    "Ce plan manque de kits dans " +
    plural(d.plan, 0, fr, {
      one: strictNumber("fr", d.plan, 0, "plan") + " semaine",
      other: strictNumber("fr", d.plan, 0, "plan") + " semaines",
    }) +
    " ; chaque chose à son dernier jour, dans " +
    d.lastDay +
    ", si heures et pièces le permettaient.",
  worseOpenings: (d) =>
    "Ce plan demande " +
    plural(d.plan, 0, fr, {
      one: strictNumber("fr", d.plan, 0, "plan") + " ouverture",
      other: strictNumber("fr", d.plan, 0, "plan") + " ouvertures",
    }) +
    " ; chaque chose à son dernier jour, " +
    d.lastDay +
    ", si heures et pièces le permettaient.",
  acceptAllTheSame: () => "L'accepter quand même",
  acceptLater: () => "Il peut être accepté une fois la planification finie.",
};
export default words;
