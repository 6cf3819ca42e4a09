/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { PatternLawWords } from "../pattern-law.ts";

const words: PatternLawWords = {
  weibull: () => "Weibull",
  lognormal: () => "log-normale",
  exponential: () => "exponentielle",
  noneBad: () =>
    "Aucun n'a encore été trouvé mauvais : les chances sont dites à rythme constant, qui se trouve entre aucun et ce que tant de temps sans trouvaille permet encore.",
  tooFew: () => "Trop peu ont fini pour une loi de vie : les chances sont dites à rythme constant.",
  halfEnded: (d) =>
    "Loi la plus probable : " + d.law + ", la moitié finie à " + d.age + " (" + d.low + " à " + d.high + ").",
  twoThirdsEnded: (d) =>
    "Loi la plus probable : " +
    d.law +
    ", près de deux sur trois finis à " +
    d.age +
    " (" +
    d.low +
    " à " +
    d.high +
    ").",
  shape: (d) => "Forme " + d.shape + " (" + d.low + " à " + d.high + ").",
  shapeWears: (d) => "Forme " + d.shape + " (" + d.low + " à " + d.high + ") : il s'use.",
  shapeFirst: (d) =>
    "Forme " + d.shape + " (" + d.low + " à " + d.high + ") : ce qui dure au début dure plus longtemps.",
  shapeUnknown: (d) => "Forme " + d.shape + " (" + d.low + " à " + d.high + ") : s'il s'use, on ne peut le dire.",
  fewEnded: () => "Moins de cinq ont fini : les chances ci-dessus sont dites à rythme constant, non d'après cette loi.",
  weighed: () => "Les chances pèsent Weibull et log-normale selon ce que les examens rendent probable.",
  otherLaw: (d) => d.law + " (ln vraisemblance moindre de " + d.less + ")",
  others: (d) => "À côté : " + d.laws + ". Un écart sous environ 2 ne décide rien.",
};
export default words;
