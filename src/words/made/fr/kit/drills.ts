/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { DrillsWords } from "#src/words/made/kit/drills.ts";
import { fr } from "@messageformat/runtime/lib/cardinals";
import { plural } from "#src/words/cases.ts";
const words: DrillsWords = {
  title: () => "Exercices",
  what: () =>
    "Quelqu'un pose des défauts dans un kit mis de côté, d'autres les cherchent pendant une remise en état. Ce que les contrôles trouvent de ce qui a été posé montre jusqu'où on peut s'y fier. Un exercice se commence sur la page d'un kit.",
  now: () => "Maintenant",
  noneOn: () => "Aucun exercice n'est en cours",
  past: () => "Exercices passés",
  noneYet: () => "Aucun encore",
  asideSince: (d) => d.kit + ", mis de côté depuis le " + d.at,
  goTo: () => "Aller à cet exercice",
  pastLine: (d) => d.day + ", " + d.kit + ", " + d.who + " : " + d.result,
  notCompared: () => "pas comparé",
  result: (d) =>
    "trouvé " +
    d.found +
    " sur " +
    d.planted +
    plural(d.wrong, 0, fr, { "0": "", one: ", " + d.wrong + " faux", other: ", " + d.wrong + " faux" }) +
    plural(d.real, 0, fr, { "0": "", one: ", " + d.real + " réel en plus", other: ", " + d.real + " réels en plus" }),
  pageOf: (d) => "La page de " + d.kit,
  checks: () => "Ce que trouve chaque contrôle",
  checksMore: () =>
    "Des défauts posés qu'un contrôle peut trouver, là où il a été fait. La fourchette contient la vérité neuf fois sur dix ; peu de défauts la rendent large. Les défauts posés sont cherchés avec plus de soin que les autres.",
  foundByCheck: () => "Trouvés parmi les posés, par contrôle",
  check: () => "Contrôle",
  line: () => "Ligne",
  found: () => "Trouvés",
  findsIt: () => "Le trouve",
  lineOf: (d) => d.pattern + ", ligne " + d.line,
  foundOf: (d) => d.found + " sur " + d.planted,
  between: (d) => "entre " + d.low + " et " + d.high,
  missedLines: () => "Lignes le plus souvent manquées",
  missedLinesMore: () =>
    "Les mots d'une ligne sont peut-être la raison pour laquelle elle est manquée. Qui répond du modèle lit ce que vous signalez.",
  missedOf: (d) => d.line + " : " + d.missed + " manqués sur " + d.planted + ".",
  reported: () => "Signalé.",
  reportLine: (d) => "Signaler la ligne " + d.line + " de " + d.pattern,
  lineWrong: () => "Elle est fausse",
  lineImpossible: () => "Elle ne peut pas être faite",
  lineUnclear: () => "Elle n'est pas claire",
  notReported: () => "Pas signalé",
  foundBy: (d) => "Trouvé par " + d.who + ".",
  missed: () => "Manqué.",
  faultOf: (d) => d.item + " : " + d.fault,
};
export default words;
