/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { PracticeWords } from "#src/words/made/station/practice.ts";

const words: PracticeWords = {
  sheet: () => "la fiche d'une détresse",
  stageOfEvery: (d) => "étape " + d.stage + " de chaque modèle",
  stageOf: (d) => "étape " + d.stage + " de " + d.pattern,
  lineOf: (d) => "ligne " + d.line + " de " + d.pattern,
  stepOf: (d) => "pas " + d.step + " de " + d.pattern,
  onSheet: (d) => "Sur la fiche de " + d.casualty,
  before: () => "avant qu'une seconde personne soit demandée",
  held: () => "la détenait",
  seenBy: (d) => "vu par " + d.name,
  toldBy: (d) => "d'après " + d.name,
  toldAndSeen: (d) => d.told + ", " + d.seen,
  notCounted: (d) => "ne compte pas : " + d.why,
  nobodyNamed: () => "personne n'est nommé qui l'ait vu",
  goneAlone: (d) => "continué seul, " + d.note,
};
export default words;
