/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { SheetTopWords } from "#src/words/made/casualty/sheet-top.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { fr } from "@messageformat/runtime/lib/cardinals";
const words: SheetTopWords = {
  dueNext: () => "À faire ensuite",
  sound: () => "Sonder",
  soundSpace: (d) => "Sonder " + d.space,
  refuel: () => "Plein",
  refuelPump: (d) => "Plein de " + d.pump,
  now: () => "maintenant",
  over: (d) => "dépassé de " + d.duration,
  at: (d) => "à " + d.time,
  nowOver: (d) => "maintenant, dépassé de " + d.duration,
  atIn: (d) => "à " + d.time + ", dans " + d.duration,
  gravest: () => "Le plus grave",
  warnings: () => "Avertissements",
  leaveNow: () => "Il est temps de le quitter",
  leaveNowMore: () =>
    "Des signes qu'il faut en débarquer tout le monde maintenant. La personne qui dirige sur place décide, et n'attend pas un chiffre.",
  leaveReady: () => "Soyez prêts à le quitter",
  leaveReadyMore: () =>
    "Gilets de sauvetage mis, issue dégagée, personne seul en bas, quelqu'un compte les gens. La personne qui dirige sur place décide.",
  areWeGaining: () => "Gagnons-nous ?",
  readOut: (d) => d.word + " : " + d.detail + ".",
  computingWord: () => "CALCUL EN COURS…",
  notComputed: () => "Non calculé",
  chance: (d) => "Chance : " + d.chance + ".",
  inCharge: () => "La personne qui dirige sur place décide.",
  computing: () => "Calcul en cours…",
  computingAnew: () => "Nouveau calcul en cours…",
  anEstimate: () => "Une estimation.",
  madeAt: (d) => "À " + d.time,
  oldOf: (d) => "ANCIEN, de " + d.time,
  origin: (d) =>
    plural(d.count, 0, fr, {
      one: d.age + ", d'après " + strictNumber("fr", d.count, 0, "count") + " sonde. " + d.state,
      other: d.age + ", d'après " + strictNumber("fr", d.count, 0, "count") + " sondes. " + d.state,
    }),
};
export default words;
