/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { SoundingsWords } from "#src/words/made/casualty/soundings.ts";

const words: SoundingsWords = {
  levelIn: (d) => "Level in " + d.unit,
  lowerBy: (d) => "Lower by " + d.amount + " " + d.unit,
  higherBy: (d) => "Higher by " + d.amount + " " + d.unit,
  unitKeys: () => "Unit of the figure typed",
  levelFault: (d) =>
    "A level here is a number from " +
    d.low +
    " to " +
    d.high +
    " " +
    d.unit +
    ", such as " +
    d.example +
    "; or with its unit: 2 ft 6 1/2 in.",
  sounding: () => "Sounding",
  sounded: () => "sounded",
  soundedNowDo: () => "Sounded now",
  levelWhen: (d) => d.level + ": " + d.when,
  wrongLevel: (d) => "From " + d.allowed + ". " + d.remedy,
  written: (d) => d.level + " " + d.when,
  last: (d) => "Last " + d.level + ", " + d.at,
  fromLowest: () => "From the lowest point, at one mark: tape the stick.",
  nowAfterAll: () => "Now after all",
  earlier: () => "Earlier?",
  same: () => "Same",
  soundings: () => "Soundings",
  soundingsAhead: () => "Soundings and what may come",
  chart: () => "Soundings of the water inside over time. The figures are in the tables below.",
  chartAhead: () =>
    "Soundings of the water inside over time, and the forecast for an hour. The figures are in the tables below.",
  tooOld: () => "Nothing is forecast from a sounding as old as the last one.",
  toCheck: () => "Nothing is forecast from a last sounding that has to be checked first.",
  noFit: () => "Nothing is forecast from soundings that do not fit.",
  figures: () => "The figures",
  newestFirst: () => "Soundings, newest first",
  forecast: () => "Forecast",
  at: () => "At",
  level: () => "Level",
  likeliest: () => "Likeliest",
  nineInTen: () => "9 in 10",
  range: (d) => d.low + " to " + d.high,
  spaceLooked: () => "Space looked at",
  whenRead: () => "When was it read?",
  orAt: () => "Or at this time",
  now: () => "Now",
  beforeOpened: (d) => "That is " + d.duration + " before this sheet was opened. Was it read then?",
  yesReadAt: (d) => "Yes, read at " + d.time,
  yesReadYesterday: (d) => "Yes, read yesterday " + d.time,
  clockForm: () => "Hours and minutes, such as 16:40.",
  clockAhead: (d) =>
    "This is in " + d.ahead + ": it is " + d.now + " by this device. Type when it was read, at most now.",
  ago: (d) => d.duration + " ago",
  soundedNow: () => "sounded now",
  soundedAgo: (d) => "sounded " + d.duration + " ago",
  soundedAt: (d) => "sounded at " + d.time,
  soundedYesterday: (d) => "sounded yesterday " + d.time,
  levelAxis: (d) => "Level, " + d.unit,
  bandGoesOn: (d) => "Band goes on to " + d.level,
  nowMark: () => "now",
  soundedMark: () => "Sounded",
  pumping: () => "Pumping",
  oneInTwo: () => "1 in 2",
};
export default words;
