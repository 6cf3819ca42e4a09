/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { DrawingWords } from "#src/words/made/kit/drawing.ts";

const words: DrawingWords = {
  head: (d) => "Hauteur, " + d.unit,
  flow: (d) => "Débit, " + d.unit,
  pumpGives: () => "Ce que donne la pompe",
  rigNeeds: () => "Ce que demandent hauteur et tuyaux",
  worksHere: () => "Là où elle travaille",
  likelyFlow: () => "Débit probable, 95 sur 100",
  suctionEnds: () => "À droite, l'aspiration ne fournit plus",
  curveAlone: () => "Ce que donnerait la courbe seule",
  notStable: () => "Second croisement, pas stable",
  startTimes: () => "Fois sur 10 où il démarre, amorce et débite",
  sinceProved: () => "Mois depuis la dernière preuve",
  axisBegins: (d) => "L'axe commence à " + d.at + ", pas à 0.",
  shareOfAll: (d) => "Part du total, " + d.all + " " + d.what + " (%), barre : la sienne",
  runningShare: () => "Ligne et points : la part cumulée",
  yearsOf: (d) => "Années " + d.across,
  monthsOf: (d) => "Mois " + d.across,
};
export default words;
