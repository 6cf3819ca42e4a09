/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { WorkWords } from "#src/words/made/station/work.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { en } from "@messageformat/runtime/lib/cardinals";
const words: WorkWords = {
  title: () => "Work due",
  all: () => "All work",
  mine: () => "Work I took",
  year: () => "The year planned",
  printThis: () => "Print this month",
  printNext: () => "Print next month",
  tookNone: () => "You took no work",
  noneDue: () => "Nothing is due within a month",
  wet: () => "Back and not flushed",
  overdue: () => "Overdue",
  week: (d) => "This week, to " + d.day,
  month: (d) => "This month, to " + d.day,
  moreTasks: (d) => "And " + d.count + " more at the same opening",
  goodUntil: (d) => d.why + " Good until " + d.day + ".",
  goToKit: () => "Go to the kit",
  goToMuster: () => "Go to the muster",
  takeBack: () => "Take it back",
  goSettle: () => "Go and settle it",
  ways: () => "Day, person, put off",
  waysOf: (d) => "Day, person or put off: " + d.kit,
  nobodyAlone: () => "Nobody who may do it alone is here today.",
  mayDo: (d) => "May do it, and not away today: " + d.names + ".",
  withSecond: (d) => "With a second person who sees it done: " + d.names + ".",
  andMore: (d) => d.names + " and " + d.count + " more",
  takenBy: (d) => "Taken by " + d.names + ".",
  and: (d) => d.first + " and " + d.next,
  eachAlone: () => "Each took it without sight of the other.",
  toDoOn: (d) => "To be done on " + d.day + ", said " + d.name + ".",
  putOffUntil: (d) => "Put off until " + d.day + " by " + d.name + ": " + d.reason,
  cannotWait: (d) => "It cannot wait so long: from " + d.day + " on the kit is grounded.",
  planned: (d) => "Planned for the week of " + d.day + ".",
  notWritten: () => "Not written down",
  layDown: () => "Lay it down",
  layDownKit: (d) => "Lay down " + d.kit,
  take: () => "I take it",
  takeKit: (d) => "Take " + d.kit,
  didYouSee: (d) => "Did you see it done? " + d.what + ", " + d.kit,
  namedYou: (d) =>
    d.name +
    " named you as the second person, " +
    d.at +
    ". If you did not see it, say so to the keeper and leave this.",
  sawIt: () => "I saw it done",
  sawItOf: (d) => "I saw it done: " + d.what + ", " + d.kit,
  day: () => "Day",
  whyPutOff: () => "Why it is put off",
  doOnDay: () => "Do it on this day",
  putOff: () => "Put off until this day",
  takeDayBack: () => "Take its day back",
  musterPast: () => "Its last day is past: it can be given a day, not put off.",
  musterLatest: (d) => "At latest " + d.day + ", its last day.",
  groundsAlready: () => "It grounds the kit already: it can be given a day, not put off.",
  groundsNever: () => "Nothing dated grounds the kit for it.",
  groundsAfter: (d) => "At latest " + d.day + ": after it the kit is grounded.",
  giveTo: (d) => "Give it to " + d.name,
  whatAndWho: () => "What, why, with which parts, and who",
  handsLacking: (d) =>
    "Needs " +
    d.people +
    " at once; " +
    plural(d.there, 0, en, {
      "0": "nobody is",
      one: strictNumber("en", d.there, 0, "there") + " is",
      other: strictNumber("en", d.there, 0, "there") + " are",
    }) +
    " here today.",
  needsParts: () => "It needs:",
  needsMany: (d) =>
    "It needs " +
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " part",
      other: strictNumber("en", d.count, 0, "count") + " parts",
    }) +
    ", " +
    d.there +
    " of them on the shelf",
};
export default words;
