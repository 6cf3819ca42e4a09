/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { PatternFindingsWords } from "#src/words/made/pattern/pattern-findings.ts";
import { fr } from "@messageformat/runtime/lib/cardinals";
import { plural } from "#src/words/cases.ts";
const words: PatternFindingsWords = {
  title: () => "Constats par an",
  tooFew: (d) =>
    "Trop peu pour dire si les constats deviennent plus fréquents : il faut environ " +
    plural(d.more, 0, fr, { one: d.more + " constat", other: d.more + " constats" }) +
    " de plus.",
  counted: (d) => plural(d.count, 0, fr, { one: d.count + " constat", other: d.count + " constats" }),
  countedOnce: (d) =>
    plural(d.count, 0, fr, { one: d.count + " constat", other: d.count + " constats" }) +
    " (ceux d'un même démarrage manqué comptés une fois)",
  basisOnce: (d) => "Ceux d'un même démarrage manqué comptent une fois : " + d.count + ".",
  rising: (d) =>
    "D'après " +
    d.findings +
    ", ils sont plus fréquents qu'avant : s'ils venaient à un rythme constant, le seul hasard le ferait croire " +
    d.chance +
    ".",
  falling: (d) =>
    "D'après " +
    d.findings +
    ", ils sont plus rares qu'avant : s'ils venaient à un rythme constant, le seul hasard le ferait croire " +
    d.chance +
    ".",
  noTrend: () =>
    "Pas de tendance nette : les constats sont à peu près aussi fréquents qu'avant, autant qu'on puisse le dire.",
  rateNow: (d) => "Maintenant de " + d.low + " à " + d.high + " sur un kit en un an, neuf fois sur dix.",
  basis: (d) =>
    plural(d.count, 0, fr, { one: d.count + " constat", other: d.count + " constats" }) +
    " pendant que les kits étaient en charge " +
    d.years +
    " ans, tous ensemble ; exercices laissés de côté.",
  law: (d) =>
    "Ligne pointillée : loi de puissance de forme " +
    d.shape +
    ", au-dessus de 1 ils se pressent (constant : p " +
    d.p +
    ") ; test de Laplace z " +
    d.z +
    ", p " +
    d.testP +
    ". Dit comme une tendance seulement si les deux sont sous 0.05.",
  rarely: () => "moins d'une fois sur 1000",
  inThousand: (d) => d.count + " fois sur 1000",
  asTable: () => "Constats par an, en tableau",
  chart: (d) =>
    "Constats jusqu'ici selon le temps où tous les kits étaient en charge. " +
    d.said +
    " Par année civile dans le tableau ci-dessous.",
  reading: () => "Constats jusqu'ici, tous kits ensemble",
  across: () => "en charge, tous kits ensemble",
  year: () => "Année",
  findings: () => "Constats",
  countedHead: () => "Démarrages manqués comptés une fois",
  kitsOnCharge: () => "Kits en charge, en moyenne",
};
export default words;
