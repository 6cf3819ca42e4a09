/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { DatesWords } from "#src/words/made/frame/dates.ts";

const words: DatesWords = {
  printed: (d) => "Good until " + d.day,
  fitted: (d) => "Fitted " + d.day,
  made: (d) => "Made " + d.day,
  whenPrinted: () => "When it was good until",
  whenFitted: () => "When it was fitted",
  whenMade: () => "When it was made",
  leaveDay: () => "Leave the day empty where only month and year can be read.",
  bySheet: (d) => d.dates + ", as a sheet tells",
  lookedNone: () => "Looked at: no date can be read",
  noDate: () => "No date on record",
  wasGood: (d) => "Out of date: its last good day was " + d.day + ".",
  goodUntil: (d) => "Good until " + d.day + ".",
  tooSoon: (d) => "Good until " + d.day + ", and the next turnaround is due by " + d.due + ": renew it now or before.",
  whatSays: () => "What does its date say?",
  lastGood: () => "Last good day on it",
  fittedOn: () => "Fitted on",
  madeOn: () => "Made on",
  keep: () => "Keep this date",
  cannotRead: () => "Looked: no date can be read",
  notSaved: () => "Not saved",
};
export default words;
