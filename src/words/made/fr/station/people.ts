/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { PeopleWords } from "#src/words/made/station/people.ts";
import { plural, select, strictNumber } from "#src/words/cases.ts";
import { fr } from "@messageformat/runtime/lib/cardinals";
const words: PeopleWords = {
  listTitle: () => "Personnes de la station",
  qualifications: () => "Qualifications",
  drills: () => "Exercices",
  visits: () => "Visites",
  gone: () => "Ne sont plus ici",
  name: () => "Nom",
  role: () => "Rôle",
  invitedOnly: () => "(invité, n'a encore rien écrit)",
  change: () => "Modifier",
  changeNamed: (d) => "Modifier " + d.name,
  notChanged: () => "Pas modifié",
  saveChange: () => "Enregistrer la modification",
  leaveAsIs: () => "Laisser tel quel",
  notNoted: () => "Pas noté",
  hasLeft: (d) => d.name + " a quitté la station",
  hasLeftAsk: (d) => d.name + " est parti ?",
  noteLeft: () => "Noter le départ",
  noteLeftMore: () =>
    "Cette personne est déconnectée partout et ne peut plus se connecter. Ce qu'elle a écrit reste, sous son nom.",
  invite: () => "Inviter quelqu'un",
  nameHint: () => "Tel qu'on l'écrit à la station, différent de tout autre.",
  makeInvite: () => "Faire une invitation",
  inviteAgain: (d) => "Faire un code pour laisser " + d.name + " rentrer",
  inviteNeedsNetwork: () => "Inviter demande le réseau. La station ne peut pas être jointe.",
  passOn: () => "Transmettez ceci. Il se montre une fois et sert une fois.",
  link: (d) => "Lien : " + d.link,
  goodUntil: (d) => "Valable jusqu'au " + d.at + ".",
  copied: () => "Lien copié",
  copy: () => "Copier le lien",
  wrongPins: () => "Des codes faux ont été essayés",
  wrongPinsOf: (d) =>
    d.name +
    " : " +
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " code faux",
      other: strictNumber("fr", d.count, 0, "count") + " codes faux",
    }) +
    " sur des appareils que cette personne n'a jamais utilisés" +
    select(d.hasLast, { yes: ", le dernier le " + d.last, other: "" }) +
    ".",
  needsInvite: () => "Un nouvel appareil de cette personne demande maintenant une invitation.",
  wrongPinsMore: () =>
    "Demandez à ces personnes si c'était bien elles. Une nouvelle invitation remet le compte à zéro.",
  noPerson: () => "Personne inconnue",
  noPersonNews: () => "Personne de cette station n'a cette adresse",
  record: () => "Dossier de formation",
  noneSet: () => "La station n'a fixé aucune qualification",
  whatHolds: (d) => "Ce que " + d.name + " détient",
  recordFile: (d) => "dossier de formation de " + d.name,
  printRecord: () => "Imprimer le dossier de formation",
  qualification: () => "Qualification",
  holdsUntil: () => "Détenue jusqu'au",
  lastCounted: () => "Comptée pour la dernière fois",
  nothingYet: () => "rien encore",
  seenBy: () => "Peut être vu par",
  nobody: () => "personne",
  neverHeld: () => "jamais détenue",
  lapsedOn: (d) => "échue le " + d.day,
  done: () => "Fait",
  newestOf: (d) => "Les " + d.shown + " plus récents sur " + d.count + " ; le papier a tout.",
  doneLine: (d) => d.day + " : " + d.qualification + ". " + d.where + ", " + d.counts + ".",
  toldByMistake: () => "Dit par erreur",
  notStruck: () => "Pas rayé",
  strikeAsk: () => "Rayer ce qui a été dit ?",
  strikeDo: () => "Rayer",
  strikeMore: () => "Cela ne compte plus ; la ligne reste dans le journal, rayée par vous.",
  elsewhere: () => "Fait ailleurs",
  elsewhereMore: () => "Un stage, une soirée d'exercice, une autre station. Cela compte comme dit par vous.",
  dayDone: () => "Jour où c'était fait",
  whatDone: () => "Ce qui a été fait, et où",
  whoSaw: () => "Qui l'a vu, si c'est quelqu'un de cette station",
  nobodyHere: () => "Personne de cette station",
  notWritten: () => "Pas écrit",
  write: () => "L'écrire",
  time: () => "Temps pour les kits",
  timeSaid: (d) =>
    d.name + " : " + d.hours + " h par semaine" + select(d.isAway, { yes: " ; absent " + d.days, other: "" }) + ".",
  timeAssumed: (d) =>
    d.name +
    " : heures non dites, " +
    d.assumed +
    " comptées" +
    select(d.isAway, { yes: " ; absent " + d.days, other: "" }) +
    ".",
  fromTo: (d) => "du " + d.from + " au " + d.to,
  timeOf: (d) => "Temps de " + d.name,
  hoursOf: (d) => "Heures par semaine de " + d.name + ", de 0 à 168",
  saveHours: () => "Enregistrer les heures",
  firstAway: () => "Premier jour d'absence",
  lastAway: () => "Dernier jour d'absence",
  ofNamed: (d) => "De " + d.name + ".",
  saveAway: () => "Enregistrer les jours d'absence",
  notAway: (d) => "Pas absent dès le " + d.day,
  keeper: () => "Responsable des kits",
  crew: () => "Équipage",
  assessor: () => "Évaluateur",
  commander: () => "Commandant",
  administrator: () => "Administrateur",
  keeperNote: () => "Tient les kits : tout ce qui touche aux kits et aux constats, exclut les appareils perdus.",
  crewNote: () => "Travaille sur les kits : remises en état, constats, inventaires, remises à bord.",
  assessorNote: () => "Regarde chaque lieu et relève des constats.",
  commanderNote: () => "Lit tout.",
  administratorNote: () =>
    "Tient les personnes, les lieux et les règles, et peut tout ce que peut un responsable des kits.",
};
export default words;
