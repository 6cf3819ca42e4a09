/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { PrimeWords } from "#src/words/made/kit/prime.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { en } from "@messageformat/runtime/lib/cardinals";
const words: PrimeWords = {
  willNot: (d) => "At " + d.lift + " lift it will not prime.",
  runsIn: (d) => "At " + d.lift + " lift water runs in by itself.",
  expect: (d) =>
    plural(d.strokes, 0, en, {
      one:
        "At " +
        d.lift +
        " lift expect about " +
        strictNumber("en", d.strokes, 0, "strokes") +
        " stroke, " +
        d.duration +
        ".",
      other:
        "At " +
        d.lift +
        " lift expect about " +
        strictNumber("en", d.strokes, 0, "strokes") +
        " strokes, " +
        d.duration +
        ".",
    }),
  doNotCount: () => "Do not count on priming at this lift.",
  stated: (d) => "The maker states " + d.stated + "; beyond about " + d.plain + " the loss is plain (common practice).",
  unstated: (d) =>
    "The maker states no greatest lift; beyond about " +
    d.plain +
    " the loss is plain, and beyond about " +
    d.most +
    " suction is not attempted (common practice).",
  physics: (d) =>
    "No primer at all gets water above " + d.greatest + " here: a limit of physics, not a lift to plan for.",
  tooQuick: (d) =>
    "Too quick: about " +
    d.least +
    " is the least that pumping out the air takes at this lift. Did water stand in the hose already, or was the clock started late? Drain the hose and prime again.",
  notExpected: () => "At this lift it is not to be expected to prime.",
  asExpected: (d) => "As it should be: about " + d.expected + " was to be expected.",
  slow: (d) =>
    "Slow: about " +
    d.expected +
    " was to be expected. Air leaks in at about " +
    d.leak +
    ", " +
    d.share +
    " % of what the primer takes out. With this leak no primer gets water above " +
    d.greatest +
    ".",
  title: () => "The prime",
  titleTooQuick: () => "Quicker than can be",
  titleLeak: () => "Look for an air leak",
  lookInOrder: () => "Look in this order:",
};
export default words;
