/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { PatternFormWords } from "#src/words/made/pattern/pattern-form.ts";
import { fr } from "@messageformat/runtime/lib/cardinals";
import { plural, select } from "#src/words/cases.ts";
const words: PatternFormWords = {
  kind: () => "Sorte",
  kindOption: (d) => d.word + " : " + d.about,
  notSaid: () => "Non dit.",
  sayIt: (d) => "Le dire : " + d.field,
  takeOutField: (d) => "Retirer : " + d.field,
  anotherId: () => "Un autre : son identifiant",
  addIt: () => "L'ajouter",
  moveUp: (d) => "Monter : " + d.entry,
  up: () => "Monter",
  moveDown: (d) => "Descendre : " + d.entry,
  down: () => "Descendre",
  copyNamed: (d) => "Copier : " + d.entry,
  copy: () => "Copier",
  takeOutNamed: (d) => "Retirer : " + d.entry,
  takeOut: () => "Retirer",
  takeOutAsk: (d) => "Retirer « " + d.entry + " » ?",
  takeOutDo: () => "Retirer",
  noUses: () => "Rien d'autre dans le modèle n'y renvoie.",
  uses: () => "Ceux-ci y renvoient, et ne renverraient à rien avant d'être modifiés :",
  bringsBack: () => "« Reprendre le dernier changement » le ramène tel qu'il était.",
  number: (d) => "Numéro " + d.number,
  wholeFromTo: (d) => "Un nombre entier de " + d.least + " à " + d.most + ".",
  fromTo: (d) => "De " + d.least + " à " + d.most + ".",
  atMost: (d) => "Au plus " + d.most + " caractères.",
  suchAs: (d) => "Par exemple " + d.examples + ".",
  under: (d) => d.over + " : " + d.field,
  counts: (d) =>
    plural(d.errors, 0, fr, { "0": "Aucune erreur", one: d.errors + " erreur", other: d.errors + " erreurs" }) +
    ", " +
    plural(d.warnings, 0, fr, {
      "0": "aucun avertissement",
      one: d.warnings + " avertissement",
      other: d.warnings + " avertissements",
    }) +
    ", " +
    plural(d.notes, 0, fr, { "0": "aucune note", one: d.notes + " note", other: d.notes + " notes" }),
  whoIssues: () => "Les responsables des kits et les administrateurs publient les modèles",
  giveFile: () => "Téléchargez le fichier et donnez-le à l'un d'eux.",
  layOut: () => "Le déposer pour une répétition",
  dryRun: () => "Répétition",
  laidOut: () => "Déposé : ouvrez « Parcourir un brouillon » sous Modèles sur n'importe quel appareil de la station.",
  notSent: () => "Pas envoyé",
  issueVersion: (d) => "Publier la version " + d.version + " à la station",
  issueAsk: (d) => "Publier la version " + d.version + " ?",
  issueDo: () => "Publier",
  notYet: () => "Pas encore",
  issueMore: () =>
    "Chaque appareil l'aura à son prochain échange, et elle reste : ce qui y est faux se corrige par une autre version.",
  olderKits: (d) =>
    "Ces kits restent à leur version, et sont prêts avec des limites au plus jusqu'à ce qu'un responsable les fasse passer un par un : " +
    d.kits +
    ".",
  lintReads: () => "La relecture est en cours.",
  lintErrors: (d) =>
    "Pas encore à publier : " +
    plural(d.count, 0, fr, { "1": "une erreur", other: d.count + " erreurs" }) +
    " à la relecture.",
  offline: () => "Pas à publier maintenant : la station ne peut pas être jointe. Le brouillon reste sur cet appareil.",
  unreachable: (d) => "La station ne peut pas être jointe : " + d.because + ".",
  unreachableMore: () => "Le brouillon reste sur cet appareil. Publiez-le une fois qu'il y a un réseau.",
  makeVersion: (d) => "En faire la version " + d.version,
  errors: () => "Erreurs",
  errorsMore: () => "Avec une erreur, il n'est pas publié.",
  warnings: () => "Avertissements",
  warningsMore: () => "À lire ; il peut être publié.",
  notes: () => "Notes",
  notesMore: () => "Peuvent rester.",
  lintFinds: () => "Ce que trouve la relecture",
  lint: () => "Relecture",
  reading: () => "Lecture du modèle …",
  readingOn: (d) => d.counts + " ; la lecture continue …",
  lintLimits: () =>
    "La relecture ne peut pas dire si le modèle est juste. Laissez quelqu'un qui n'a jamais vu le kit faire une remise en état d'après lui, et regardez.",
  countOf: (d) => d.name + " (" + d.count + ")",
  markOf: (d) => "(" + select(d.weight, { error: "erreur", warning: "avertissement", other: "note" }) + ")",
  addTo: (d) => "Ajouter à : " + d.field,
  choose: () => "Choisir",
  add: (d) => "Ajouter " + d.entry,
  facts: () => "Fiche",
  chosenPart: () => "La partie choisie",
  parts: () => "Parties du modèle",
  partNotSaid: (d) => d.part + ", non dit",
  allAndAnother: () => "Tous, et un autre",
  mayBeLeftOut: (d) => d.field + " (facultatif)",
  notThere: (d) => d.held + " : absent",
  notSaidOtherwise: (d) => "Non dit : " + d.otherwise,
  notSaidField: () => "Non dit",
  lineOf: (d) => d.stage + ", ligne " + d.line,
  quoted: (d) => "« " + d.field + " »",
  nothingWritten: (d) => "Rien n'est encore écrit ici. Admis : " + d.allowed + ".",
  writtenIs: (d) => "Il est écrit " + d.got + ". Admis : " + d.allowed + ".",
  wholeFile: () => "Le modèle entier",
};
export default words;
