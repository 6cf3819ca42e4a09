/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { CallsWords } from "#src/words/made/frame/calls.ts";

const words: CallsWords = {
  now: () => "maintenant",
  over: (d) => "dépassé de " + d.duration,
  stopAlarm: () => "Arrêter l'alarme",
  stopAndRefuel: (d) => d.pump + " : arrêtez le moteur et refaites le plein",
  caller: (d) => "Fiche de détresse : " + d.casualty,
  sound: () => "Sonder l'eau",
  soundSpace: (d) => "Sonder l'eau : " + d.space,
  last: (d) => "Dernière : " + d.level + " à " + d.time + ". Même repère, même jauge.",
  soundNow: () => "Sonder maintenant",
  refuelFirst: (d) => "Plein de " + d.pump + " : arrêtez d'abord le moteur",
  notWritten: () => "Pas noté",
  refuelled: () => "Plein refait",
  inAMinute: () => "Dans une minute",
  stopAlarmOnly: () => "Arrêter seulement l'alarme",
};
export default words;
