/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { PatternLawWords } from "../pattern-law.ts";

const words: PatternLawWords = {
  weibull: () => "Weibull",
  lognormal: () => "lognormal",
  exponential: () => "exponential",
  noneBad: () =>
    "None was found bad yet: chances are told at a steady rate, which lies between none and what so much time without a find still allows.",
  tooFew: () => "Too few ended for a law of life: chances are told at a steady rate.",
  halfEnded: (d) => "Likeliest law: " + d.law + ", half ended by " + d.age + " (" + d.low + " to " + d.high + ").",
  twoThirdsEnded: (d) =>
    "Likeliest law: " + d.law + ", nearly two in three ended by " + d.age + " (" + d.low + " to " + d.high + ").",
  shape: (d) => "Shape " + d.shape + " (" + d.low + " to " + d.high + ").",
  shapeWears: (d) => "Shape " + d.shape + " (" + d.low + " to " + d.high + "): it wears out.",
  shapeFirst: (d) => "Shape " + d.shape + " (" + d.low + " to " + d.high + "): what lasts at first lasts longer.",
  shapeUnknown: (d) => "Shape " + d.shape + " (" + d.low + " to " + d.high + "): whether it wears out cannot be told.",
  fewEnded: () => "Fewer than five ended: the chances above are told at a steady rate, not by this law.",
  weighed: () => "Chances weigh Weibull and lognormal by how likely the looks make each.",
  otherLaw: (d) => d.law + " (ln likelihood less by " + d.less + ")",
  others: (d) => "Beside it: " + d.laws + ". A difference below about 2 decides nothing.",
};
export default words;
