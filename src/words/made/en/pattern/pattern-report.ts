/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { PatternReportWords } from "#src/words/made/pattern/pattern-report.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { en } from "@messageformat/runtime/lib/cardinals";
const words: PatternReportWords = {
  title: (d) => "Report card: " + d.pattern,
  counting: () => "Counting what the log says.",
  yearPlanned: () => "The year planned",
  wouldChange: () => "What the log would change",
  nothingByItself: () =>
    "Nothing changes by itself: whoever keeps the pattern decides, and a changed pattern is a new version. The unit's own manual stands first.",
  howOften: () => "How often to open it",
  howLong: () => "How long things last",
  restated: (d) =>
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " line whose minutes could be stated anew",
      other: strictNumber("en", d.count, 0, "count") + " lines whose minutes could be stated anew",
    }),
  askedLess: (d) =>
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " check that could be asked less often",
      other: strictNumber("en", d.count, 0, "count") + " checks that could be asked less often",
    }),
  kept: (d) =>
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " check that found nothing yet and stays",
      other: strictNumber("en", d.count, 0, "count") + " checks that found nothing yet and stay",
    }),
  basis: (d) =>
    "From " +
    plural(d.openings, 0, en, { one: d.openings + " opening", other: d.openings + " openings" }) +
    " of " +
    plural(d.kits, 0, en, { one: d.kits + " kit", other: d.kits + " kits" }) +
    ", whatever the version of the pattern they were built to.",
  nothingYet: () => "The log would change nothing yet.",
  wanted: (d) =>
    "To say of a check that it finds something at most " +
    d.share +
    " takes " +
    d.all +
    " openings without a find: about " +
    plural(d.more, 0, en, { one: d.more + " opening", other: d.more + " openings" }) +
    " more.",
  oneIn: (d) => plural(d.count, 0, en, { "1": "every time", other: "once in " + d.count + " times" }),
  askLess: (d) => "Ask it less often: " + d.ask,
  keepIt: (d) => "Keep it, though it never found anything: " + d.ask,
  onlyOne: (d) => "Nothing else is there to find what grounds the kit: " + d.modes + ".",
  neverFound: (d) =>
    "Never found anything in " +
    plural(d.looks, 0, en, { one: d.looks + " opening", other: d.looks + " openings" }) +
    ": it may find something up to " +
    d.share +
    ".",
  addCheck: (d) => "Add a check that finds it: " + d.mode,
  findSooner: (d) => "Find it sooner, or by another check: " + d.mode,
  byAccidentNoCheck: (d) => "Found by accident " + d.times + ". No check is there to find it.",
  byAccidentOwn: (d) => "Found by accident " + d.times + ". Its own checks found it " + d.own + ".",
  reword: (d) => "Word line " + d.line + " anew, or leave it out: " + d.text,
  notPossibleIn: (d) =>
    "Not possible in " +
    d.count +
    " of " +
    plural(d.asked, 0, en, { one: d.asked + " opening", other: d.asked + " openings" }) +
    ".",
  reportedTimes: (d) => "Reported " + d.times + ": " + d.reports + ".",
  restate: (d) => "State " + d.median + " at line " + d.line + ", not " + d.stated + ": " + d.text,
  halfTook: (d) => "Half of " + d.count + " took " + d.from + " to " + d.to + ".",
  wrongTimes: (d) => "wrong " + d.times,
  impossibleTimes: (d) => "impossible " + d.times,
  unclearTimes: (d) => "unclear " + d.times,
  times: (d) => plural(d.count, 0, en, { "0": "never", "1": "once", other: d.count + " times" }),
  minutesFromTo: (d) => d.from + " to " + d.to,
  checksFound: () => "What the checks found",
  noneFound: () => "No check has found anything yet",
  foundTable: () => "Checks that found something",
  neverCount: (d) => plural(d.count, 0, en, { other: d.count + " that" }) + " never found anything",
  neverMore: () =>
    "None in n looks does not mean never: it may still find something up to about 3 times in n. Such a limit holds nineteen times in twenty.",
  neverTable: () => "Checks that never found anything",
  check: () => "Check",
  foundSomething: () => "Found something",
  openings: () => "Openings",
  mayFind: () => "May find something up to",
  wrong: () => "What was wrong, and how it came to light",
  nothingWrong: () => "Nothing was ever found wrong",
  modesTable: () => "Modes found",
  mode: () => "Mode",
  byOwnCheck: () => "By its own check",
  byAccident: () => "By accident",
  whileDoing: () => "While doing what",
  noneByAccident: () => "none by accident",
  whatTimes: (d) => d.what + " " + d.times,
  between: () => "; ",
  linesHard: () => "Lines not possible, or reported",
  noneHard: () => "Every line was possible, and none was reported",
  noneOpened: () => "Nothing was opened yet",
  lineTooFew: (d) =>
    d.count +
    " of " +
    d.all +
    "; too little to tell: it takes " +
    plural(d.more, 0, en, { one: d.more + " opening", other: d.more + " openings" }) +
    " more",
  lines: () => "Lines",
  line: () => "Line",
  notPossible: () => "Not possible",
  countOf: (d) => d.count + " of " + d.all,
  reported: () => "Reported",
  picturesTold: () => "Pictures of the strangers' card that were reported",
  picture: () => "Picture",
  told: (d) => d.what + ", " + d.person + ", " + d.at,
  toldAfter: (d) => "after " + d.casualty,
  toldWrong: () => "Wrong",
  toldImpossible: () => "Cannot be done",
  toldUnclear: () => "Unclear",
  never: () => "never",
  minutesTaken: () => "Minutes taken",
  minutesMore: (d) =>
    "By the clocks of the entries, from the answer before. Left out: waits, runs and primes; what was typed up from a card; lines after another person or device; and pauses, where more than 20 minutes and four times what is stated went by (" +
    d.times +
    ").",
  noneTimed: () => "No line was timed yet",
  furthestFirst: () => "Furthest off first",
  otherLines: (d) => plural(d.count, 0, en, { other: d.count + " other" }) + " lines",
  otherLinesTable: () => "Other lines",
  stated: () => "Stated",
  halfLess: () => "Half took less than",
  middleHalf: () => "Middle half",
  timed: () => "Timed",
  noneMade: () => "No check has been made yet",
  noMode: () => "What the pattern has no name for",
  findingsInAll: (d) =>
    plural(d.count, 0, en, { one: d.count + " finding", other: d.count + " findings" }) + " in all; drills left out.",
  together: (d) =>
    "Of these, " +
    plural(d.findings, 0, en, { one: d.findings + " finding is", other: d.findings + " findings are" }) +
    " of " +
    plural(d.starts, 0, en, {
      one: d.starts + " failed start, which counts",
      other: d.starts + " failed starts, each of which counts",
    }) +
    " once.",
};
export default words;
