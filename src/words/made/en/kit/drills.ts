/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { DrillsWords } from "#src/words/made/kit/drills.ts";
import { en } from "@messageformat/runtime/lib/cardinals";
import { plural } from "#src/words/cases.ts";
const words: DrillsWords = {
  title: () => "Drills",
  what: () =>
    "Somebody plants faults in a kit that is set aside, others look for them in a turnaround. What checks find of what was planted shows how far they can be trusted. A drill is begun on the page of a kit.",
  now: () => "Now",
  noneOn: () => "No drill is on",
  past: () => "Past drills",
  noneYet: () => "None yet",
  asideSince: (d) => d.kit + ", set aside since " + d.at,
  goTo: () => "Go to this drill",
  pastLine: (d) => d.day + ", " + d.kit + ", " + d.who + ": " + d.result,
  notCompared: () => "not compared",
  result: (d) =>
    "found " +
    d.found +
    " of " +
    d.planted +
    plural(d.wrong, 0, en, { "0": "", other: ", " + d.wrong + " false" }) +
    plural(d.real, 0, en, { "0": "", other: ", " + d.real + " real beside" }),
  pageOf: (d) => "The page of " + d.kit,
  checks: () => "What each check finds",
  checksMore: () =>
    "Of faults planted that a check can find, where it was made. The range holds the truth nine times in ten; few faults make it wide. Planted faults are looked for harder than others.",
  foundByCheck: () => "Found of planted, by check",
  check: () => "Check",
  line: () => "Line",
  found: () => "Found",
  findsIt: () => "Finds it",
  lineOf: (d) => d.pattern + ", line " + d.line,
  foundOf: (d) => d.found + " of " + d.planted,
  between: (d) => "between " + d.low + " and " + d.high,
  missedLines: () => "Lines most often missed",
  missedLinesMore: () =>
    "The words of a line may be why it is missed. Whoever answers for the pattern reads what you report.",
  missedOf: (d) => d.line + ": missed " + d.missed + " of " + d.planted + ".",
  reported: () => "Reported.",
  reportLine: (d) => "Report line " + d.line + " of " + d.pattern,
  lineWrong: () => "It is wrong",
  lineImpossible: () => "It cannot be done",
  lineUnclear: () => "It is unclear",
  notReported: () => "Not reported",
  foundBy: (d) => "Found by " + d.who + ".",
  missed: () => "Missed.",
  faultOf: (d) => d.item + ": " + d.fault,
};
export default words;
