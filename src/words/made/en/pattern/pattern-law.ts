/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { PatternLawWords } from "#src/words/made/pattern/pattern-law.ts";
import { en } from "@messageformat/runtime/lib/cardinals";
import { plural } from "#src/words/cases.ts";
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
  inFigures: () => "The law in figures",
  agesBad: (d) =>
    "Age by which one in ten is found bad: " + d.tenth + "; half: " + d.half + ". The ranges hold nine times in ten.",
  ageRange: (d) => d.age + " (" + d.low + " to " + d.high + ")",
  noSooner: (d) =>
    "Of " +
    plural(d.lives, 0, en, { one: d.lives + " life", other: d.lives + " lives" }) +
    " none was found bad yet. So, nineteen times in twenty, one in ten is found bad no sooner than at " +
    d.tenth +
    " of age, and half no sooner than at " +
    d.half +
    ".",
  itWears: () => "It wears out: the older it is, the likelier it is to go bad.",
  firstLasts: () => "It does not wear out: what lasts at first lasts longer.",
  wearUnknown: () => "Whether it wears out with age cannot be told yet.",
  beyondSeen: (d) =>
    "The oldest that anybody looked at was " + d.oldest + ": what is said of a greater age was seen on none.",
  lacking: (d) =>
    plural(d.ended, 0, en, { "0": "None", other: "Only " + d.ended }) +
    " of " +
    d.lives +
    " found bad is too little to tell whether it wears out: it is taken as equally likely to go bad at any age. To tell, it takes " +
    d.wanted +
    " more found bad; at the share so far that is about " +
    d.more +
    " more lives looked at.",
};
export default words;
