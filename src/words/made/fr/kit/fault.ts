/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { FaultWords } from "#src/words/made/kit/fault.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { fr } from "@messageformat/runtime/lib/cardinals";
const words: FaultWords = {
  title: (d) => "Chercher la panne : " + d.kit,
  nothingToTry: () => "Le modèle de ce kit ne dit pas quoi essayer.",
  whatIsSeen: () => "Ce qui se voit",
  whatDoesItDo: () => "Que fait-il ?",
  takeBack: () => "Reprendre la dernière réponse",
  somethingElse: () => "Il fait autre chose",
  tryNumber: (d) => "Essai " + d.number + " : " + d.minutes,
  itWorks: () => "C'était cela : il marche",
  noChange: () => "Aucun changement",
  nextPump: (d) => "Arrêtez. Prenez " + d.pump + ".",
  nextPumpSooner: (d) => d.pump + " débite dans " + d.minutes + ", plus tôt que ce qui reste à essayer ici.",
  nextPumpLikely: (d) =>
    d.pump +
    " débite dans " +
    d.minutes +
    ", plus tôt que ce qui reste à essayer ici. Ce qui reste est le plus probablement : " +
    d.cause +
    ".",
  nothingLeft: () => "Il ne reste rien à essayer ici",
  nothingLeftMore: () => "Ouvrez le constat. Un atelier doit l'examiner.",
  noNextPump: (d) => d.pump + " ne peut pas être prise : continuer ici",
  whatItMayBe: () => "Ce que cela peut être, et sur quoi cela repose",
  causeAndChance: (d) => d.cause + " : " + d.chance,
  veryLikely: () => "très probablement cela",
  likelierThanNot: () => "plutôt cela qu'autre chose",
  asLikelyAsNot: () => "à peu près une chance sur deux",
  oneInThree: () => "environ 1 fois sur 3",
  oneInFour: () => "environ 1 fois sur 4",
  oneInFive: () => "environ 1 fois sur 5",
  oneInTen: () => "environ 1 fois sur 10",
  lessThanOneInTen: () => "moins de 1 fois sur 10",
  underAMinute: () => "moins d'une minute",
  minutes: (d) =>
    plural(d.count, 0, fr, {
      one: "environ " + strictNumber("fr", d.count, 0, "count") + " minute",
      other: "environ " + strictNumber("fr", d.count, 0, "count") + " minutes",
    }),
  basis: (d) =>
    plural(d.count, 0, fr, {
      "0": "Chances et minutes sont une appréciation, tirée du modèle du kit. Aucun constat de la flotte ne les touche encore.",
      one:
        "Chances et minutes sont une appréciation, tirée du modèle du kit. " +
        strictNumber("fr", d.count, 0, "count") +
        " constat de la flotte y est compté.",
      other:
        "Chances et minutes sont une appréciation, tirée du modèle du kit. " +
        strictNumber("fr", d.count, 0, "count") +
        " constats de la flotte y sont comptés.",
    }),
  whatItWas: () => "Ce que c'était",
  whatWasIt: () => "Qu'était-ce ?",
  worksNow: () => "Il marche maintenant",
  worksNowMore: () => "Surveillez-le : ce qui a aidé une fois peut ne pas durer. Qu'était-ce ?",
  noFinding: () =>
    "Rien n'est cassé sur le kit pour autant : aucun constat n'est nécessaire. Ouvrez-en un si cela n'aurait pas dû arriver.",
  doesNotWork: () => "Finalement, il ne marche pas",
  beginAnew: () => "Terminé : recommencer",
  raise: () => "Ouvrir le constat",
  noteSeen: (d) => d.seen + ".",
  noteTried: (d) => "Essayé sans effet : " + d.tried + ".",
  noteTriedMore: (d) =>
    "Essayé sans effet : " +
    d.tried +
    " ; et " +
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " autre essai",
      other: strictNumber("fr", d.count, 0, "count") + " autres essais",
    }) +
    ".",
  noteRefused: (d) => "N'a pas pu être prise à sa place : " + d.pumps + ".",
  noteHelped: (d) => "Ce qui a aidé : " + d.helped,
  line: (d) => "Ligne " + d.line,
  howToSee: () => "Comment le voir",
  noOtherPump: () =>
    "Aucune autre pompe ne se tient prête sur cette fiche : le kit suivant doit venir. Appelez-le maintenant. Personne n'a dit combien de temps il lui faut.",
  noOtherPumpTold: (d) =>
    "Aucune autre pompe ne se tient prête sur cette fiche : le kit suivant doit venir. Appelez-le maintenant. Dit des autres kits : " +
    d.told,
  callNextKit: () => "Appelez le kit suivant maintenant",
  refused: (d) => "Ne peut pas être prise : " + d.pumps + ". " + d.beside,
  ranLately: (d) =>
    plural(d.count, 0, fr, {
      one: "Le moteur tournait il y a " + strictNumber("fr", d.count, 0, "count") + " minute",
      other: "Le moteur tournait il y a " + strictNumber("fr", d.count, 0, "count") + " minutes",
    }) + " : il est chaud, et démarre comme tel. Là où un essai le veut froid, l'attente est dans ses minutes.",
  ranJustNow: () =>
    "Le moteur tournait à l'instant : il est chaud, et démarre comme tel. Là où un essai le veut froid, l'attente est dans ses minutes.",
  nothingLeftAtSea: () =>
    "Le kit suivant doit venir : appelez-le maintenant. Ouvrez le constat pour qui réparera celui-ci.",
};
export default words;
