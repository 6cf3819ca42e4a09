/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { WorkWords } from "#src/words/made/station/work.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { fr } from "@messageformat/runtime/lib/cardinals";
const words: WorkWords = {
  title: () => "À faire",
  all: () => "Tout",
  mine: () => "Ce que j'ai pris",
  year: () => "L'année prévue",
  printThis: () => "Imprimer ce mois",
  printNext: () => "Imprimer le mois prochain",
  tookNone: () => "Vous n'avez rien pris",
  noneDue: () => "Rien à faire d'ici un mois",
  wet: () => "Revenus et pas rincés",
  overdue: () => "En retard",
  week: (d) => "Cette semaine, jusqu'au " + d.day,
  month: (d) => "Ce mois, jusqu'au " + d.day,
  moreTasks: (d) => "Et " + d.count + " de plus à la même ouverture",
  goodUntil: (d) => d.why + " Bon jusqu'au " + d.day + ".",
  goToKit: () => "Aller au kit",
  goToMuster: () => "Aller à l'inventaire",
  takeBack: () => "Le reprendre",
  goSettle: () => "Aller trancher",
  ways: () => "Jour, personne, report",
  waysOf: (d) => "Jour, personne ou report : " + d.kit,
  nobodyAlone: () => "Personne qui puisse le faire seul n'est là aujourd'hui.",
  mayDo: (d) => "Peuvent le faire et ne sont pas absents aujourd'hui : " + d.names + ".",
  withSecond: (d) => "Avec une deuxième personne qui le voit faire : " + d.names + ".",
  andMore: (d) => d.names + " et " + d.count + " autres",
  takenBy: (d) => "Pris par " + d.names + ".",
  and: (d) => d.first + " et " + d.next,
  eachAlone: () => "Chacun l'a pris sans voir l'autre.",
  toDoOn: (d) => "À faire le " + d.day + ", dit " + d.name + ".",
  putOffUntil: (d) => "Reporté au " + d.day + " par " + d.name + " : " + d.reason,
  cannotWait: (d) => "Cela ne peut pas attendre si longtemps : à partir du " + d.day + ", le kit est immobilisé.",
  planned: (d) => "Prévu la semaine du " + d.day + ".",
  notWritten: () => "Pas noté",
  layDown: () => "Je le laisse",
  layDownKit: (d) => "Laisser " + d.kit,
  take: () => "Je le prends",
  takeKit: (d) => "Prendre " + d.kit,
  didYouSee: (d) => "L'avez-vous vu faire ? " + d.what + ", " + d.kit,
  namedYou: (d) =>
    d.name +
    " vous a nommé comme deuxième personne, " +
    d.at +
    ". Si vous ne l'avez pas vu, dites-le au responsable des kits et laissez ceci.",
  sawIt: () => "Je l'ai vu faire",
  sawItOf: (d) => "Je l'ai vu faire : " + d.what + ", " + d.kit,
  day: () => "Jour",
  whyPutOff: () => "Pourquoi c'est reporté",
  doOnDay: () => "Le faire ce jour-là",
  putOff: () => "Reporter à ce jour",
  takeDayBack: () => "Retirer son jour",
  musterPast: () => "Son dernier jour est passé : un jour peut être fixé, pas de report.",
  musterLatest: (d) => "Au plus tard le " + d.day + ", son dernier jour.",
  groundsAlready: () => "Le kit en est déjà immobilisé : un jour peut être fixé, pas de report.",
  groundsNever: () => "Aucune date n'immobilise le kit pour cela.",
  groundsAfter: (d) => "Au plus tard le " + d.day + " : après, le kit est immobilisé.",
  giveTo: (d) => "Le confier à " + d.name,
  whatAndWho: () => "Quoi, pourquoi, avec quelles pièces, et qui",
  handsLacking: (d) =>
    "Il faut " +
    d.people +
    " personnes en même temps ; " +
    plural(d.there, 0, fr, {
      "0": "personne n'est là",
      one: strictNumber("fr", d.there, 0, "there") + " est là",
      other: strictNumber("fr", d.there, 0, "there") + " sont là",
    }) +
    " aujourd'hui.",
  needsParts: () => "Il faut :",
  needsMany: (d) =>
    "Il faut " +
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " pièce",
      other: strictNumber("fr", d.count, 0, "count") + " pièces",
    }) +
    ", dont " +
    d.there +
    " sur l'étagère",
};
export default words;
