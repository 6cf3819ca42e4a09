/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { TimelineWords } from "#src/words/made/frame/timeline.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { en } from "@messageformat/runtime/lib/cardinals";
const words: TimelineWords = {
  noCasualty: () => "No such casualty",
  noCasualtyNews: () => "This device knows no casualty at this address",
  title: (d) => d.casualty + ": timeline",
  pdf: () => "Timeline as PDF",
  lines: () => "Line by line",
  linesMore: () =>
    "What the page said upon a line is computed anew from the lines that its writer’s device had at that moment.",
  opened: () => "Opened",
  closed: () => "Closed",
  by: (d) => d.at + " by " + d.person,
  notClosed: () => "not closed",
  position: () => "Position",
  notTold: () => "not told",
  writtenBy: () => "Written by",
  linesBy: (d) =>
    plural(d.count, 0, en, {
      one: d.person + ", " + strictNumber("en", d.count, 0, "count") + " line",
      other: d.person + ", " + strictNumber("en", d.count, 0, "count") + " lines",
    }),
  running: () => "still running by the log",
  neverRan: () => "never ran",
  ran: (d) => "ran " + d.duration + " in all",
  left: (d) =>
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " moment still to compute",
      other: strictNumber("en", d.count, 0, "count") + " moments still to compute",
    }),
  when: () => "When",
  what: () => "What",
  who: () => "By",
  said: () => "The page said",
  computing: () => "being computed",
  nothingNew: () => "nothing new",
  notComputed: () => "Not computed",
};
export default words;
