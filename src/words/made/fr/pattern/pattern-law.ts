/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { PatternLawWords } from "#src/words/made/pattern/pattern-law.ts";
import { fr } from "@messageformat/runtime/lib/cardinals";
import { plural } from "#src/words/cases.ts";
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
  inFigures: () => "La loi en chiffres",
  agesBad: (d) =>
    "Âge auquel un sur dix est trouvé mauvais : " +
    d.tenth +
    " ; la moitié : " +
    d.half +
    ". Les plages valent neuf fois sur dix.",
  ageRange: (d) => d.age + " (" + d.low + " à " + d.high + ")",
  noSooner: (d) =>
    "Sur " +
    plural(d.lives, 0, fr, { one: d.lives + " vie", other: d.lives + " vies" }) +
    ", aucune n'a encore été trouvée mauvaise. Donc, dix-neuf fois sur vingt, un sur dix n'est pas trouvé mauvais avant l'âge de " +
    d.tenth +
    ", et la moitié pas avant " +
    d.half +
    ".",
  itWears: () => "Il s'use : plus il est vieux, plus il risque de devenir mauvais.",
  firstLasts: () => "Il ne s'use pas : ce qui dure au début dure plus longtemps.",
  wearUnknown: () => "S'il s'use avec l'âge, on ne peut pas encore le dire.",
  beyondSeen: (d) =>
    "Le plus vieux que quelqu'un ait examiné avait " +
    d.oldest +
    " : ce qui est dit d'un âge plus grand n'a été vu sur aucun.",
  lacking: (d) =>
    plural(d.ended, 0, fr, { "0": "Aucun", other: "Seulement " + d.ended }) +
    " sur " +
    d.lives +
    " trouvés mauvais, c'est trop peu pour dire s'il s'use : on le tient pour également exposé à tout âge. Pour le dire, il en faut " +
    d.wanted +
    " de plus trouvés mauvais ; à la part vue jusqu'ici, cela fait environ " +
    d.more +
    " vies de plus à examiner.",
};
export default words;
