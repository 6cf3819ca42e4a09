/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { FaultWords } from "#src/words/made/kit/fault.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { en } from "@messageformat/runtime/lib/cardinals";
const words: FaultWords = {
  title: (d) => "Find the fault: " + d.kit,
  nothingToTry: () => "This kit's pattern does not say what to try.",
  whatIsSeen: () => "What is seen",
  whatDoesItDo: () => "What does it do?",
  takeBack: () => "Take back the last answer",
  somethingElse: () => "It does something else",
  tryNumber: (d) => "Try " + d.number + ": " + d.minutes,
  itWorks: () => "That was it: it works",
  noChange: () => "No change",
  nextPump: (d) => "Stop. Take " + d.pump + ".",
  nextPumpSooner: (d) => d.pump + " gives water in " + d.minutes + ", sooner than what is left to try here.",
  nextPumpLikely: (d) =>
    d.pump +
    " gives water in " +
    d.minutes +
    ", sooner than what is left to try here. What is left is most likely: " +
    d.cause +
    ".",
  nothingLeft: () => "Nothing is left to try here",
  nothingLeftMore: () => "Raise the finding. A workshop must look at it.",
  noNextPump: (d) => d.pump + " cannot be taken: go on here",
  whatItMayBe: () => "What it may be, and what that rests on",
  causeAndChance: (d) => d.cause + ": " + d.chance,
  veryLikely: () => "very likely this",
  likelierThanNot: () => "more likely this than not",
  asLikelyAsNot: () => "about as likely as not",
  oneInThree: () => "about 1 in 3",
  oneInFour: () => "about 1 in 4",
  oneInFive: () => "about 1 in 5",
  oneInTen: () => "about 1 in 10",
  lessThanOneInTen: () => "less than 1 in 10",
  underAMinute: () => "under a minute",
  minutes: (d) =>
    plural(d.count, 0, en, {
      one: "about " + strictNumber("en", d.count, 0, "count") + " minute",
      other: "about " + strictNumber("en", d.count, 0, "count") + " minutes",
    }),
  basis: (d) =>
    plural(d.count, 0, en, {
      "0": "Chances and minutes are judgement, from the kit's pattern. No finding of the fleet bears on them yet.",
      one:
        "Chances and minutes are judgement, from the kit's pattern. " +
        strictNumber("en", d.count, 0, "count") +
        " finding of the fleet is counted in.",
      other:
        "Chances and minutes are judgement, from the kit's pattern. " +
        strictNumber("en", d.count, 0, "count") +
        " findings of the fleet are counted in.",
    }),
  whatItWas: () => "What it was",
  whatWasIt: () => "What was it?",
  worksNow: () => "It works now",
  worksNowMore: () => "Watch it: what helped once may not last. What was it?",
  noFinding: () =>
    "Nothing on the kit is broken by that: no finding is needed. Raise one if it should not have been so.",
  doesNotWork: () => "It does not work after all",
  beginAnew: () => "Done: begin anew",
  raise: () => "Raise the finding",
  noteSeen: (d) => d.seen + ".",
  noteTried: (d) => "Tried without help: " + d.tried + ".",
  noteTriedMore: (d) =>
    "Tried without help: " +
    d.tried +
    "; and " +
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " more try",
      other: strictNumber("en", d.count, 0, "count") + " more tries",
    }) +
    ".",
  noteRefused: (d) => "Could not be taken in its place: " + d.pumps + ".",
  noteHelped: (d) => "What helped: " + d.helped,
  line: (d) => "Line " + d.line,
  howToSee: () => "How to see it",
  noOtherPump: () =>
    "No other pump stands by on this sheet: the next kit has to come. Call for it now. Nobody has told how long it takes.",
  noOtherPumpTold: (d) =>
    "No other pump stands by on this sheet: the next kit has to come. Call for it now. Told of other kits: " + d.told,
  callNextKit: () => "Call for the next kit now",
  refused: (d) => "Cannot be taken: " + d.pumps + ". " + d.beside,
  ranLately: (d) =>
    plural(d.count, 0, en, {
      one: "The engine ran " + strictNumber("en", d.count, 0, "count") + " minute ago",
      other: "The engine ran " + strictNumber("en", d.count, 0, "count") + " minutes ago",
    }) + ": it is hot, and starts as a warm one. Where a thing to try wants it cool, the wait is in its minutes.",
  ranJustNow: () =>
    "The engine ran just now: it is hot, and starts as a warm one. Where a thing to try wants it cool, the wait is in its minutes.",
  nothingLeftAtSea: () => "The next kit has to come: call for it now. Raise the finding for whoever mends this one.",
};
export default words;
