/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { DatesWords } from "#src/words/made/frame/dates.ts";

const words: DatesWords = {
  printed: (d) => "Bon jusqu'au " + d.day,
  fitted: (d) => "Posé le " + d.day,
  made: (d) => "Fabriqué le " + d.day,
  whenPrinted: () => "Jusqu'à quand il est bon",
  whenFitted: () => "Quand il a été posé",
  whenMade: () => "Quand il a été fabriqué",
  leaveDay: () => "Laissez le jour vide si seuls le mois et l'année se lisent.",
  bySheet: (d) => d.dates + ", d'après une liste",
  lookedNone: () => "Regardé : aucune date lisible",
  noDate: () => "Aucune date au dossier",
  wasGood: (d) => "Périmé : son dernier jour bon était le " + d.day + ".",
  goodUntil: (d) => "Bon jusqu'au " + d.day + ".",
  tooSoon: (d) =>
    "Bon jusqu'au " +
    d.day +
    ", et la prochaine remise en état est à faire avant le " +
    d.due +
    " : renouvelez-le maintenant ou avant.",
  whatSays: () => "Que dit sa date ?",
  lastGood: () => "Dernier jour bon dessus",
  fittedOn: () => "Posé le",
  madeOn: () => "Fabriqué le",
  keep: () => "Garder cette date",
  cannotRead: () => "Regardé : aucune date lisible",
  notSaved: () => "Pas enregistré",
};
export default words;
