/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { ReviewWords } from "#src/words/made/casualty/review.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { en } from "@messageformat/runtime/lib/cardinals";
const words: ReviewWords = {
  left: (d) =>
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " forecast still to compute",
      other: strictNumber("en", d.count, 0, "count") + " forecasts still to compute",
    }),
  outcome: () => "Forecast and outcome",
  outcomeMore: () =>
    "Each is computed anew from what was known at that moment: whether the water stands lower at the next sounding, where nothing was changed before it, and whether a kit starts. The chance is the mean over its range as it was told then, by the starts or soundings there were.",
  noneJudged: () => "Nothing here can be judged",
  noneJudgedMore: () =>
    "It takes two soundings of one space with nothing changed in between, or a kit of ours asked to start.",
  when: () => "When",
  what: () => "What",
  lower: () => "Water lower at the next sounding",
  starts: () => "Starts and gives water",
  startsOf: (d) => d.kit + " starts and gives water",
  chanceTold: () => "Chance told",
  came: () => "Came",
  yes: () => "yes",
  no: () => "no",
  forecastsTitle: () => "How good our forecasts were",
  forecastsEarly: () => "Not all lines are on this device yet",
  forecastsEarlyMore: () =>
    "Starts, drills and levels are counted from every line there ever was. How good the forecasts were is told once all lines are here.",
  turnarounds: () => "Starts in turnarounds",
  tableMore: () =>
    "Each line takes together forecasts that said about the same. Where the chance told lies within the range beside it, nothing speaks against it.",
  turnaroundsMore: () =>
    "The chance that a kit starts, told from what was known before, against whether it did. Drills are left out: faults were planted.",
  casualties: () => "Starts on casualties",
  casualtiesMore: () =>
    "The chance that a kit starts when a vessel calls for it: as above, with what may have come unseen since it was last proved.",
  levelsMore: () =>
    "The chance that the water stands lower at the next sounding, where nothing was changed before it, against whether it did: on every closed casualty, as it was kept where one has been gone through.",
  drills: () => "Planted faults found in drills",
  drillsMore: () =>
    "The chance that a check finds what was planted, told from the drills before, against whether it did.",
  toldMean: () => "Chance told, on average",
  ofThese: () => "Of these came",
  nineInTen: () => "By so few the true share lies, nine times in ten, at",
  range: (d) => d.low + " to " + d.high,
  forecasts: () => "Forecasts",
  goneThrough: () => "Gone through",
  keptBy: (d) =>
    plural(d.count, 0, en, {
      one: "By " + d.person + " on " + d.at + ", " + strictNumber("en", d.count, 0, "count") + " forecast kept.",
      other: "By " + d.person + " on " + d.at + ", " + strictNumber("en", d.count, 0, "count") + " forecasts kept.",
    }),
  notKept: () => "Not kept",
  computing: () => "Forecasts are still being computed",
  keep: () => "Gone through: keep its forecasts",
  keeperSays: () => "A keeper says when it has been gone through.",
  pumps: () => "Pumps",
  noPumps: () => "No pump was told of on her sheet",
  seenOn: (d) => "Seen on " + d.casualty + ".",
  raise: (d) => "Raise a finding on " + d.kit,
  notYet: () => "Nothing to go through yet",
  notClosed: () => "Her sheet is not closed",
  noCasualty: () => "This device knows no casualty at this address",
  whenClosed: () => "A casualty is gone through when its sheet is closed.",
  title: (d) => d.casualty + ": afterwards",
  more: () => "More",
  timeline: () => "Timeline, with what the page said",
  notBack: () => "Not back yet:",
  notBackMore: (d) => d.label + " " + d.kits + ". What they met, and what is found on them, comes with their return.",
  wentWell: () => "Went well",
  wentBadly: () => "Went badly",
  aKit: () => "A kit",
  aLine: () => "A line of the turnaround's list",
  aPicture: () => "A picture of the strangers' card",
  peopleSaw: () => "What people saw",
  told: (d) => d.about + ", " + d.person + ", " + d.at + ": " + d.note,
  about: () => "About",
  lineNumber: () => "Number of the line in the list of the turnaround, if one",
  lineNumberHint: () => "Then the owner of the pattern is told too.",
  noLine: (d) => "No line of " + d.pattern + " has that number.",
  pictureNumber: () => "Number of the picture on the strangers' card, if one",
  noPicture: (d) => "No picture of the card of " + d.pattern + " has that number.",
  youSaw: () => "What you saw",
  whatOfLine: () => "What is it about that line?",
  whatOfPicture: () => "What is it about that picture?",
  lineWrong: () => "It is wrong",
  lineImpossible: () => "It cannot be done",
  lineUnclear: () => "It is unclear",
  notWritten: () => "Not written",
  add: () => "Add it",
  pulls: (d) =>
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " pull to start.",
      other: strictNumber("en", d.count, 0, "count") + " pulls to start.",
    }),
  noPulls: () => "Pulls were not written down.",
  prime: (d) => "Water " + d.duration + " after the first stroke.",
  noPrime: () => "Prime was not timed.",
  ran: (d) =>
    plural(d.refuels, 0, en, {
      "0": "Ran " + d.duration + "; not refuelled.",
      "1": "Ran " + d.duration + "; refuelled once.",
      other: "Ran " + d.duration + "; refuelled " + strictNumber("en", d.refuels, 0, "refuels") + " times.",
    }),
  notStarted: () => "It did not start.",
  notUsed: () => "It was not put to work.",
  water: (d) => "Water " + d.sinceOpened + " after the sheet was opened.",
  waterAboard: (d) =>
    "Water " + d.sinceOpened + " after the sheet was opened, " + d.sinceAboard + " after it was told of aboard.",
  refusedFirst: (d) => "It refused at first. " + d.water,
  noDelivery: () => "What it delivered was not told by the soundings.",
  deliveryTooLittle: () => "The soundings tell too little of its delivery.",
  delivery: (d) => "The soundings saw " + d.low + " to " + d.high + " tenths of its stated delivery.",
  tooFew: () => "Too few to tell",
  asSure: () => "About as sure as it should be",
  tooSure: () => "Surer than it should be: take its chances as nearer to even",
  notSureEnough: () => "Less sure than it could be",
  noneYet: () => "None yet.",
  wanted: (d) =>
    d.verdict +
    ": about " +
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " more forecast",
      other: strictNumber("en", d.count, 0, "count") + " more forecasts",
    }) +
    " would tell",
  score: (d) =>
    d.verdict +
    ". That is of " +
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " forecast",
      other: strictNumber("en", d.count, 0, "count") + " forecasts",
    }) +
    ", " +
    d.days +
    ": on average they said " +
    d.told +
    ", and " +
    d.came +
    " of the " +
    d.count +
    " came.",
  fromTo: (d) => "from " + d.first + " to " + d.last,
  onDay: (d) => "on " + d.day,
  marks: (d) =>
    "Brier score " +
    d.brier +
    " (always telling the share that came: " +
    d.plain +
    "), log score " +
    d.log +
    "; lower is better. The level is scored by CRPS, in its own unit.",
  marksTitle: () => "As scores, to compare",
  off: (d) =>
    "By " +
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " forecast",
      other: strictNumber("en", d.count, 0, "count") + " forecasts",
    }) +
    " the level was " +
    d.told +
    " off on average, with how wide it was told counted in; had we said that it stays as it is, " +
    d.stayed +
    ". Lower is better.",
  kitPage: (d) => d.kit + ": its own page",
  keepAnew: () => "They changed since; keep them anew",
  lineIs: (d) => "That line: " + d.line + " Then the owner of the pattern is told too.",
};
export default words;
