/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { KitLineWords } from "#src/words/made/kit/kit-line.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { fr } from "@messageformat/runtime/lib/cardinals";
const words: KitLineWords = {
  today: () => "aujourd'hui",
  days: (d) =>
    plural(d.count, 0, fr, {
      "0": "aujourd'hui",
      one: strictNumber("fr", d.count, 0, "count") + " jour",
      other: strictNumber("fr", d.count, 0, "count") + " jours",
    }),
  finish: () => "Remise en état à terminer",
  turnaround: () => "Remise en état",
  fetch: () => "Absent : à aller chercher",
  lent: () => "Prêté avec lui, pas revenu",
  settle: () => "Différence à trancher",
  other: () => "À remettre en ordre",
  proofRun: () => "Essai de bon fonctionnement",
  mend: () => "Constat à réparer",
  prove: (d) =>
    plural(d.count, 0, fr, {
      "0": "Prouver la réparation",
      one: "Prouver la réparation à la ligne " + d.lines,
      other: "Prouver la réparation aux lignes " + d.lines,
    }),
  renew: () => "Article à renouveler",
  muster: () => "Inventaire",
  flush: () => "Rinçage",
  plannedOpening: () => "Ouverture prévue",
  severalOf: (d) => d.what + ", " + d.count,
  andAlso: (d) => d.first + " ; " + d.next,
  nowGrounds: () => "Maintenant : le kit est immobilisé.",
  nowOverdue: () => "Maintenant : c'est en retard.",
  wasDueBy: (d) =>
    plural(d.days, 0, fr, {
      one: "À faire avant le " + d.day + ", il y a " + strictNumber("fr", d.days, 0, "days") + " jour.",
      other: "À faire avant le " + d.day + ", il y a " + strictNumber("fr", d.days, 0, "days") + " jours.",
    }),
  dueBy: (d) =>
    plural(d.days, 0, fr, {
      "0": "Avant le " + d.day + " (aujourd'hui).",
      one: "Avant le " + d.day + " (" + strictNumber("fr", d.days, 0, "days") + " jour).",
      other: "Avant le " + d.day + " (" + strictNumber("fr", d.days, 0, "days") + " jours).",
    }),
  effort: (d) =>
    plural(d.people, 0, fr, {
      one: "Environ " + d.duration + ", " + strictNumber("fr", d.people, 0, "people") + " personne.",
      other: "Environ " + d.duration + ", " + strictNumber("fr", d.people, 0, "people") + " personnes à la fois.",
    }),
  part: (d) => d.name + " × " + d.count,
  partOnShelf: (d) => d.name + " × " + d.count + ", sur l'étagère",
  partSomeOnShelf: (d) => d.name + " × " + d.count + ", " + d.there + " sur l'étagère",
  countWet: (d) =>
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " revenu et pas rincé",
      other: strictNumber("fr", d.count, 0, "count") + " revenus et pas rincés",
    }),
  countOverdue: (d) => d.count + " en retard",
  countWeek: (d) => d.count + " cette semaine",
  countMonth: (d) => d.count + " d'ici un mois",
  nothingDue: () => "Rien à faire d'ici un mois",
  flushLeft: (d) => "Premier rinçage : encore " + d.duration + ", avant " + d.time + ".",
  flushOverdue: (d) =>
    "Premier rinçage en retard de " + d.duration + " : il fallait rincer avant " + d.time + ". Rincez maintenant.",
  hangingUntil: (d) => "suspendu jusqu'à " + d.until,
  hungEnough: () => "est suspendu depuis assez longtemps",
  grounds: () => "Immobilise le kit",
  limits: () => "Peut partir, avec une limite",
  limitsTo: (d) => "Peut partir, avec une limite : " + d.limit,
  notes: () => "Noté ; le kit peut quand même partir",
  somethingElse: () => "autre chose",
  needsRemedy: () => "Rien de fait encore",
  needsProof: () => "Réparé, pas encore prouvé",
  livedWith: () => "Toléré",
  closed: () => "Clos",
  workDue: () => "À faire",
  allWorkDue: () => "Tout ce qui est à faire",
  timeToday: (d) => d.time + " aujourd'hui",
  timeTomorrow: (d) => d.time + " demain",
  timeOn: (d) => d.time + " le " + d.day,
  ready: (d) =>
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " prêt",
      other: strictNumber("fr", d.count, 0, "count") + " prêts",
    }),
  readyLimited: (d) =>
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " prêt",
      other: strictNumber("fr", d.count, 0, "count") + " prêts",
    }) +
    " (" +
    d.limited +
    " avec limites)",
  noneWanted: (d) => d.ready + ", aucun demandé",
  ofWanted: (d) => d.ready + " sur " + d.must + " demandés",
  ofWantedShort: (d) => d.ready + " sur " + d.must + " demandés, il en manque " + d.short,
  until: (d) => "Jusqu'au " + d.day + " : " + d.what,
  dayAhead: (d) =>
    plural(d.days, 0, fr, {
      "0": d.day + " (aujourd'hui)",
      one: d.day + " (" + strictNumber("fr", d.days, 0, "days") + " jour)",
      other: d.day + " (" + strictNumber("fr", d.days, 0, "days") + " jours)",
    }),
  moreThings: (d) =>
    plural(d.count, 0, fr, {
      one: "Et " + strictNumber("fr", d.count, 0, "count") + " chose de plus.",
      other: "Et " + strictNumber("fr", d.count, 0, "count") + " choses de plus.",
    }),
  about: (d) => "Environ " + d.duration + ".",
  shortNow: (d) => "maintenant : " + d.holds + " prêts sur " + d.must,
  shortNowUntil: (d) => "maintenant, jusqu'au " + d.until + " : " + d.holds + " prêts sur " + d.must,
  shortFrom: (d) => "à partir du " + d.from + " : " + d.holds + " prêts sur " + d.must,
  shortFromTo: (d) => "du " + d.from + " au " + d.until + " : " + d.holds + " prêts sur " + d.must,
  goOnOpen: () => "Remises en état ouvertes",
  goOn: (d) => "Continuer : " + d.kit + ", " + d.where,
  goOnClock: (d) => "Continuer : " + d.kit + ", " + d.where + ", " + d.clock,
  everyLine: () => "toutes les lignes ont une réponse",
  line: (d) => "ligne " + d.line,
  over: (d) => "dépassé de " + d.time,
  gone: (d) => "depuis " + d.time,
  left: (d) => "encore " + d.time,
  otherMode: () => "Autre chose",
};
export default words;
